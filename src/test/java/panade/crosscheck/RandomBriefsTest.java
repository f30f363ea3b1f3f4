package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.RoundingMode;
import java.time.Duration;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel;
import panade.solver.Solver;
import panade.solver.SolverAnswer;
import panade.solver.ortools.OrToolsSolver;

/** Random briefs against another solver, against themselves and against the numbers they were made of. */
class RandomBriefsTest {
    private static final Solver SOLVER = new OrToolsSolver();

    /** Claims nothing, so that the exact simplex has to do it all. */
    private static final Solver SILENT = new Solver() {
        @Override
        public String name() {
            return "none";
        }

        @Override
        public SolverAnswer solve(LinearModel model, Duration limit) {
            return new SolverAnswer.Undecided("not asked");
        }
    };

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    void the_least_cost_agrees_with_a_reference_solver(@ForAll("problems") RawProblem problem) {
        double cost = Answer.cost(problem, SOLVER).doubleValue();
        double reference = ReferenceModel.leastCost(problem);
        assertThat(cost).isCloseTo(reference, within(Math.max(1e-9, 1e-7 * Math.abs(reference))));
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    void the_blend_meets_every_bound_exactly(@ForAll("problems") RawProblem problem) {
        new Recheck(problem, Answer.blended(problem, SOLVER).blend()).holds();
    }

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void dearer_prices_raise_the_cost_by_the_same_factor(@ForAll("problems") RawProblem problem) {
        var threefold = Answer.cost(problem, SOLVER).multiply(3);
        assertThat(Answer.cost(problem.dearer(3), SOLVER)).isEqualTo(threefold);
    }

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void a_tighter_bound_never_lowers_the_cost(@ForAll("problems") RawProblem problem) {
        var cost = Answer.cost(problem, SOLVER);
        for (var bound : problem.bounds()) {
            var tighter = problem.replacing(tightened(problem, bound));
            assertThat(Answer.cost(tighter, SOLVER)).as(bound.path()).isGreaterThanOrEqualTo(cost);
        }
    }

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void the_order_of_the_ingredients_does_not_change_the_cost(@ForAll("problems") RawProblem problem) {
        assertThat(Answer.cost(problem.backwards(), SOLVER)).isEqualTo(Answer.cost(problem, SOLVER));
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void the_exact_simplex_alone_finds_the_same_cost(@ForAll("problems") RawProblem problem) {
        assertThat(Answer.cost(problem, SILENT)).isEqualTo(Answer.cost(problem, SOLVER));
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void a_shadow_price_tells_the_cost_of_a_moved_number(@ForAll("problems") RawProblem problem) {
        var answer = Answer.blended(problem, SOLVER);
        int moves = new ShadowPriceCheck(problem, answer, SOLVER).holds();
        Statistics.label("numbers moved").collect(Math.min(moves, 6));
    }

    /** Halfway to what the hidden blend has, so that the hidden blend still meets it. */
    private static RawBound tightened(RawProblem problem, RawBound bound) {
        var per = bound.per().map(form -> Exact.times(form, problem.hidden())).orElse(BigFraction.ONE);
        var value = Exact.times(bound.of(), problem.hidden()).divide(per);
        return bound.with(
                bound.min().map(min -> Exact.decimal(Exact.of(min).add(value).divide(2), 12, RoundingMode.FLOOR)),
                bound.max().map(max -> Exact.decimal(Exact.of(max).add(value).divide(2), 12, RoundingMode.CEILING)));
    }
}
