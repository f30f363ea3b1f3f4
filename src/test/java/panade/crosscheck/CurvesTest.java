package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.solver.ortools.OrToolsSolver;
import panade.testing.Planners;
import panade.trace.BoundTracing;
import panade.trace.Curve;
import panade.trace.Curve.End;
import panade.trace.Curve.Point;
import panade.trace.PriceTracing;

/** Curves against solves of their own, on either side of every breakpoint. */
class CurvesTest {
    private static final Planner PLANNER = Planners.LINEAR;

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void a_price_curve_is_exact_between_its_breakpoints(@ForAll("problems") RawProblem problem) {
        var blended = Answer.blended(problem, new OrToolsSolver());
        var brief = blended.brief();
        var id = blended.blend().lines().get(0).use().ingredient();
        var offer = PriceTracing.cheapest(brief, id);
        var curve =
                PriceTracing.of(PLANNER, brief, offer, BigFraction.ZERO, null).orElseThrow();
        assertSlopesFall(curve);
        assertStraight(curve, at -> brief.replacing(offer, offer.withPrice(at)));
        assertThat(PLANNER.cheapest(brief).orElseThrow().costPerKg()).isEqualTo(costAt(curve, offer.pricePerKg()));
        Statistics.label("points").collect(Math.min(5, curve.points().size()));
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void a_bound_curve_is_exact_between_its_breakpoints(@ForAll("problems") RawProblem problem) {
        var brief = Answer.blended(problem, new OrToolsSolver()).brief();
        for (var bound : brief.bounds()) {
            if (bound.per() == null && bound.min() != null && bound.max() == null) {
                var curve = BoundTracing.of(PLANNER, brief, bound, Side.MIN, null, null)
                        .orElseThrow();
                assertStraight(curve, at -> moved(brief, bound, at));
                assertSlopesRise(curve);
                Statistics.label("points").collect(Math.min(5, curve.points().size()));
                return;
            }
        }
    }

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void every_bounds_curve_says_what_a_solve_at_any_place_says(@ForAll("problems") RawProblem problem) {
        var brief = Answer.blended(problem, new OrToolsSolver()).brief();
        int ratios = 0;
        for (var bound : brief.bounds()) {
            boolean ratio = bound.per() != null;
            if (ratio && ratios < 3) {
                ratios++;
                var side = bound.isFixed(brief.batch()) ? Side.FIXED : bound.max() == null ? Side.MIN : Side.MAX;
                checkEverywhere(brief, bound, side);
            }
        }
    }

    private static void checkEverywhere(Brief brief, Bound bound, Side side) {
        var limit = Objects.requireNonNull(side == Side.MIN ? bound.min() : bound.max());
        var far = limit.number().abs().divide(2).add(BigFraction.of(1, 100));
        var curve = BoundTracing.of(
                        PLANNER,
                        brief,
                        bound,
                        side,
                        limit.number().subtract(far),
                        limit.number().add(far))
                .orElseThrow();
        for (int i = 0; i + 1 < curve.points().size(); i++) {
            var a = curve.points().get(i);
            var b = curve.points().get(i + 1);
            Statistics.label("kind").collect(a.kind());
            if (!a.at().equals(b.at())) {
                var place = a.at().add(b.at().subtract(a.at()).divide(3));
                var told = a.costPerKg().add(curve.after(i).orElseThrow().rise(place));
                assertThat(cost(brief, bound, side, place)).contains(told);
            }
        }
        checkEnd(brief, bound, side, curve.points().get(0), curve.low(), BigFraction.of(-1, 1000));
        var last = curve.points().get(curve.points().size() - 1);
        checkEnd(brief, bound, side, last, curve.high(), BigFraction.of(1, 1000));
    }

    private static void checkEnd(Brief brief, Bound bound, Side side, Point point, End end, BigFraction by) {
        Statistics.label("ends").collect(end);
        var beyond = cost(brief, bound, side, point.at().add(by));
        if (end == End.NO_BLEND) {
            assertThat(beyond).as("beyond the end of %s", bound.path()).isEmpty();
        } else if (end == End.NOTHING_CHANGES) {
            assertThat(beyond).as("beyond the end of %s", bound.path()).contains(point.costPerKg());
        } else {
            assertThat(end).isEqualTo(End.ASKED);
        }
    }

    private static Optional<BigFraction> cost(Brief brief, Bound bound, Side side, BigFraction number) {
        var unit = Objects.requireNonNull(side == Side.MIN ? bound.min() : bound.max())
                .unit();
        var moved = Quantity.of(number, unit, "moved");
        var changed = bound.withLimits(side == Side.MAX ? bound.min() : moved, side == Side.MIN ? bound.max() : moved);
        return PLANNER.cheapest(brief.replacing(bound, changed)).orUndecided().map(Blend::costPerKg);
    }

    /** The brief with the number at that place. */
    private interface At {
        Brief at(BigFraction place);
    }

    private static void assertStraight(Curve curve, At place) {
        for (int i = 0; i + 1 < curve.points().size(); i++) {
            var a = curve.points().get(i);
            var b = curve.points().get(i + 1);
            var middle = a.at().add(b.at()).divide(2);
            var cost = PLANNER.cheapest(place.at(middle)).orElseThrow().costPerKg();
            assertThat(cost).isEqualTo(a.costPerKg().add(b.costPerKg()).divide(2));
            assertThat(PLANNER.cheapest(place.at(b.at())).orElseThrow().costPerKg())
                    .isEqualTo(b.costPerKg());
        }
    }

    private static void assertSlopesFall(Curve curve) {
        for (int i = 1; i < curve.segments().size(); i++) {
            var rise = curve.segments()
                    .get(i)
                    .slope()
                    .subtract(curve.segments().get(i - 1).slope());
            assertThat(rise.signum()).isNegative();
        }
    }

    private static void assertSlopesRise(Curve curve) {
        for (int i = 1; i < curve.segments().size(); i++) {
            var rise = curve.segments()
                    .get(i)
                    .slope()
                    .subtract(curve.segments().get(i - 1).slope());
            assertThat(rise.signum()).isPositive();
        }
    }

    /** What the curve says of a place at or beyond its first point. */
    private static BigFraction costAt(Curve curve, BigFraction place) {
        int last = 0;
        for (int i = 1; i < curve.points().size(); i++) {
            last = curve.points().get(i).at().subtract(place).signum() <= 0 ? i : last;
        }
        var point = curve.points().get(last);
        var slope = curve.segments().get(last).slope();
        return point.costPerKg().add(slope.multiply(place.subtract(point.at())));
    }

    private static Brief moved(Brief brief, Bound bound, BigFraction number) {
        var limit = Objects.requireNonNull(bound.min());
        return brief.replacing(bound, bound.withLimits(Quantity.of(number, limit.unit(), "moved"), null));
    }
}
