package panade.certify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/** A kilogram of a at 3 or b at 1, at least a quarter of it a: by hand 1/4 x 3 + 3/4 x 1 = 3/2, multipliers 1 and 2. */
class OptimalityProofTest {
    private static final LinearModel MODEL = new LinearModel(
            List.of(new Column("a", BigFraction.of(3)), new Column("b", BigFraction.ONE)),
            List.of(
                    new Row("batch", Map.of(0, BigFraction.ONE, 1, BigFraction.ONE), Sense.EQUAL, BigFraction.ONE),
                    new Row("floor", Map.of(0, BigFraction.ONE), Sense.AT_LEAST, BigFraction.of(1, 4))));

    @Test
    void the_least_cost_is_proved_with_no_gap() {
        var proof = check(BigFraction.of(1, 4), BigFraction.of(2));
        assertThat(proof.isComplete()).isTrue();
        assertThat(proof.gap()).isEqualTo(BigFraction.ZERO);
    }

    @Test
    void a_dearer_blend_is_told_with_its_gap() {
        // half and half costs 2, half above the 3/2 that are proved
        var proof = check(BigFraction.of(1, 2), BigFraction.of(2));
        assertThat(proof.isFeasible()).isTrue();
        assertThat(proof.isBounded()).isTrue();
        assertThat(proof.gap()).isEqualTo(BigFraction.of(1, 2));
        assertThat(proof.isComplete()).isFalse();
    }

    @Test
    void a_blend_that_breaks_a_row_is_not_feasible() {
        var proof = check(BigFraction.of(1, 5), BigFraction.of(2));
        assertThat(proof.isFeasible()).isFalse();
        assertThat(proof.isComplete()).isFalse();
    }

    @Test
    void multipliers_that_gain_on_a_column_prove_nothing() {
        var proof = check(BigFraction.of(1, 4), BigFraction.of(3));
        assertThat(proof.isBounded()).isFalse();
        assertThat(proof.isComplete()).isFalse();
    }

    private static OptimalityProof check(BigFraction a, BigFraction floor) {
        return OptimalityProof.check(
                MODEL, List.of(a, BigFraction.ONE.subtract(a)), List.of(BigFraction.ONE, floor), "by hand");
    }
}
