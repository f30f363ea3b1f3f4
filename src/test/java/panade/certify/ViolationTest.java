package panade.certify;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.solver.SolverAnswer;
import panade.solver.ortools.OrToolsSolver;

/** That a model has no point is proved by how little its rows can be missed; all models invented. */
class ViolationTest {
    private static final OrToolsSolver GLOP = new OrToolsSolver();
    private static final int MODELS = 300;

    /** At least 3 of a and b together, and at most 1 of each: missed by 1, each row counted by its coefficient, one. */
    @Test
    void whatIsMissedIsCountedByHand() {
        var model = new LinearModel(
                List.of(column("a"), column("b")),
                List.of(
                        row("both", Sense.AT_LEAST, 3, Map.of(0, 1, 1, 1)),
                        row("a", Sense.AT_MOST, 1, Map.of(0, 1)),
                        row("b", Sense.AT_MOST, 1, Map.of(1, 1))));
        var least = (Verdict.Optimum) Prover.EXACT.prove(Violation.of(model));
        assertThat(least.model().costAt(least.point())).isEqualTo(BigFraction.ONE);
        var verdict = (Verdict.Impossible) Certifier.certify(model, ViolationTest::glop, "GLOP");
        assertThat(verdict.engine()).isEqualTo("GLOP");
        assertThat(verdict.multipliers()).containsExactly(number(1), number(-1), number(-1));
    }

    /** Whatever the solver calls impossible is proved to be, or found not to be, as the exact simplex alone says. */
    @Test
    void randomModelsHaveAPointOrNoneWhicheverWayThatIsProved() {
        var random = new Random(20261127);
        int impossible = 0;
        for (int i = 0; i < MODELS; i++) {
            var model = random(random);
            var verdict = Certifier.certify(model, ViolationTest::glop, "GLOP");
            var alone = Prover.EXACT.prove(model);
            assertThat(verdict).as("model %d", i).hasSameClassAs(alone);
            if (verdict instanceof Verdict.Impossible proof) {
                assertThat(Certificate.provesImpossible(model, proof.multipliers()))
                        .isTrue();
                impossible++;
            }
        }
        assertThat(impossible).isBetween(MODELS / 10, MODELS - MODELS / 10);
    }

    @Test
    void aBasisOfAModelThatHasAPointRefutesNothing() {
        var model = new LinearModel(List.of(column("a")), List.of(row("least", Sense.AT_LEAST, 1, Map.of(0, 1))));
        assertThat(Violation.refuted(model, glop(Violation.of(model)), "GLOP")).isEmpty();
        assertThat(Certifier.certify(model, asked -> new SolverAnswer.Infeasible(), "wrong"))
                .isInstanceOf(Verdict.Optimum.class);
    }

    private static SolverAnswer glop(LinearModel model) {
        return GLOP.solve(model, Duration.ofSeconds(10));
    }

    private static LinearModel random(Random random) {
        var columns = new ArrayList<Column>();
        for (int j = 0; j < 6; j++) {
            columns.add(new Column("x" + j, number(1 + random.nextInt(9))));
        }
        var rows = new ArrayList<Row>();
        rows.add(row("all", Sense.EQUAL, 1, Map.of(0, 1, 1, 1, 2, 1, 3, 1, 4, 1, 5, 1)));
        for (int i = 0; i < 7; i++) {
            var terms = new TreeMap<Integer, Integer>();
            columns.forEach(column -> terms.put(terms.size(), random.nextInt(20) - 4));
            var sense = random.nextBoolean() ? Sense.AT_LEAST : Sense.AT_MOST;
            rows.add(row("r" + i, sense, random.nextInt(14) + (sense == Sense.AT_MOST ? 1 : -3), terms));
        }
        return new LinearModel(columns, rows);
    }

    private static Column column(String name) {
        return new Column(name, BigFraction.ONE);
    }

    private static Row row(String name, Sense sense, int right, Map<Integer, Integer> terms) {
        var form = new TreeMap<Integer, BigFraction>();
        terms.forEach((j, value) -> form.put(j, number(value)));
        return new Row(name, form, sense, number(right));
    }

    private static BigFraction number(int value) {
        return BigFraction.of(value);
    }
}
