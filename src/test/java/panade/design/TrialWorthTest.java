package panade.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.learn.Distributions;
import panade.learn.Fit;
import panade.learn.Observation;
import panade.learn.Prediction;
import panade.learn.Prior;
import panade.quantity.Decimal;
import panade.testing.RepeatableSeeds;

/**
 * What another trial of the yarn experiment (Cornell, Experiments with Mixtures; data as in the R package mixexp) would
 * be worth where a mean elongation of 14 is to be 95 % sure at invented prices of 2, 1 and 3: against numpy, and
 * against fitting anew.
 */
class TrialWorthTest {
    private static final List<String> YARN = List.of(
            "1 0 0 11",
            "1 0 0 12.4",
            "0.5 0.5 0 15",
            "0.5 0.5 0 14.8",
            "0.5 0.5 0 16.1",
            "0 1 0 8.8",
            "0 1 0 10",
            "0 0.5 0.5 10",
            "0 0.5 0.5 9.7",
            "0 0.5 0.5 11.8",
            "0 0 1 16.8",
            "0 0 1 16",
            "0.5 0 0.5 17.7",
            "0.5 0 0.5 16.4",
            "0.5 0 0.5 16.6");
    private static final List<BigFraction> OPTIMUM = Points.point("0.40034891 0.59965109 0");
    private static final BigFraction SURE = Decimal.of("0.95");

    /** Optimum, shadow price and savings computed with numpy. */
    @Test
    void savings_computed_elsewhere() {
        var worth = new TrialWorth(fitted(yarn()), OPTIMUM, SURE, Prediction.Of.MEAN);
        var price = new BigDecimal("0.17711");
        var expected = Map.of(
                "1 0 0", 0.000261,
                "0 1 0", 0.000586,
                "0 0 1", 0.0,
                "1/2 1/2 0", 0.020201,
                "1/2 0 1/2", 0.0,
                "0 1/2 1/2", 0.0,
                "1/3 1/3 1/3", 0.004018,
                "0.40034891 0.59965109 0", 0.020131);
        expected.forEach((tried, saving) -> {
            var found = worth.saving(List.of(Points.point(tried)), price)
                    .orElseThrow()
                    .doubleValue();
            assertThat(found).as(tried).isCloseTo(saving, within(2e-6));
        });
    }

    /** A trial that comes out as predicted, added and fitted with the others, its error judged as before. */
    @Test
    void a_trial_is_worth_what_fitting_anew_comes_to() {
        var fit = fitted(yarn());
        var variance = fit.variance().orElseThrow();
        var quantile = Distributions.student(fit.degrees(), SURE);
        var random = new Random(RepeatableSeeds.seed("a_trial_is_worth"));
        for (int round = 0; round < 20; round++) {
            var tried = shares(random);
            var optimum = shares(random);
            var more = new ArrayList<>(yarn());
            more.add(Observation.of(tried, fit.at(tried).mean()));
            var anew = fitted(more).at(optimum);
            assertThat(fit.after(List.of(tried), optimum).form()).isEqualTo(anew.form());
            assertThat(fit.after(List.of(tried), optimum).mean()).isEqualTo(anew.mean());
            for (var own : List.of(Prediction.Of.MEAN, Prediction.Of.BATCH)) {
                int batch = own == Prediction.Of.BATCH ? 1 : 0;
                var before =
                        Distributions.root(fit.at(optimum).form().add(batch).multiply(variance));
                var after = Distributions.root(anew.form().add(batch).multiply(variance));
                var expected = before.subtract(after).multiply(quantile).doubleValue();
                assertThat(new TrialWorth(fit, optimum, SURE, own)
                                .margin(List.of(tried))
                                .orElseThrow()
                                .doubleValue())
                        .isCloseTo(expected, within(1e-15));
            }
        }
    }

    @Test
    void where_no_error_can_be_judged_nothing_is_promised() {
        var corners = Stream.of(0, 2, 5, 7, 10, 12).map(yarn()::get).toList();
        var worth = new TrialWorth(fitted(corners), OPTIMUM, SURE, Prediction.Of.MEAN);
        assertThat(worth.margin(List.of(OPTIMUM))).isEmpty();
    }

    private static List<BigFraction> shares(Random random) {
        int first = random.nextInt(101);
        int second = random.nextInt(101 - first);
        return Stream.of(first, second, 100 - first - second)
                .map(part -> BigFraction.of(part, 100))
                .toList();
    }

    private static List<Observation> yarn() {
        return YARN.stream()
                .map(Points::point)
                .map(row -> Observation.of(row.subList(0, 3), row.get(3)))
                .toList();
    }

    private static Fit fitted(List<Observation> observations) {
        return (Fit) Fit.of(InformationTest.QUADRATIC_OF_3, observations, Prior.none(6));
    }
}
