package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Trials from documents to answers; the figures of the yarn are published, all else was worked out by hand. */
class FitCommandTest {
    private static final String DEMO = "ingredient-sets/netherpleat/trials-dumpling-filling.json";

    private static final String SET = """
            {"traits": {"hold": {"title": "holds", "absent": 0}},
             "ingredients": [{"id": "a", "kinds": ["fibre"], "values": {"FAT": 10}}, {"id": "b", "values": {"FAT": 2}},
              {"id": "c", "values": {}}]}
            """;
    private static final String BRIEF = """
            {"ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "1 kg",
             "bounds": [{"ingredient": "a", "max": "100 %"}]}
            """;
    private static final String PRICES = "ingredient,supplier,price,per\na,x,1,kg\nb,x,1,kg\nc,x,1,kg\n";
    private static final String SHARES =
            "\"levers\": {\"x1\": {\"ingredient\": \"a\"}, \"x2\": {\"ingredient\": \"b\"}, \"x3\": {\"ingredient\": \"c\"}}";

    /** Cornell, Experiments with Mixtures: yarn elongation at the points of a {3,2} lattice. */
    private static final List<String> YARN = List.of(
            "a",
            "11.0 12.4",
            "ab",
            "15.0 14.8 16.1",
            "b",
            "8.8 10.0",
            "bc",
            "10.0 9.7 11.8",
            "c",
            "16.8 16.0",
            "ac",
            "17.7 16.4 16.6");

    @TempDir
    Path folder;

    private CommandRun run = CommandRun.NONE;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("set.json"), SET);
        Files.writeString(folder.resolve("brief.json"), BRIEF);
        Files.writeString(folder.resolve("prices.csv"), PRICES);
    }

    @Test
    void yarn_from_its_document_comes_to_cornells_coefficients() throws IOException {
        var yarn = fit(trials("\"y\": {\"unit\": \"\"}", SHARES, yarn()), "--json");
        assertThat(yarn.get("form").asString()).isEqualTo("quadratic");
        assertThat(yarn.get("constant").asBoolean()).isFalse();
        var coefficients = List.of(11.7, 9.4, 16.4, 19.0, 11.4, -9.6);
        for (int i = 0; i < 6; i++) {
            var term = yarn.get("terms").get(i);
            assertThat(term.get("coefficient").asDouble()).isCloseTo(coefficients.get(i), within(1e-9));
            assertThat(term.get("standardError").asDouble()).isCloseTo(i < 3 ? 0.603692 : 2.608249, within(1e-6));
        }
        assertThat(yarn.get("press").asDouble()).isCloseTo(18.295, within(1e-9));
        assertThat(yarn.get("residual").get("df").asInt()).isEqualTo(9);
        assertThat(yarn.get("pureError").get("df").asInt()).isEqualTo(9);
        assertThat(yarn.get("lackOfFit").isNull()).isTrue();
        assertThat(yarn.get("r2").asDouble()).isCloseTo(0.951356, within(1e-6));
    }

    /**
     * By hand, at the centre, where the trials are centred: one more of x1 while x2 and x3 give way in proportion is
     * 21.8333 - (12.5333 + 17) / 2 = 7.0667 more, so 20 % more are 1.4133.
     */
    @Test
    void what_one_part_of_a_whole_gains_the_others_lose_in_proportion() throws IOException {
        var lever =
                fit(trials("\"y\": {}", SHARES, yarn()), "--json").get("levers").get(0);
        assertThat(lever.get("step").asDouble()).isEqualTo(20);
        assertThat(lever.get("change").asDouble()).isCloseTo(1.41333333333, within(1e-10));
        assertThat(lever.get("replacing").asBoolean()).isTrue();
    }

    /** The linear form of the same data: F(3, 9) = 32.317 speaks against it, and is told. */
    @Test
    void a_form_that_was_asked_for_and_does_not_fit_is_told() throws IOException {
        var more = SHARES + ", \"forms\": {\"y\": {\"form\": \"linear\", \"prior\": \"none\"}}";
        var yarn = fit(trials("\"y\": {}", more, yarn()), "--json");
        assertThat(yarn.get("lackOfFit").get("f").asDouble()).isCloseTo(32.317184035, within(1e-8));
        assertThat(yarn.get("lackOfFit").get("p").asDouble()).isCloseTo(3.7864809992774e-5, within(1e-15));
        assertThat(yarn.get("remarks").get(0).asString()).contains("Do not trust its bounds", "\"quadratic\"");
    }

    /** The centre of the yarn: 14.811, standard error 0.39683, one batch from 12.681 to 16.941 with 95 % (R). */
    @Test
    void a_formula_is_predicted_with_its_range() throws IOException {
        var made = Files.writeString(
                folder.resolve("made.json"),
                "{\"made\": {\"mix\": {\"a\": \"1 kg\", \"b\": \"1 kg\", \"c\": \"1 kg\"}}}");
        var file = trials("\"y\": {}", SHARES, yarn());
        run("fit", file.toString(), "--at", made.toString(), "--sure", "95%", "--json");
        var at = JsonMapper.shared().readTree(run.output()).get("at").get(0);
        assertThat(at.get("mean").asDouble()).isCloseTo(14.81111111, within(1e-8));
        assertThat(at.get("standardError").asDouble()).isCloseTo(0.3968324514, within(1e-9));
        assertThat(at.get("lower").asDouble()).isCloseTo(12.68135906, within(1e-8));
        assertThat(at.get("upper").asDouble()).isCloseTo(16.94086316, within(1e-8));
        assertThat(at.get("outside")).isEmpty();
    }

    /** Yarn in tables, one line a weight and one a figure: the same answer. */
    @Test
    void tables_say_the_same_as_the_document() throws IOException {
        var weighed = new StringBuilder("trial,stage,ingredient,amount\n");
        var measured = new StringBuilder("trial,response,value,by\n");
        int n = 0;
        for (int i = 0; i < YARN.size(); i += 2) {
            for (var value : YARN.get(i + 1).split(" ", 0)) {
                n++;
                for (var id : YARN.get(i).split("", 0)) {
                    weighed.append("T" + n + ",mix," + id + ",50 g\n");
                }
                measured.append("T" + n + ",y," + value + ",\n");
            }
        }
        Files.writeString(folder.resolve("weighed.csv"), weighed);
        Files.writeString(folder.resolve("measured.csv"), measured + "T1,y,,\n");
        var tables = Files.writeString(
                folder.resolve("tables.json"),
                "{\"title\": \"trials\", \"brief\": \"brief.json\", \"responses\": {\"y\": {}}, " + SHARES
                        + ", \"tables\": [\"weighed.csv\", \"measured.csv\"]}");
        run("fit", trials("\"y\": {}", SHARES, yarn()).toString(), "--json");
        var one = run.output();
        assertThat(run("fit", tables.toString(), "--json")).as(run.messages()).isZero();
        assertThat(run.output()).isEqualTo(one);
    }

    /** By hand: 10 more of rest is 2 more of y exactly, day 2 is 1 higher; a in 5 or 10 % makes 3 a step of 5 %. */
    @Test
    void words_say_what_a_lever_does() throws IOException {
        var levers = "\"levers\": {\"fibre\": {\"kind\": \"fibre\"}, \"rest, min\": {\"process\": \"rest, min\"}}";
        var file = trials(
                "\"y\": {\"unit\": \"g\"}",
                levers,
                List.of(
                        made(5, 10, "1", 20),
                        made(10, 10, "1", 23),
                        made(5, 20, "2", 23),
                        made(10, 20, "2", 26),
                        made(5, 10, "2", 21),
                        made(10, 20, "1", 25)));
        assertThat(run("fit", file.toString())).as(run.messages()).isZero();
        assertThat(run.output())
                .contains("- each 1 % more fibre: 0.6 g more, give or take 0; tried from 5 to 10 %")
                .contains("- each 2 more rest, min: 0.4 g more, give or take 0; tried from 10 to 20")
                .contains("\"day 2\" lay 1 g above \"day 1\"")
                .contains("Mixings were repeated only once");
        assertThat(run.output().lines()).allMatch(line -> line.length() <= 100);
    }

    private static String made(int percent, int rest, String day, int y) {
        return "{\"weighed\": {\"mix\": {\"a\": \"" + percent + " g\", \"b\": \"" + (100 - percent)
                + " g\"}}, \"process\": {\"rest, min\": " + rest + "}, \"block\": \"day " + day
                + "\", \"measured\": {\"y\": " + y + "}, ";
    }

    @Test
    void levers_that_trials_cannot_tell_apart_are_named() throws IOException {
        var levers = "\"levers\": {\"fibre\": {\"kind\": \"fibre\"}, \"rest, min\": {\"process\": \"rest, min\"}}";
        var file =
                trials("\"y\": {}", levers, List.of(made(5, 10, "1", 20), made(10, 20, "1", 23), made(5, 10, "1", 22)));
        run("fit", file.toString());
        assertThat(run.output()).contains("The trials cannot tell \"rest, min\" from the rest");
    }

    /** By hand: y = 1 + 2 x rest, whatever the fibre that never changed does. */
    @Test
    void a_lever_that_stood_still_leaves_the_others_to_be_fitted() throws IOException {
        var levers = "\"levers\": {\"fibre\": {\"kind\": \"fibre\"}, \"rest, min\": {\"process\": \"rest, min\"}}";
        var file = trials(
                "\"y\": {}",
                levers,
                List.of(made(5, 1, "1", 3), made(5, 2, "1", 5), made(5, 3, "1", 7), made(5, 3, "1", 7)));
        var fitted = fit(file, "--json");
        assertThat(fitted.get("terms").get(1).get("of").get(0).asString()).isEqualTo("rest, min");
        assertThat(fitted.get("terms").get(1).get("coefficient").asDouble()).isEqualTo(2);
        assertThat(fitted.get("remarks").get(0).asString()).contains("\"fibre\" was the same in every trial");
    }

    @Test
    void what_is_right_but_hardly_meant_is_remarked() throws IOException {
        var one =
                "{\"date\": \"2026-10-03\", \"weighed\": {\"mix\": {\"a\": \"5 g\", \"b\": \"5 g\"}}, \"measured\": {\"y\": 1}, ";
        var file = trials(
                "\"y\": {}",
                SHARES,
                List.of(
                        one,
                        one,
                        one.replace("-03", "-10").replace("\"mix\"", "\"soak\""),
                        "{\"weighed\": {\"mix\": {\"c\": \"5 g\"}}, "));
        Files.writeString(
                folder.resolve("brief.json"),
                BRIEF.replace("\"bounds\"", "\"stages\": [{\"id\": \"soak\", \"ingredients\": [\"c\"]}], \"bounds\""));
        assertThat(run("check", file.toString())).as(run.messages()).isZero();
        assertThat(run.output().replaceAll("\\s+", " "))
                .contains("trials.json:5:1: /trials/3: Nothing was measured on \"T4\"")
                .contains("These trials were mixed on 2 days")
                .contains("\"T3\" has \"a\" in the stage \"soak\", where the brief does not put it");
        assertThat(run("check", "--strict", file.toString())).isEqualTo(3);
        assertThat(run("fit", file.toString())).isZero();
        assertThat(run.output()).contains("These trials were mixed on 2 days");
    }

    @Test
    void a_formula_that_cannot_be_predicted_is_told_why() throws IOException {
        var levers =
                "\"levers\": {\"fat\": {\"property\": \"FAT\"}, \"a to b\": {\"ingredient\": \"a\", \"per\": {\"ingredient\": \"b\"}}}";
        var file = trials("\"y\": {}", levers, List.of(made(5, 1, "1", 3), made(6, 2, "1", 5)));
        var made = Files.writeString(folder.resolve("made.json"), "{\"made\": {\"mix\": {\"c\": \"1 kg\"}}}");
        assertThat(run("fit", file.toString(), "--at", made.toString())).isEqualTo(3);
        assertThat(run.messages())
                .contains("made.json:1:10: /made: The lever \"fat\" needs a value that nobody states of c")
                .contains("The formula has nothing of what the lever \"a to b\" is measured against");
    }

    @Test
    void what_is_wrong_with_trials_is_told_with_its_place() throws IOException {
        var file = Files.writeString(folder.resolve("wrong.json"), """
                {"brief": "brief.json", "responses": {"brake": {"unit": "g"}, "juicy": {"scale": [1, 9]}},
                 "levers": {"fibre": {"kind": "fiber"}, "fat": {"property": "FAT"}, "rest": {"process": "rest"}},
                 "forms": {"break": {"form": "square"}, "juicy": {"form": "square"}},
                 "trials": [
                  {"id": "T1", "batch": "110 g", "weighed": {"mix": {"a": "50 g", "b": "50 g"}}, "measured": {"juicy": 12}},
                  {"id": "T1", "repeats": "T9", "weighed": {"mixx": {"aa": "5"}}, "measured": {"break": "9 g"}},
                  {"id": "T2", "weighed": {"mix": {"c": "5 g"}}, "lots": {"a": "7"}, "measured": {"juicy": "12 %"}}]}
                """);
        assertThat(run("fit", file.toString())).isEqualTo(3);
        assertThat(run.messages())
                .contains("wrong.json:2", "No kind is called \"fiber\"", "Did you mean \"fibre\"?")
                .contains("No response is called \"break\"", "Did you mean \"brake\"?")
                .contains("\"square\" is not a form")
                .contains("The weights add up to 100 g, and the batch is 110 g")
                .contains("\"12\" is not on the scale of \"juicy\"", "Expected a figure from 1 to 9.")
                .contains("No stage is called \"mixx\"", "No ingredient is called \"aa\"", "\"5\" has no unit")
                .contains("A lot of \"a\" is named, and none was weighed in")
                .contains("\"12 %\" is a text")
                .contains("\"T1\" does not say what the lever \"rest\" was");
    }

    @Test
    void a_trial_that_comes_twice_or_repeats_none_is_told() throws IOException {
        var file = trials(
                "\"y\": {}",
                SHARES,
                List.of(
                        "{\"weighed\": {\"mix\": {\"a\": \"5 g\"}}, \"repeats\": \"T7\", \"measured\": {\"y\": 1}, ",
                        "{\"weighed\": {\"mix\": {\"a\": \"5 g\"}}, \"block\": \"day 1\", \"measured\": {\"y\": 1}, "));
        assertThat(run("fit", file.toString())).isEqualTo(3);
        assertThat(run.messages())
                .contains("\"T1\" repeats \"T7\", which is no other trial")
                .contains("\"T1\" states no block, and others do");
        var text = Files.readString(file).replace("\"T2\"", "\"T1\"");
        assertThat(run("check", Files.writeString(file, text).toString())).isEqualTo(3);
        assertThat(run.messages()).contains("Two trials are called \"T1\"");
    }

    /** The demo's trials by numpy: 32870.6 (2437.4) a share of ether, one batch 12.61, PRESS 2938.88. */
    @Test
    void the_demo_says_what_numpy_says() throws IOException {
        assertThat(run("fit", DEMO, "--json")).isZero();
        var found = JsonMapper.shared().readTree(run.output()).get("responses").get(0);
        assertThat(found.get("trials").asInt()).isEqualTo(12);
        assertThat(found.get("terms").get(1).get("coefficient").asDouble()).isCloseTo(32870.6169, within(1e-3));
        assertThat(found.get("residual").get("sd").asDouble()).isCloseTo(12.61004723003566, within(1e-9));
        assertThat(found.get("press").asDouble()).isCloseTo(2938.879632776394, within(1e-6));
        assertThat(found.get("middle").get("lower").asDouble()).isCloseTo(320.9601855424639, within(1e-8));
        assertThat(run("check", DEMO)).isZero();
    }

    private static List<String> yarn() {
        var all = new ArrayList<String>();
        for (int i = 0; i < YARN.size(); i += 2) {
            for (var value : YARN.get(i + 1).split(" ", 0)) {
                var weights = String.join(
                        ": \"50 g\", ",
                        YARN.get(i).replaceAll("(.)", "\"$1\" ").strip().split(" ", 0));
                all.add("{\"weighed\": {\"mix\": {" + weights + ": \"50 g\"}}, \"measured\": {\"y\": " + value + "}, ");
            }
        }
        return all;
    }

    private Path trials(String responses, String more, List<String> trials) throws IOException {
        var text = new StringBuilder("{\"title\": \"trials\", \"brief\": \"brief.json\", \"responses\": {" + responses
                + "}, " + more + ", \"trials\": [\n");
        for (int i = 0; i < trials.size(); i++) {
            text.append(trials.get(i)).append("\"id\": \"T" + (i + 1) + "\"},\n");
        }
        return Files.writeString(folder.resolve("trials.json"), text + "]}\n");
    }

    private JsonNode fit(Path file, String... more) {
        var arguments = new ArrayList<>(List.of("fit", file.toString()));
        arguments.addAll(List.of(more));
        assertThat(run(arguments.toArray(String[]::new))).as(run.messages()).isZero();
        return JsonMapper.shared().readTree(run.output()).get("responses").get(0);
    }

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }
}
