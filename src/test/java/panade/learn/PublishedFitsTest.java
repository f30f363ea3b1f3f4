package panade.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import panade.learn.Prediction.Of;
import tools.jackson.databind.JsonNode;

/** Published mixture experiments (sources beside the data), against R's lm() and numpy. */
class PublishedFitsTest {
    /** Relative, in percent: 1e-8. */
    private static final double CLOSE = 1e-6;

    static Stream<Arguments> fits() {
        return PublishedFits.checks().stream()
                .flatMap(check -> StreamSupport.stream(check.get("fits").spliterator(), false)
                        .filter(fit -> fit.has("residualDf"))
                        .map(fit -> Arguments.of(
                                check.get("id").asString(), fit.get("form").asString())));
    }

    @ParameterizedTest
    @MethodSource("fits")
    void coefficients_and_standard_errors_are_those_published(String id, String form) {
        var check = PublishedFits.check(id);
        var published = PublishedFits.fit(check, form);
        var fit = PublishedFits.fitted(check, form);
        for (int i = 0; i < fit.terms().size(); i++) {
            close(fit.coefficient(i), published.get("coefficients").get(i));
            close(
                    Distributions.root(fit.variance(i).orElseThrow()),
                    published.get("standardErrors").get(i));
        }
        assertThat(fit.degrees()).isEqualTo(published.get("residualDf").asInt());
        close(fit.sse(), published.get("sse"));
        close(fit.mostLeverage(), published.get("maxLeverage"));
    }

    @ParameterizedTest
    @MethodSource("fits")
    void variation_and_lack_of_fit_are_those_published(String id, String form) {
        var check = PublishedFits.check(id);
        var published = PublishedFits.fit(check, form);
        var fit = PublishedFits.fitted(check, form);
        var variation = Variation.of(fit);
        close(variation.total(), published.get("sst"));
        close(variation.r2().orElseThrow(), published.get("r2"));
        close(variation.f().orElseThrow(), published.get("F"));
        if (published.has("press")) {
            close(fit.press().orElseThrow(), published.get("press"));
            close(variation.predictedR2().orElseThrow(), published.get("predictedR2"));
        }
        checkLackOfFit(fit, published);
    }

    private static void checkLackOfFit(Fit fit, JsonNode published) {
        var pure = LackOfFit.PureError.of(fit.observations());
        assertThat(pure.degrees()).isEqualTo(published.path("pureErrorDf").asInt(pure.degrees()));
        var test = LackOfFit.of(fit, pure);
        if (published.has("lackOfFitF")) {
            close(pure.ss(), published.get("pureErrorSS"));
            assertThat(test.orElseThrow().degrees())
                    .isEqualTo(published.get("lackOfFitDf").asInt());
            close(test.orElseThrow().ss(), published.get("lackOfFitSS"));
            close(test.orElseThrow().f(), published.get("lackOfFitF"));
            assertThat(test.orElseThrow().p().doubleValue())
                    .isCloseTo(published.get("lackOfFitP").asDouble(), withPercentage(CLOSE));
        }
    }

    /** Cornell's yarn data: predictions, two-sided 95 % intervals and one-sided bounds by R's predict.lm. */
    @Test
    void predictions_of_yarn_and_their_intervals() {
        var fit = PublishedFits.fitted(PublishedFits.check("yarn-elongation"), "quadratic");
        var centre = fit.at(PublishedFits.point("1/3", "1/3", "1/3"));
        checkPrediction(centre, "14.81111111", "0.3968324514", "16.94086316", "15.70880848", "13.08529113");
        var edge = fit.at(PublishedFits.point("1/2", "0", "1/2"));
        checkPrediction(edge, "16.9", "0.4929127336", "19.13009214", "18.01504607", "15.09287059");
        var third = fit.at(PublishedFits.point("29/100", "0", "71/100"));
        assertThat(third.mean()).isEqualTo(BigFraction.parse("1738426/100000"));
    }

    private static void checkPrediction(
            Prediction at, String mean, String error, String batch, String of, String sure) {
        var twoSided = BigFraction.of(95, 100);
        var found = at.mean().bigDecimalValue(12, java.math.RoundingMode.HALF_EVEN);
        assertThat(found).isCloseTo(new BigDecimal(mean), within(new BigDecimal("1e-8")));
        assertThat(at.standardError(Of.MEAN).orElseThrow())
                .isCloseTo(new BigDecimal(error), within(new BigDecimal("1e-9")));
        assertThat(found.add(at.around(twoSided, Of.BATCH).orElseThrow()))
                .isCloseTo(new BigDecimal(batch), within(new BigDecimal("1e-8")));
        assertThat(found.add(at.around(twoSided, Of.MEAN).orElseThrow()))
                .isCloseTo(new BigDecimal(of), within(new BigDecimal("1e-8")));
        assertThat(found.subtract(at.below(twoSided, Of.BATCH).orElseThrow()))
                .isCloseTo(new BigDecimal(sure), within(new BigDecimal("1e-8")));
    }

    /** 27/512 and 164/25 by hand, in fractions; the coefficients are Cornell's printed ones exactly. */
    @Test
    void yarn_is_exact() {
        var fit = PublishedFits.fitted(PublishedFits.check("yarn-elongation"), "quadratic");
        assertThat(fit.determinant()).isEqualTo(BigFraction.of(27, 512));
        assertThat(fit.sse()).isEqualTo(BigFraction.of(164, 25));
        assertThat(Stream.of(0, 1, 2, 3, 4, 5).map(fit::coefficient))
                .containsExactlyElementsOf(PublishedFits.point("117/10", "47/5", "82/5", "19", "57/5", "-48/5"));
    }

    /**
     * Lawson and Erjavec's design is saturated but for its centre: whole coefficients, and six points that stand alone.
     */
    @Test
    void press_is_refused_where_a_trial_stands_alone() {
        var fit = PublishedFits.fitted(PublishedFits.check("weed-control"), "specialCubic");
        assertThat(Stream.of(0, 1, 2, 3, 4, 5, 6).map(fit::coefficient))
                .containsExactlyElementsOf(PublishedFits.point("73", "68", "80", "26", "38", "4", "264"));
        assertThat(fit.press()).isEmpty();
        assertThat(fit.residuals().stream().filter(Residual::isAlone)).hasSize(6);
        assertThat(Coverage.of(fit, BigFraction.of(9, 10))).isEmpty();
    }

    /** Gorman and Hinman's two check blends, predicted from the seven others. */
    @Test
    void octane_of_the_check_blends_is_predicted() {
        var check = PublishedFits.check("octane");
        var terms = Form.SPECIAL_CUBIC.terms(3, false, Set.of());
        var all = PublishedFits.observations(check);
        var fit = (Fit) Fit.of(terms, all.subList(0, 7), Prior.none(terms.size()));
        assertThat(fit.variance()).isEmpty();
        for (int i = 0; i < 2; i++) {
            close(
                    fit.at(all.get(7 + i).levers()).mean(),
                    check.get("fits").get(0).get("checkPredicted").get(i));
        }
    }

    /**
     * The forms that the data of their books ask for: yarn bends, shortbread and etch rates need the centre's term, by
     * their published lack of fit and PRESS.
     */
    @Test
    void the_checks_choose_the_form() {
        assertThat(chosen("yarn-elongation", 3)).isEqualTo(Form.QUADRATIC);
        assertThat(chosen("etch-rate", 3)).isEqualTo(Form.SPECIAL_CUBIC);
        assertThat(chosen("screening-8-components", 8)).isEqualTo(Form.LINEAR);
        assertThat(chosen("polvoron", 3)).isEqualTo(Form.SPECIAL_CUBIC);
    }

    private static Form chosen(String id, int levers) {
        var observations = PublishedFits.observations(PublishedFits.check(id));
        return new FormChoice(levers, false, Set.of(), Set.of(), observations).form();
    }

    @Test
    void a_form_has_the_terms_of_its_name() {
        assertThat(Form.SPECIAL_CUBIC.terms(3, false, Set.of()))
                .isEqualTo(PublishedFits.terms(PublishedFits.fit(PublishedFits.check("etch-rate"), "specialCubic")));
        assertThat(Form.QUADRATIC.terms(2, true, Set.of(0, 1)))
                .isEqualTo(List.of(Term.of(), Term.of(0), Term.of(1), Term.of(0, 0), Term.of(0, 1), Term.of(1, 1)));
    }

    private static void close(BigFraction found, JsonNode published) {
        assertThat(found.doubleValue())
                .isCloseTo(published.asDouble(), withPercentage(found.abs().doubleValue() < 1e-9 ? 100 : CLOSE));
    }

    private static void close(BigDecimal found, JsonNode published) {
        assertThat(found.doubleValue()).isCloseTo(published.asDouble(), withPercentage(CLOSE));
    }
}
