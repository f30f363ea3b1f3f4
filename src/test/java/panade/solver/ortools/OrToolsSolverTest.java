package panade.solver.ortools;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.solver.SolverAnswer;

class OrToolsSolverTest {
    private static final BigFraction ONE = BigFraction.ONE;
    private static final Duration LIMIT = Duration.ofSeconds(10);

    @Test
    void gives_the_basis_of_the_cheapest_blend() {
        var model = model(List.of(3, 1), row(Sense.EQUAL, 1, ONE, ONE), row(Sense.AT_MOST, 2, ONE, ONE));
        assertThat(solve(model)).isEqualTo(new SolverAnswer.Optimal(new Basis(Set.of(1), Set.of(1))));
    }

    @Test
    void says_infeasible_when_a_floor_is_above_a_ceiling() {
        var model = model(List.of(1), row(Sense.AT_LEAST, 2, ONE), row(Sense.AT_MOST, 1, ONE));
        assertThat(solve(model)).isEqualTo(new SolverAnswer.Infeasible());
    }

    @Test
    void says_unbounded_when_the_cost_falls_without_end() {
        assertThat(solve(model(List.of(-1), row(Sense.AT_LEAST, 0, ONE)))).isEqualTo(new SolverAnswer.Unbounded());
    }

    @Test
    void says_infeasible_when_the_cost_would_also_fall_without_end() {
        var model = model(List.of(1, -1), row(Sense.AT_LEAST, 2, ONE, BigFraction.ZERO), row(Sense.AT_MOST, 1, ONE));
        assertThat(solve(model)).isEqualTo(new SolverAnswer.Infeasible());
    }

    @Test
    void meets_rows_of_trace_amounts_and_of_kilograms_together() {
        var trace = BigFraction.of(BigInteger.ONE, BigInteger.TEN.pow(12));
        var floor = new Row("trace", Map.of(0, trace.multiply(5), 1, trace), Sense.AT_LEAST, trace.multiply(3));
        var model = model(List.of(3, 1), row(Sense.EQUAL, 1, ONE, ONE), floor);
        assertThat(solve(model)).isEqualTo(new SolverAnswer.Optimal(new Basis(Set.of(0, 1), Set.of())));
    }

    @Test
    void does_not_take_a_floor_on_trace_amounts_for_met_when_it_cannot_be() {
        var trace = BigFraction.of(BigInteger.ONE, BigInteger.TEN.pow(12));
        var floor = new Row("trace", Map.of(0, trace, 1, trace), Sense.AT_LEAST, trace.multiply(2));
        var model = model(List.of(3, 1), row(Sense.EQUAL, 1, ONE, ONE), floor);
        assertThat(solve(model)).isEqualTo(new SolverAnswer.Infeasible());
    }

    @Test
    void answers_a_model_without_rows_or_columns_by_itself() {
        assertThat(solve(model(List.of(1)))).isInstanceOf(SolverAnswer.Undecided.class);
        assertThat(solve(model(List.of(), row(Sense.AT_MOST, 1)))).isInstanceOf(SolverAnswer.Undecided.class);
    }

    @Test
    void refuses_numbers_beyond_binary_floating_point() {
        var huge = BigFraction.of(BigInteger.TEN.pow(400));
        assertThat(solve(priced(huge))).isInstanceOf(SolverAnswer.Undecided.class);
        assertThat(solve(priced(huge.reciprocal()))).isInstanceOf(SolverAnswer.Undecided.class);
        assertThat(solve(model(List.of(1, 1), row(Sense.AT_LEAST, 1, huge, ONE))))
                .isInstanceOf(SolverAnswer.Undecided.class);
    }

    @Test
    void refuses_a_coefficient_of_a_column_that_is_not_there() {
        assertThat(solve(model(List.of(1), row(Sense.AT_LEAST, 1, ONE, ONE))))
                .isInstanceOf(SolverAnswer.Undecided.class);
    }

    @Test
    void takes_any_time_limit_without_throwing() {
        var model = model(List.of(1), row(Sense.AT_LEAST, 1, ONE));
        var solver = new OrToolsSolver();
        assertThat(solver.solve(model, Duration.ofSeconds(Long.MAX_VALUE))).isInstanceOf(SolverAnswer.Optimal.class);
        assertThat(solver.solve(model, Duration.ZERO)).isNotNull();
        assertThat(solver.solve(model, Duration.ofSeconds(Long.MIN_VALUE))).isNotNull();
    }

    @Test
    void meets_rows_whose_names_are_the_same() {
        var model = model(List.of(1, 1), row(Sense.AT_LEAST, 1, ONE), row(Sense.AT_MOST, 2, ONE));
        assertThat(solve(model)).isInstanceOf(SolverAnswer.Optimal.class);
    }

    private static SolverAnswer solve(LinearModel model) {
        return new OrToolsSolver().solve(model, LIMIT);
    }

    private static LinearModel priced(BigFraction cost) {
        return new LinearModel(List.of(new Column("same", cost)), List.of(row(Sense.AT_LEAST, 1, ONE)));
    }

    private static LinearModel model(List<Integer> costs, Row... rows) {
        var columns = costs.stream()
                .map(cost -> new Column("same", BigFraction.of(cost)))
                .toList();
        return new LinearModel(columns, List.of(rows));
    }

    private static Row row(Sense sense, int right, BigFraction... coefficients) {
        var terms = new TreeMap<Integer, BigFraction>();
        for (int j = 0; j < coefficients.length; j++) {
            terms.put(j, coefficients[j]);
        }
        return new Row("same", terms, sense, BigFraction.of(right));
    }
}
