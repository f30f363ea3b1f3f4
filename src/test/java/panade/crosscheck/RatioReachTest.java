package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.solver.ortools.OrToolsSolver;
import panade.testing.Planners;

/** While the same bounds bind, the least cost over a ratio's number is one hyperbola: z + a k / (1 - b k). */
class RatioReachTest {
    private static final Planner PLANNER = Planners.LINEAR;

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void a_ratios_cost_follows_one_hyperbola_up_to_its_reach(@ForAll("problems") RawProblem problem) {
        var blended = Answer.blended(problem, new OrToolsSolver());
        int checked = 0;
        for (var limit : blended.explanation().limits()) {
            var bound = bound(blended.brief(), limit.path());
            var price = limit.price();
            if (bound != null && bound.per() != null && price != null) {
                checked += follows(blended, bound, limit, price.whenRaised(), price.to());
                checked += follows(blended, bound, limit, negated(price.whenLowered()), price.from());
            }
        }
        Statistics.label("sides checked").collect(Math.min(checked, 4));
    }

    private static int follows(
            Blended blended, Bound bound, Limit limit, @Nullable BigFraction slope, @Nullable BigFraction end) {
        if (slope == null || end == null || limit.touch() == null || limit.touch() == Side.FIXED) {
            return 0;
        }
        var number = Objects.requireNonNull(limit.touch() == Side.MIN ? limit.min() : limit.max());
        var reach = end.subtract(number);
        if (reach.signum() == 0) {
            return 0;
        }
        var half = reach.divide(2);
        var least = blended.blend().costPerKg();
        var atHalf = cost(blended.brief(), bound, limit, number.add(half)).subtract(least);
        if (atHalf.signum() == 0) {
            assertThat(slope.signum()).isZero();
            return 1;
        }
        // from a k / (1 - b k) = c at k = half: b = (1 - a half / c) / half
        var bend = BigFraction.ONE.subtract(slope.multiply(half).divide(atHalf)).divide(half);
        var k = reach.multiply(BigFraction.of(9, 10));
        var predicted = slope.multiply(k).divide(BigFraction.ONE.subtract(bend.multiply(k)));
        assertThat(cost(blended.brief(), bound, limit, number.add(k)).subtract(least))
                .as(bound.path())
                .isEqualTo(predicted);
        return 1;
    }

    private static @Nullable BigFraction negated(@Nullable BigFraction rate) {
        return rate == null ? null : rate.negate();
    }

    private static BigFraction cost(Brief brief, Bound bound, Limit limit, BigFraction number) {
        var moved = Quantity.of(number, limit.unit(), "moved");
        boolean min = limit.touch() == Side.MIN;
        var changed = bound.withLimits(min ? moved : bound.min(), min ? bound.max() : moved);
        var outcome = PLANNER.plan(brief.replacing(bound, changed));
        assertThat(outcome).as("%s at %s", bound.name(), number).isInstanceOf(Blended.class);
        return ((Blended) outcome).blend().costPerKg();
    }

    private static @Nullable Bound bound(Brief brief, String path) {
        return brief.bounds().stream()
                .filter(bound -> bound.path().equals(path))
                .findFirst()
                .orElse(null);
    }
}
