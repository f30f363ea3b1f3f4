package panade.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import panade.domain.Blend;
import panade.quantity.Decimal;

/** Picks a few blends that a cook would call different from the best one and from each other. */
final class Alternatives {
    private static final int MAX_ALTERNATIVES = 3;
    private static final int INGREDIENTS_APART = 3;
    private static final BigDecimal MASS_APART = new BigDecimal("0.1");
    /** Fractions of a hundred digits are slow to add, and choosing what to show needs no more than these. */
    private static final int DIGITS = 12;

    private Alternatives() {}

    /** A blend with its shares by ingredient. */
    private record Mix(Blend blend, Map<String, BigDecimal> shares) {
        static Mix of(Blend blend) {
            var shares = new HashMap<String, BigDecimal>();
            blend.lines()
                    .forEach(line -> shares.merge(
                            line.use().ingredient(), Decimal.round(line.share(), DIGITS), BigDecimal::add));
            return new Mix(blend, shares);
        }
    }

    /** Up to {@value #MAX_ALTERNATIVES} of the blends found nearby, each the farthest from all chosen before it. */
    static List<Blend> choose(Blend best, List<Blend> nearby) {
        var candidates = nearby.stream().map(Mix::of).toList();
        var chosen = new ArrayList<Mix>(List.of(Mix.of(best)));
        while (chosen.size() <= MAX_ALTERNATIVES) {
            var next = farthest(chosen, candidates);
            if (next.isEmpty()) {
                break;
            }
            chosen.add(next.get());
        }
        return chosen.subList(1, chosen.size()).stream().map(Mix::blend).toList();
    }

    private static Optional<Mix> farthest(List<Mix> chosen, List<Mix> nearby) {
        return nearby.stream()
                .filter(mix -> chosen.stream().allMatch(other -> isDifferent(mix, other)))
                .max(Comparator.comparing(mix -> closest(mix, chosen)));
    }

    private static BigDecimal closest(Mix mix, List<Mix> chosen) {
        return chosen.stream()
                .map(other -> massMoved(mix, other))
                .min(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO);
    }

    private static boolean isDifferent(Mix a, Mix b) {
        return ingredientsApart(a, b) >= INGREDIENTS_APART || massMoved(a, b).compareTo(MASS_APART) >= 0;
    }

    /** How many ingredients are in one of the two only. */
    private static int ingredientsApart(Mix a, Mix b) {
        var both = new HashSet<>(a.shares().keySet());
        both.retainAll(b.shares().keySet());
        return union(a, b).size() - both.size();
    }

    /** Share of the batch that is something else. */
    private static BigDecimal massMoved(Mix a, Mix b) {
        return union(a, b).stream()
                .map(id -> share(a, id).subtract(share(b, id)).abs())
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(2));
    }

    private static BigDecimal share(Mix mix, String id) {
        return mix.shares().getOrDefault(id, BigDecimal.ZERO);
    }

    private static Set<String> union(Mix a, Mix b) {
        var union = new HashSet<>(a.shares().keySet());
        union.addAll(b.shares().keySet());
        return union;
    }
}
