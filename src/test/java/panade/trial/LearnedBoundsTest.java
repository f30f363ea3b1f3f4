package panade.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.audit.Audit;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Use;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;
import panade.learn.Prediction;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.testing.Planners;

/**
 * Bounds on what trials taught. Eight invented trials of pea in water follow a straight line, whose limits are written
 * out as any handbook has them, {@code mean - t s sqrt(1/n + (x - mx)^2 / Sxx)}, with a one under the root for a single
 * batch (Draper and Smith, "Applied Regression Analysis", ch. 1, from memory); t(95 %, 6) = 1.943 and t(99 %, 6) =
 * 3.143 are of the table in the NIST/SEMATECH e-Handbook, 1.3.6.7.2.
 */
class LearnedBoundsTest {
    private static final double[] SHARES = {10, 12, 15, 18, 20, 22, 25, 30};
    private static final double[] BREAKS = {211, 228, 262, 289, 318, 330, 369, 411};
    private static final double T95 = 1.9431802805;
    private static final double T99 = 3.1426684033;

    @TempDir
    Path folder;

    @Test
    void the_next_batch_keeps_its_floor_where_the_handbook_says() throws IOException {
        var blended = blended(bound("\"min\": \"300 g\", \"sure\": \"95 %\", \"of\": \"batch\""));
        assertThat(pea(blended)).isCloseTo(crossing(x -> limit(x, -T95, 1), 300), within(1e-5));
        assertThat(new Audit(blended.brief(), blended.blend()).faults()).isEmpty();
    }

    @Test
    void the_mean_of_many_may_come_nearer() throws IOException {
        var blended = blended(bound("\"min\": \"300 g\", \"sure\": \"95 %\", \"of\": \"mean\""));
        assertThat(pea(blended)).isCloseTo(crossing(x -> limit(x, -T95, 0), 300), within(1e-5));
    }

    @Test
    void a_batch_is_meant_where_nothing_else_is_said_and_more_sureness_costs_more() throws IOException {
        var blended = blended(bound("\"min\": \"300 g\", \"sure\": \"99 %\""));
        assertThat(pea(blended)).isCloseTo(crossing(x -> limit(x, -T99, 1), 300), within(1e-5));
    }

    /** Water is dearer here, so that the ceiling holds the pea down. */
    @Test
    void a_ceiling_is_kept_from_below() throws IOException {
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\npea,a,1,kg\nwater,tap,4,kg\n");
        var blended = blended(bound("\"max\": \"350 g\", \"sure\": \"95 %\""));
        assertThat(pea(blended)).isCloseTo(crossing(x -> limit(x, T95, 1), 350), within(1e-5));
    }

    @Test
    void a_floor_that_is_easily_kept_leaves_the_blend_within_what_was_tried() throws IOException {
        var blended = blended(bound("\"min\": \"100 g\", \"sure\": \"95 %\""));
        assertThat(blended.blend().shareOf("pea")).isEqualTo(BigFraction.of(1, 10));
        var wall = blended.explanation().limits().get(1);
        assertThat(wall.kind()).isEqualTo(LimitKind.TRIED);
        // a tenth of a per cent less pea is worth 4 a kilogram of it
        assertThat(Objects.requireNonNull(Objects.requireNonNull(wall.price()).whenRaised()))
                .isEqualTo(BigFraction.of(4, 100));
    }

    @Test
    void what_lies_beyond_what_was_tried_cannot_be_had() throws IOException {
        var outcome = Planners.LINEAR.plan(brief(bound("\"min\": \"450 g\", \"sure\": \"95 %\"")));
        var conflict = ((Outcome.Conflicted) outcome).conflict();
        assertThat(conflict.cures()).hasSize(1);
        assertThat(conflict.cures().get(0).path()).isEqualTo("/bounds/0/min");
    }

    /** The dumpling filling's own trials, two levers on two days: predicted by the fit itself, not by the bound. */
    @Test
    void the_demos_filling_is_predicted_to_hold_as_surely_as_asked() {
        var blended = (Blended) Planners.LINEAR.answer(read(Path.of("constraints/dumpling-filling-tried.json")));
        var file = Path.of("ingredient-sets/netherpleat/trials-dumpling-filling.json");
        var trials = ((Reading.Accepted<TrialSet>) Documents.readTrials(file)).value();
        var fitted = Fitting.of(trials, BigFraction.of(9, 10)).get(0);
        assertThat(fitted.response().name()).isEqualTo("break");
        var kilograms = new HashMap<Use, BigFraction>();
        blended.blend().lines().forEach(line -> kilograms.merge(line.use(), line.share(), BigFraction::add));
        var weighed = new Weighed(kilograms);
        var predicted = PredictedFormula.of("blend", weighed, trials.brief().composition(), fitted)
                .orElseThrow();
        var below =
                predicted.at().below(BigFraction.of(9, 10), Prediction.Of.BATCH).orElseThrow();
        assertThat(predicted.at().mean().doubleValue() - below.doubleValue()).isCloseTo(350, within(1e-4));
        assertThat(predicted.outside()).isEmpty();
    }

    /** Straight by least squares. */
    private static double limit(double x, double quantile, int batches) {
        int n = SHARES.length;
        double mx = 0;
        double my = 0;
        for (int i = 0; i < n; i++) {
            mx += SHARES[i] / n;
            my += BREAKS[i] / n;
        }
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < n; i++) {
            sxx += (SHARES[i] - mx) * (SHARES[i] - mx);
            sxy += (SHARES[i] - mx) * (BREAKS[i] - my);
        }
        double slope = sxy / sxx;
        double sse = 0;
        for (int i = 0; i < n; i++) {
            sse += Math.pow(BREAKS[i] - my - slope * (SHARES[i] - mx), 2);
        }
        double error = Math.sqrt(sse / (n - 2) * (batches + 1.0 / n + (x - mx) * (x - mx) / sxx));
        return my + slope * (x - mx) + quantile * error;
    }

    /** Where a limit that rises reaches a number. */
    private static double crossing(DoubleUnaryOperator limit, double number) {
        double low = SHARES[0];
        double high = SHARES[SHARES.length - 1];
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (limit.applyAsDouble(middle) < number) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double pea(Blended blended) {
        return blended.blend().shareOf("pea").doubleValue() * 100;
    }

    private static String bound(String rest) {
        return "{\"name\": \"holds\", \"learned\": \"break\", " + rest + "}";
    }

    private Blended blended(String bound) throws IOException {
        return (Blended) Planners.LINEAR.plan(brief(bound));
    }

    private Brief brief(String bound) throws IOException {
        var trials = new StringBuilder();
        for (int i = 0; i < SHARES.length; i++) {
            trials.append(i == 0 ? "" : ", ")
                    .append("{\"id\": \"T" + i + "\", \"weighed\": {\"mix\": {\"pea\": \"" + (int) SHARES[i]
                            + " g\", \"water\": \"" + (100 - (int) SHARES[i])
                            + " g\"}}, \"measured\": {\"break\": [" + (int) BREAKS[i] + "]}}");
        }
        write(
                "trials.json",
                "{\"brief\": \"brief.json\", \"responses\": {\"break\": {\"unit\": \"g\"}}, \"levers\":"
                        + " {\"pea\": {\"ingredient\": \"pea\"}}, \"forms\": {\"break\": {\"form\": \"linear\"}},"
                        + " \"trials\": [" + trials + "]}");
        write(
                "set.json",
                "{\"ingredients\": [{\"id\": \"pea\", \"values\": {}}, {\"id\": \"water\", \"values\": {}}]}");
        if (!Files.exists(folder.resolve("prices.csv"))) {
            write("prices.csv", "ingredient,supplier,price,per\npea,a,4,kg\nwater,tap,0,kg\n");
        }
        write(
                "brief.json",
                "{\"ingredients\": \"set.json\", \"prices\": [\"prices.csv\"], \"batch\": \"1 kg\", \"trials\":"
                        + " \"trials.json\", \"bounds\": [" + bound + "]}");
        return read(folder.resolve("brief.json"));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private static Brief read(Path file) {
        var reading = Documents.readBrief(file, Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
