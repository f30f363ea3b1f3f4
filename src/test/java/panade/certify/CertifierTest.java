package panade.certify;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.certify.sensitivity.Sensitivity;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.quantity.Decimal;
import panade.solver.SolverAnswer;

class CertifierTest {
    private static final SolverAnswer SILENCE = new SolverAnswer.Undecided("no solver here");

    /** Winston, "Operations Research: Applications and Algorithms", 4th ed. 2004, section 3.4: the four desserts. */
    private static final LinearModel DESSERTS = new LinearModel(
            List.of(
                    column("brownie", "50"),
                    column("icecream", "20"),
                    column("cola", "30"),
                    column("cheesecake", "80")),
            List.of(
                    row("calories", Sense.AT_LEAST, "500", "400", "200", "150", "500"),
                    row("chocolate", Sense.AT_LEAST, "6", "3", "2", "0", "0"),
                    row("sugar", Sense.AT_LEAST, "10", "2", "2", "4", "4"),
                    row("fat", Sense.AT_LEAST, "8", "2", "4", "1", "5")));

    @Test
    void winstons_diet_costs_ninety_cents_with_his_dual_prices() {
        var optimum = optimum(DESSERTS, SILENCE);
        assertThat(optimum.point()).containsExactly(number("0"), number("3"), number("1"), number("0"));
        assertThat(optimum.multipliers()).containsExactly(number("0"), number("2.5"), number("7.5"), number("0"));
        assertThat(optimum.engine()).isEqualTo(Certifier.EXACT_ENGINE);
    }

    @Test
    void a_wrong_basis_is_mended() {
        var wrong = new SolverAnswer.Optimal(new Basis(Set.of(0, 3), Set.of(0, 1)));
        assertThat(optimum(DESSERTS, wrong).point())
                .isEqualTo(optimum(DESSERTS, SILENCE).point());
    }

    @Test
    void a_solver_that_wrongly_says_infeasible_is_overruled() {
        assertThat(optimum(DESSERTS, new SolverAnswer.Infeasible()).multipliers())
                .isEqualTo(optimum(DESSERTS, SILENCE).multipliers());
    }

    @Test
    void an_excess_of_a_hundred_millionth_is_still_impossible() {
        var model = new LinearModel(
                List.of(column("a", "1"), column("b", "2")),
                List.of(row("all", Sense.EQUAL, "1", "1", "1"), row("most", Sense.AT_MOST, "0.99999999", "1", "1")));
        assertThat(Certifier.certify(model, SILENCE, "none")).isInstanceOf(Verdict.Impossible.class);
    }

    @Test
    void two_equations_that_disagree_are_impossible_and_two_that_agree_are_one() {
        var one = row("one", Sense.EQUAL, "1", "1", "1");
        var columns = List.of(column("a", "1"), column("b", "2"));
        var twice = new LinearModel(columns, List.of(one, row("twice", Sense.EQUAL, "2", "2", "2")));
        var clash = new LinearModel(columns, List.of(one, row("clash", Sense.EQUAL, "3", "2", "2")));
        assertThat(optimum(twice, SILENCE).point()).containsExactly(number("1"), number("0"));
        assertThat(Certifier.certify(clash, SILENCE, "none")).isInstanceOf(Verdict.Impossible.class);
    }

    @Test
    void a_cost_without_end_is_told_as_such() {
        var model = new LinearModel(List.of(column("a", "-1")), List.of(row("least", Sense.AT_LEAST, "1", "1")));
        assertThat(Certifier.certify(model, SILENCE, "none")).isInstanceOf(Verdict.Unbounded.class);
    }

    @Test
    void a_proof_with_one_sign_turned_is_no_proof() {
        var optimum = optimum(DESSERTS, SILENCE);
        for (int i : List.of(1, 2)) {
            var turned = new ArrayList<>(optimum.multipliers());
            turned.set(i, turned.get(i).negate());
            assertThat(Certificate.provesOptimal(DESSERTS, optimum.point(), turned))
                    .isFalse();
        }
        assertThat(Certificate.provesOptimal(DESSERTS, optimum.point(), optimum.multipliers()))
                .isTrue();
    }

    @Test
    void a_multiplier_of_the_wrong_sign_is_refused_even_where_all_sums_agree() {
        var model = new LinearModel(
                List.of(column("a", "1")),
                List.of(row("least", Sense.AT_LEAST, "1", "1"), row("most", Sense.AT_MOST, "5", "1")));
        // five is feasible, costs nothing by the multipliers and equals their bound; only the sign gives it away
        assertThat(Certificate.provesOptimal(model, List.of(number("5")), List.of(number("0"), number("1"))))
                .isFalse();
        assertThat(Certificate.provesImpossible(model, List.of(number("-2"), number("1"))))
                .isFalse();
        var paid = model.withCosts(List.of(number("-1")));
        assertThat(Certificate.provesOptimal(paid, List.of(number("1")), List.of(number("-1"), number("0"))))
                .isFalse();
    }

    @Test
    void a_dearer_point_or_one_that_breaks_a_floor_is_not_proved() {
        var optimum = optimum(DESSERTS, SILENCE);
        var dearer = List.of(number("1"), number("3"), number("1"), number("0"));
        var short_ = List.of(number("0"), number("2.9999999999"), number("1"), number("0"));
        assertThat(Certificate.provesOptimal(DESSERTS, dearer, optimum.multipliers()))
                .isFalse();
        assertThat(Certificate.provesOptimal(DESSERTS, short_, optimum.multipliers()))
                .isFalse();
    }

    @Test
    void a_fraction_may_carry_its_sign_below_the_line() {
        var below = BigFraction.of(BigInteger.valueOf(-1), BigInteger.valueOf(-2));
        var row = new Row("half", Map.of(0, BigFraction.ONE), Sense.AT_LEAST, below);
        var model = new LinearModel(List.of(column("a", "1")), List.of(row));
        assertThat(optimum(model, SILENCE).point()).containsExactly(number("0.5"));
    }

    @Test
    void rates_are_one_sided_where_two_ceilings_meet() {
        // least cost with a at most 2 from each of two ceilings: raising one alone gains nothing, lowering costs 1
        var model = new LinearModel(
                List.of(column("a", "1"), column("b", "2")),
                List.of(
                        row("all", Sense.EQUAL, "10", "1", "1"),
                        row("first", Sense.AT_MOST, "2", "1", "0"),
                        row("second", Sense.AT_MOST, "4", "2", "0")));
        var sensitivity = new Sensitivity(optimum(model, SILENCE));
        assertThat(sensitivity.raising(1).orElseThrow().rate()).isEqualTo(number("0"));
        assertThat(sensitivity.lowering(1).orElseThrow().rate()).isEqualTo(number("1"));
        assertThat(sensitivity.lowering(2).orElseThrow().rate()).isEqualTo(number("0.5"));
        assertThat(sensitivity.lowering(1).orElseThrow().reach()).isEqualTo(number("2"));
    }

    private static Verdict.Optimum optimum(LinearModel model, SolverAnswer answer) {
        return (Verdict.Optimum) Certifier.certify(model, answer, "test");
    }

    private static BigFraction number(String decimal) {
        return Decimal.of(decimal);
    }

    private static Column column(String name, String cost) {
        return new Column(name, number(cost));
    }

    private static Row row(String name, Sense sense, String right, String... coefficients) {
        var terms = new HashMap<Integer, BigFraction>();
        for (int j = 0; j < coefficients.length; j++) {
            terms.put(j, number(coefficients[j]));
        }
        return new Row(name, Map.copyOf(terms), sense, number(right));
    }
}
