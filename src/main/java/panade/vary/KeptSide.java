package panade.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Side;
import panade.quantity.Quantity;
import panade.vary.CompositionStudy.Broken;

/**
 * One side of a bound that is looked at while a blend is kept.
 *
 * @param min the floor it watches; null when it watches a ceiling alone
 * @param max the ceiling it watches; null when it watches a floor alone
 */
record KeptSide(
        Bound bound, @Nullable Quantity min, @Nullable Quantity max) {
    private static final int TWENTY = 20;

    /** The sides that what ingredients hold can break; both sides of a fixed bound are one. */
    static List<KeptSide> of(Brief brief) {
        var sides = new ArrayList<KeptSide>();
        brief.bounds().stream().filter(KeptSide::countsContent).forEach(bound -> {
            var min = bound.min();
            var max = bound.max();
            if (bound.isFixed(brief.batch())) {
                sides.add(new KeptSide(bound, min, max));
                return;
            }
            if (min != null) {
                sides.add(new KeptSide(bound, min, null));
            }
            if (max != null) {
                sides.add(new KeptSide(bound, null, max));
            }
        });
        return List.copyOf(sides);
    }

    private static boolean countsContent(Bound bound) {
        return Stream.of(Optional.of(bound.of()), Optional.ofNullable(bound.per()))
                .flatMap(Optional::stream)
                .map(Measure::parts)
                .flatMap(List::stream)
                .anyMatch(part -> !part.properties().isEmpty());
    }

    /** How a kept blend stands on this side in one draw. */
    record Standing(boolean broken, @Nullable BigFraction value) {}

    Standing standing(Audit audit) {
        boolean broken = (min != null && audit.slack(bound, min, true).signum() < 0)
                || (max != null && audit.slack(bound, max, false).signum() < 0);
        return new Standing(broken, audit.value(bound).orElse(null));
    }

    /** What there is to tell of all draws; empty when none of them breaks this side. */
    Optional<Broken> broken(List<Standing> standings) {
        int count = (int) standings.stream().filter(Standing::broken).count();
        var limit = Objects.requireNonNull(min != null ? min : max);
        return count == 0
                ? Optional.empty()
                : Optional.of(new Broken(
                        bound.name(),
                        bound.path(),
                        side(),
                        count,
                        bound.unit().fromBase(limit.base()),
                        oneInTwenty(standings),
                        bound.unit()));
    }

    private Side side() {
        return max == null ? Side.MIN : min == null ? Side.MAX : Side.FIXED;
    }

    private @Nullable BigFraction oneInTwenty(List<Standing> standings) {
        var values = standings.stream()
                .map(Standing::value)
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        if (values.size() < standings.size() || (min != null && max != null)) {
            return null;
        }
        int rank = Math.max(1, values.size() / TWENTY);
        return min != null ? values.get(rank - 1) : values.get(values.size() - rank);
    }
}
