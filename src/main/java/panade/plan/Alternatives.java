package panade.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;

/** Picks a few blends that a cook would call different from the best one and from each other. */
final class Alternatives {
    private static final int MOST = 3;
    private static final int INGREDIENTS_APART = 3;
    private static final BigFraction MASS_APART = BigFraction.of(1, 10);

    private Alternatives() {}

    /** Up to {@value #MOST} of the blends found nearby, each the farthest from all chosen before it. */
    static List<Blend> choose(Blend best, List<Blend> nearby) {
        var chosen = new ArrayList<Blend>(List.of(best));
        while (chosen.size() <= MOST) {
            var next = farthest(chosen, nearby);
            if (next.isEmpty()) {
                break;
            }
            chosen.add(next.get());
        }
        return List.copyOf(chosen.subList(1, chosen.size()));
    }

    private static Optional<Blend> farthest(List<Blend> chosen, List<Blend> nearby) {
        return nearby.stream()
                .filter(blend -> chosen.stream().allMatch(other -> isDifferent(blend, other)))
                .max(Comparator.comparing((Blend blend) -> closest(blend, chosen)));
    }

    private static BigFraction closest(Blend blend, List<Blend> chosen) {
        return chosen.stream()
                .map(other -> massMoved(blend, other))
                .min(Comparator.naturalOrder())
                .orElse(BigFraction.ZERO);
    }

    private static boolean isDifferent(Blend a, Blend b) {
        return ingredientsApart(a, b) >= INGREDIENTS_APART || massMoved(a, b).compareTo(MASS_APART) >= 0;
    }

    /** How many ingredients are in one of the two only. */
    private static int ingredientsApart(Blend a, Blend b) {
        var union = new TreeSet<>(ingredients(a));
        union.addAll(ingredients(b));
        var both = new TreeSet<>(ingredients(a));
        both.retainAll(ingredients(b));
        return union.size() - both.size();
    }

    /** Share of the batch that is something else. */
    private static BigFraction massMoved(Blend a, Blend b) {
        var union = new TreeSet<>(ingredients(a));
        union.addAll(ingredients(b));
        return union.stream()
                .map(id -> a.shareOf(id).subtract(b.shareOf(id)).abs())
                .reduce(BigFraction.ZERO, BigFraction::add)
                .divide(2);
    }

    private static Set<String> ingredients(Blend blend) {
        return blend.lines().stream().map(line -> line.use().ingredient()).collect(Collectors.toSet());
    }
}
