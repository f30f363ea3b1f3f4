package panade.trace;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.certify.Decision;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.VaryingValue;
import panade.domain.trial.Sure;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * What it costs to be more or less sure of one bound. Each point is a least cost of its own, proved within a millionth.
 *
 * @param brief as it stands
 * @param bound whose sureness moves
 * @param points by rising sureness
 */
public record SureCurve(Brief brief, Bound bound, List<Point> points) {
    /** In per cent; half is the mean alone. */
    private static final List<String> USUAL = List.of("50 %", "80 %", "90 %", "95 %", "99 %");

    public SureCurve {
        points = List.copyOf(points);
    }

    /**
     * The cheapest blend at one sureness.
     *
     * @param asked whether the brief asks for just that
     */
    public record Point(BigFraction sure, boolean asked, Decision<Cheapest> cheapest) {}

    /**
     * A cheapest blend.
     *
     * @param value of the bound on average, in its unit; null when it is nothing over nothing
     */
    public record Cheapest(BigFraction costPerKg, @Nullable BigFraction value) {}

    /** The curve over the usual levels, and the one that the brief asks for. */
    public static SureCurve of(Planner planner, Brief brief, Bound bound) {
        var now = Optional.ofNullable(bound.sure()).map(sure -> sure.share());
        var levels = Stream.concat(
                        USUAL.stream().map(level -> Quantity.parse(level).orElseThrow()), now.stream())
                .map(Quantity::base)
                .distinct()
                .sorted()
                .toList();
        return new SureCurve(
                brief,
                bound,
                levels.stream()
                        .map(level -> new Point(
                                level,
                                now.filter(share -> share.base().equals(level)).isPresent(),
                                cheapest(planner, brief, bound, level)))
                        .toList());
    }

    private static Decision<Cheapest> cheapest(Planner planner, Brief brief, Bound bound, BigFraction level) {
        var share = Quantity.of(level.multiply(100), Unit.PERCENT, "");
        var changed = brief.replacing(bound, Sure.with(bound, share));
        return planner.cheapest(changed).map(blend -> cheapest(changed, bound, blend));
    }

    private static Cheapest cheapest(Brief brief, Bound bound, Blend blend) {
        return new Cheapest(
                blend.costPerKg(), new Audit(brief, blend).value(bound).orElse(null));
    }

    /** Whether anything that is known to vary bears on a bound, or trials leave it open. */
    public static boolean isUncertain(Brief brief, Bound bound) {
        return bound.isLearned()
                || VaryingValue.of(brief).stream()
                        .anyMatch(value -> brief.uses().stream()
                                .anyMatch(use -> value.gain(bound.of(), use, brief.composition())
                                                .signum()
                                        != 0));
    }
}
