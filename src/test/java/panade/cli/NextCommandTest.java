package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What to mix next from documents to sheets, worked out again in binary floating point from the same figures: a dough
 * of flour at 1, gum at 200 and water at nothing, gum from 0.2 to 2 % and water from 30 to 50 %. Invented.
 */
class NextCommandTest {
    /** Shares of gum and water, and at which weight a strip breaks. */
    private static final double[][] MADE = {
        {0.004, 0.34, 151},
        {0.016, 0.34, 388},
        {0.004, 0.46, 122},
        {0.016, 0.46, 362},
        {0.010, 0.40, 259},
        {0.010, 0.40, 251}
    };

    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("larder.json"), """
                {"ingredients": [
                  {"id": "flour", "name": "wheat flour", "values": {}, "allergens": ["wheat"]},
                  {"id": "gum", "values": {}, "allergens": []},
                  {"id": "water", "values": {}, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("costs.csv"),
                "ingredient,supplier,price,per\nflour,m,1,kg\ngum,m,200,kg\nwater,m,0.001,kg\n");
        Files.writeString(folder.resolve("dough.json"), """
                {"title": "dough", "ingredients": "larder.json", "prices": ["costs.csv"], "currency": "USD",
                 "batch": "10 kg", "bounds": [
                  {"name": "gum", "ingredient": "gum", "min": "0.2 %", "max": "2 %"},
                  {"name": "wet", "ingredient": "water", "min": "3 kg", "max": "50 %"}]}
                """);
    }

    private String trials(String levers, String process) throws IOException {
        var trials = new ArrayList<String>();
        for (int i = 0; i < MADE.length; i++) {
            trials.add(String.format(
                    Locale.ROOT,
                    """
                    {"id": "T%d", "weighed": {"mix": {"gum": "%.1f g", "water": "%.0f g", "flour": "%.1f g"}}, %s
                     "measured": {"break": %.0f}}""",
                    i + 1,
                    1000 * MADE[i][0],
                    1000 * MADE[i][1],
                    1000 * (1 - MADE[i][0] - MADE[i][1]),
                    process.replace("%d", Integer.toString(10 + 20 * (i % 2))),
                    MADE[i][2]));
        }
        return Files.writeString(folder.resolve("trials.json"), """
                        {"title": "dough trials", "brief": "dough.json", "responses": {"break": {"unit": "g"}},
                         "levers": {%s}, "trials": [%s]}
                        """.formatted(levers, String.join(",\n", trials)))
                .toString();
    }

    private CommandRun next(String... options) throws IOException {
        var words = new ArrayList<>(List.of(
                "next", trials("\"gum\": {\"ingredient\": \"gum\"}, \"water\": {\"ingredient\": \"water\"}", "")));
        words.addAll(List.of(options));
        return CommandRun.of(words.toArray(String[]::new));
    }

    private JsonNode json(String... options) throws IOException {
        var words = new ArrayList<>(List.of(options));
        words.add("--json");
        var run = next(words.toArray(String[]::new));
        assertThat(run.status()).as(run.messages()).isZero();
        return JsonMapper.shared().readTree(run.output());
    }

    private static double cost(double gum, double water) {
        return 1 - gum - water + 200 * gum + 0.001 * water;
    }

    /** Least squares by the normal equations. */
    private static final class Line {
        private final double[][] inverse = new double[3][3];
        private final double[] at = new double[3];
        private final double sigma;
        private final double quantile = TDistribution.of(MADE.length - 3).inverseCumulativeProbability(0.9);

        Line() {
            var matrix = new double[3][6];
            for (int i = 0; i < 3; i++) {
                matrix[i][3 + i] = 1;
                for (var trial : MADE) {
                    for (int j = 0; j < 3; j++) {
                        matrix[i][j] += row(trial)[i] * row(trial)[j];
                    }
                }
            }
            for (int pivot = 0; pivot < 3; pivot++) {
                double by = matrix[pivot][pivot];
                for (int j = 0; j < 6; j++) {
                    matrix[pivot][j] /= by;
                }
                for (int i = 0; i < 3; i++) {
                    double factor = matrix[i][pivot];
                    for (int j = 0; j < 6 && i != pivot; j++) {
                        matrix[i][j] -= factor * matrix[pivot][j];
                    }
                }
            }
            for (int i = 0; i < 3; i++) {
                System.arraycopy(matrix[i], 3, inverse[i], 0, 3);
                for (var trial : MADE) {
                    at[i] += form(unit(i), row(trial)) * trial[2];
                }
            }
            double sse = 0;
            for (var trial : MADE) {
                sse += Math.pow(trial[2] - mean(trial[0], trial[1]), 2);
            }
            sigma = Math.sqrt(sse / (MADE.length - 3));
        }

        static double[] row(double... trial) {
            return new double[] {1, trial[0], trial[1]};
        }

        static double[] unit(int place) {
            var unit = new double[3];
            unit[place] = 1;
            return unit;
        }

        double form(double[] a, double[] b) {
            double sum = 0;
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    sum += a[i] * inverse[i][j] * b[j];
                }
            }
            return sum;
        }

        double mean(double gum, double water) {
            return at[0] + at[1] * gum + at[2] * water;
        }

        double margin(double form) {
            return quantile * sigma * Math.sqrt(1 + form);
        }

        /** By how much less need be kept in hand somewhere after a trial elsewhere. */
        double spared(double[] here, double[] tried) {
            double shared = form(here, tried);
            double after = form(here, here) - shared * shared / (1 + form(tried, tried));
            return margin(form(here, here)) - margin(after);
        }

        double sure(double gum, double water) {
            return mean(gum, water) - margin(form(row(gum, water), row(gum, water)));
        }

        /** The least cost over a fine grid of water, with as little gum as is sure enough. */
        double[] cheapest(double least) {
            double[] best = {0, 0, Double.MAX_VALUE};
            for (int k = 0; k <= 2000; k++) {
                double water = 0.3 + 0.0001 * k;
                double low = 0.002;
                double high = 0.02;
                for (int i = 0; i < 60; i++) {
                    double middle = (low + high) / 2;
                    if (sure(middle, water) < least) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                if (sure(high, water) >= least && cost(high, water) < best[2]) {
                    best = new double[] {high, water, cost(high, water)};
                }
            }
            return best;
        }
    }

    @Test
    void the_cheapest_blend_that_is_sure_enough_and_what_mixings_are_worth() throws IOException {
        var line = new Line();
        var best = line.cheapest(250);
        double price = (line.cheapest(251)[2] - line.cheapest(249)[2]) / 2;
        var answer = json("--need", "break min 250 g", "--per-month", "1000 kg", "--trials", "4");
        assertThat(answer.get("costPerKg").asDouble()).isCloseTo(best[2], within(1e-4));
        double alone = 0;
        var here = Line.row(best);
        for (var trial : answer.get("trials")) {
            var tried = Line.row(
                    trial.get("levers").get("gum").asDouble() / 100,
                    trial.get("levers").get("water").asDouble() / 100);
            double gain = price * line.spared(here, tried);
            assertThat(trial.get("gainPerKg").asDouble()).isCloseTo(gain, within(1e-4));
            alone += gain;
        }
        double together = answer.get("together").asDouble();
        assertThat(together).isPositive().isLessThan(alone);
        assertThat(answer.get("perMonth").asDouble()).isCloseTo(1000 * together, within(1e-6));
        assertThat(answer.get("trials")
                        .valueStream()
                        .map(each -> each.get("why").asString()))
                .contains("confirm", "repeat");
        var only =
                json("--need", "break min 250 g", "--trials", "1").get("trials").get(0);
        assertThat(only.get("why").asString()).isEqualTo("gain");
        for (double gum : new double[] {0.002, 0.011, 0.02}) {
            for (double water : new double[] {0.3, 0.4, 0.5}) {
                double gain = price * line.spared(here, Line.row(gum, water));
                assertThat(only.get("gainPerKg").asDouble()).isGreaterThan(gain - 1e-4);
            }
        }
    }

    /** A straight form over a rectangle is known best from its corners; which are these is seen in the documents. */
    @Test
    void with_nothing_asked_mixings_lie_as_far_apart_as_can_be() throws IOException {
        var answer = json("--trials", "6", "--batch", "100 kg", "--weighing", "1 g");
        var corners = new TreeMap<String, Integer>();
        for (var trial : answer.get("trials")) {
            if (trial.get("why").asString().equals("design")) {
                var levers = trial.get("levers");
                corners.merge(
                        levers.get("gum").asString() + " " + levers.get("water").asString(), 1, Integer::sum);
            }
            assertThat(trial.get("gainPerKg").isNull()).isTrue();
        }
        // the cheapest, mixed twice in any case, is the fourth corner
        corners.put("0.2 50", 2);
        assertThat(corners.keySet()).containsExactly("0.2 30", "0.2 50", "2 30", "2 50");
        assertThat(answer.get("levers").get(1).get("least").asDouble()).isEqualTo(30);
        assertThat(answer.get("open").asString()).contains("say it with --need");
    }

    @Test
    void codes_differ_and_the_repeat_is_the_confirming_mixing_again() throws IOException {
        var answer = json("--trials", "5");
        var codes = new HashSet<Integer>();
        var weighed = new TreeMap<Integer, String>();
        int again = 0;
        int from = 0;
        for (var trial : answer.get("trials")) {
            int code = trial.get("code").asInt();
            codes.add(code);
            weighed.put(code, trial.get("weighed").toString());
            if (trial.get("why").asString().equals("repeat")) {
                again = code;
                from = trial.get("repeats").asInt();
            }
        }
        assertThat(codes).hasSize(5).allMatch(code -> code >= 100 && code <= 999);
        assertThat(weighed.get(again)).isEqualTo(weighed.get(from)).isNotEqualTo("");
        assertThat(json("--trials", "5")).isEqualTo(answer).isNotEqualTo(json("--trials", "5", "--seed", "2"));
    }

    /** What is weighed goes back into a document of trials as it stands; 3 kg of water in 10 kg are 300 g in one. */
    @Test
    void weights_keep_the_bounds_and_are_read_again_as_a_trial() throws IOException {
        for (var trial : json("--trials", "6", "--batch", "1 kg").get("trials")) {
            var mix = trial.get("weighed").get("mix");
            double gum = grams(mix, "gum");
            double water = grams(mix, "water");
            double all = gum + water + grams(mix, "flour");
            assertThat(all).isCloseTo(1000, within(0.5));
            assertThat(gum / all).isBetween(0.002, 0.02);
            assertThat(water / all).isBetween(0.3, 0.5);
            assertThat(trial.get("levers").get("gum").asDouble()).isCloseTo(100 * gum / all, within(1e-9));
            var file = Files.writeString(
                    folder.resolve("fresh.json"),
                    "{\"title\": \"t\", \"brief\": \"dough.json\", \"responses\": {\"break\": {\"unit\": \"g\"}},"
                            + "\"levers\": {\"gum\": {\"ingredient\": \"gum\"}}, \"trials\": [{\"id\": \"A\", \"batch\":"
                            + " \"1 kg\", \"weighed\": " + trial.get("weighed") + ", \"measured\": {\"break\": 9}}]}");
            assertThat(CommandRun.of("check", file.toString()).status()).isZero();
        }
    }

    private static double grams(JsonNode weights, String id) {
        return Double.parseDouble(weights.get(id).asString().replace(" g", ""));
    }

    @Test
    void sheets_are_told_to_a_cook() throws IOException {
        var run = next("--need", "break min 250 g", "--per-month", "1000 kg", "--trials", "4");
        assertThat(run.output().replaceAll("\\s+", " "))
                .contains("The cheapest blend that is 90 % sure of break at least 250 g in the next batch costs")
                .contains("could free about")
                .contains("USD a month at 1000 kg")
                .contains("gum 0.2 % 2 %")
                .contains("wheat flour")
                .contains("break, g ________")
                .contains("Allergens: wheat.");
        assertThat(run.output().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void it_says_when_to_stop() throws IOException {
        var held = next("--need", "break min 10 g");
        assertThat(held.output().replaceAll("\\s+", " "))
                .contains("Stop here: what is asked of the measurements does not hold the cost up");
        assertThat(json("--need", "break min 10 g").get("trials").size()).isEqualTo(1);
        assertThat(next("--need", "break min 900 g").output().replaceAll("\\s+", " "))
                .contains("No blend of the brief is sure enough of what is asked");
    }

    /** A setting goes as far as it was tried, and is written on the sheet. */
    @Test
    void settings_are_levers_too() throws IOException {
        var file = trials(
                "\"gum\": {\"ingredient\": \"gum\"}, \"rest\": {\"process\": \"rest, min\"}",
                "\"process\": {\"rest, min\": %d},");
        var run = CommandRun.of("next", file, "--trials", "5", "--json");
        assertThat(run.status()).as(run.messages()).isZero();
        var answer = JsonMapper.shared().readTree(run.output());
        assertThat(answer.get("levers").get(1).get("least").asDouble()).isEqualTo(10);
        assertThat(answer.get("levers").get(1).get("most").asDouble()).isEqualTo(30);
        for (var trial : answer.get("trials")) {
            if (trial.get("why").asString().equals("design")) {
                assertThat(trial.get("levers").get("rest").asDouble()).isIn(10.0, 30.0);
            }
        }
        assertThat(CommandRun.of("next", file, "--trials", "5").output()).contains("Made with rest, min: 30.");
    }

    @Test
    void what_cannot_be_meant_is_refused_with_what_to_write() throws IOException {
        assertThat(next("--need", "break 250").messages()).contains("such as \"break min 420 g\"");
        assertThat(next("--need", "bite min 250").messages()).contains("expected one of break.");
        assertThat(next("--need", "break min 250 kg").messages()).contains("is measured in g, not in kg");
        assertThat(next("--trials", "21").messages()).contains("expected from 1 to 20");
        var ratio = CommandRun.of(
                "next", trials("\"gum\": {\"ingredient\": \"gum\", \"per\": {\"ingredient\": \"water\"}}", ""));
        assertThat(ratio.status()).isEqualTo(3);
        assertThat(ratio.messages()).contains("the lever \"gum\" is so much of one thing per another");
    }
}
