package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.explain.conflict.Move;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.reach.Reaching;
import panade.solver.ortools.OrToolsSolver;
import panade.testing.Planners;

/** What must give for a price, against solves with the number moved, moved a little less, and dropped. */
class TargetsTest {
    private static final Planner PLANNER = Planners.LINEAR;

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void each_move_is_enough_and_nothing_less_is(
            @ForAll("problems") RawProblem problem, @ForAll @IntRange(min = 1, max = 30) int percentOff) {
        var best = Answer.blended(problem, new OrToolsSolver());
        var wanted = best.blend().costPerKg().multiply(BigFraction.of(100 - percentOff, 100));
        var target = Reaching.of(PLANNER, best, wanted, null);
        for (var move : target.moves()) {
            var bound = bound(best.brief(), move);
            if (bound.isPresent()) {
                check(best.brief(), bound.get(), move, wanted);
            }
        }
        Statistics.label("moves").collect(Math.min(4, target.moves().size()));
        Statistics.label("pair").collect(!target.pair().isEmpty());
    }

    private static Optional<Bound> bound(Brief brief, Move move) {
        return brief.bounds().stream()
                .filter(bound ->
                        move.path().startsWith(bound.path()) && move.name().equals(bound.name()))
                .filter(bound -> bound.min() == null || bound.max() == null)
                .findFirst();
    }

    private static void check(Brief brief, Bound bound, Move move, BigFraction wanted) {
        var to = move.to();
        if (to == null) {
            assertThat(cost(brief.replacing(bound, bound.withLimits(null, null))))
                    .contains(move.costPerKg());
            assertThat(move.costPerKg().subtract(wanted).signum()).isPositive();
            return;
        }
        assertThat(cost(moved(brief, bound, move, to))).contains(move.costPerKg());
        assertThat(move.costPerKg().subtract(wanted).signum()).isNotPositive();
        // numbers told are rounded to six digits on the easier side
        var step = to.abs().multiply(BigFraction.of(2, 100_000));
        boolean down = move.from().subtract(to).signum() > 0;
        var almost = cost(moved(brief, bound, move, down ? to.add(step) : to.subtract(step)));
        almost.ifPresent(cost -> assertThat(cost.subtract(wanted).signum()).isPositive());
    }

    private static Brief moved(Brief brief, Bound bound, Move move, BigFraction number) {
        var quantity = Quantity.of(number, move.unit(), "moved");
        return brief.replacing(
                bound, bound.withLimits(bound.min() == null ? null : quantity, bound.max() == null ? null : quantity));
    }

    private static Optional<BigFraction> cost(Brief brief) {
        return PLANNER.cheapest(brief).orUndecided().map(blend -> blend.costPerKg());
    }
}
