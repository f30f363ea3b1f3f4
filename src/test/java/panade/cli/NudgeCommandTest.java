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

/** Changes of a formula from documents to answers; the kitchen is that of {@code LeastChangeTest}, worked by hand. */
class NudgeCommandTest {
    private static final String SET = """
            {"ingredients": [
              {"id": "rice", "name": "cooked rice", "values": {"PROCNT": 0}, "allergens": []},
              {"id": "peas", "values": {"PROCNT": 40}, "allergens": []},
              {"id": "lentils", "values": {"PROCNT": 30}, "allergens": []},
              {"id": "truffle", "values": {"PROCNT": 0}, "allergens": []}]}
            """;
    private static final String BRIEF = """
            {"title": "loaf", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "1 kg",
             "bounds": [{"name": "protein", "property": "PROCNT", "min": "20 %"}]}
            """;
    private static final String PRICES = "ingredient,supplier,price,per\nrice,s,1,kg\npeas,s,5,kg\nlentils,s,3,kg\n";

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
    void a_formula_that_could_be_cheaper_is_told_what_changes_bring() throws IOException {
        var file = formula("\"rice\": \"2 kg\", \"peas\": \"5 kg\", \"lentils\": \"3000 g\"");
        assertThat(run("nudge", file)).as(run.messages()).isZero();
        assertThat(run.output())
                .contains("As made, 10000 g cost 36.00 USD, 1.6329 USD/lb.")
                .contains("1 changed: nothing costs less than what is made.")
                .contains("2 changed: 1.1793 USD/lb, 0.4536 less than now, 78.9 % of all that can be saved.")
                .contains("- 5000 g more lentils in the mix\n- 5000 g less peas in the mix\n")
                .contains("gone from it peas")
                .contains("3 changed: 1.0584 USD/lb, 0.5745 less than now")
                .contains("Now at its limit, or within half a per cent of it: protein.");
        assertThat(run.output().lines()).allMatch(line -> line.length() <= 100);
    }

    /** Peas at 6 instead of 5 make 41; a kilogram bought from the cheapest is 0.5 less, 0.2268 a pound. */
    @Test
    void what_a_dearer_supplier_costs_is_told_apart_from_changes() throws IOException {
        Files.writeString(folder.resolve("prices.csv"), PRICES + "peas,Tarn Pulses,6,kg\n");
        var file = formula("\"rice\": \"2 kg\", \"peas\": {\"amount\": \"5 kg\", \"supplier\": \"Tarn Pulses\"},"
                + " \"lentils\": \"3000 g\"");
        assertThat(run("nudge", file)).as(run.messages()).isZero();
        assertThat(run.output().replaceAll("\\s+", " "))
                .contains("As made, 10000 g cost 41.00 USD, 1.8597 USD/lb.")
                .contains("The same bought from the cheapest costs 1.6329 USD/lb, 0.2268 less.")
                .contains("1 changed: nothing costs less than the same bought from the cheapest.")
                .contains("2 changed: 1.1793 USD/lb, 0.6804 less than now");
    }

    @Test
    void the_result_for_machines_has_the_curve_and_the_few_changes() throws IOException {
        var answer = json(formula("\"rice\": \"5 kg\", \"peas\": \"2 kg\", \"lentils\": \"3 kg\""), "--changes", "2");
        var from = answer.get("from");
        assertThat(from.get("status").asString()).isEqualTo("made");
        assertThat(from.get("cost").get("perKg").asDouble()).isCloseTo(2.4, within(1e-12));
        assertThat(from.get("bounds").get(0).get("met").asBoolean()).isFalse();
        assertThat(from.get("bounds").get(0).get("value").asDouble()).isCloseTo(17, within(1e-12));
        assertThat(from.get("cheapest").get("perKg").asDouble()).isCloseTo(7 / 3.0, within(1e-9));
        var path = answer.get("path");
        assertThat(doubles(path, "moved")).containsExactly(new double[] {0, 0.075, 0.1, 11 / 30.0}, within(1e-9));
        assertThat(doubles(path, "costPerKg")).containsExactly(new double[] {2.4, 2.7, 2.6, 7 / 3.0}, within(1e-9));
        assertThat(path.get(0).get("met").asBoolean()).isFalse();
        assertThat(path.get(1).get("met").asBoolean()).isTrue();
        var one = answer.get("few").get(0);
        assertThat(one.get("costPerKg").isNull()).isTrue();
        assertThat(one.get("proved").asBoolean()).isTrue();
        var two = answer.get("few").get(1);
        assertThat(two.get("costPerKg").asDouble()).isCloseTo(2.6, within(1e-12));
        assertThat(two.get("changed")).hasSize(2);
        assertThat(two.get("proved").asBoolean()).isTrue();
    }

    @Test
    void a_formula_that_breaks_a_bound_is_told_what_mends_it() throws IOException {
        assertThat(run("nudge", formula("\"rice\": \"5 kg\", \"peas\": \"2 kg\", \"lentils\": \"3 kg\"")))
                .isZero();
        assertThat(run.output())
                .contains("It breaks: protein.")
                .contains("1 ingredient changed: no blend keeps every bound.")
                .contains("2 changed: 1.1793 USD/lb, 0.0907 more than now.", "Mends: protein.")
                .contains("To keep every bound, 750 g must be moved at least; that costs 0.1361 USD/lb more than now.");
    }

    @Test
    void nothing_to_gain_is_told() throws IOException {
        assertThat(run("nudge", formula("\"rice\": \"1 kg\", \"lentils\": \"2 kg\"")))
                .isZero();
        assertThat(run.output()).contains("No blend that keeps every bound costs less: nothing is\nto be gained.");
    }

    @Test
    void what_is_kept_stays_and_where_it_leaves_no_blend_that_is_explained() throws IOException {
        var file = formula("\"rice\": \"2 kg\", \"peas\": \"5 kg\", \"lentils\": \"3 kg\"");
        assertThat(run("nudge", file, "--keep", "cooked rice"))
                .as(run.messages())
                .isZero();
        assertThat(run.output()).contains("Kept as made: cooked rice.", "The cheapest blend of all that keeps");
        var thin = formula("\"rice\": \"9 kg\", \"peas\": \"1 kg\"");
        assertThat(run("nudge", thin, "--keep", "rice")).isEqualTo(4);
        assertThat(run.output()).contains("cooked rice in mix as made").contains("protein");
        assertThat(run("nudge", file, "--keep", "rise")).isEqualTo(3);
        assertThat(run.messages()).contains("No ingredient is called \"rise\"", "rice");
        assertThat(run("nudge", file, "--changes", "0")).isEqualTo(2);
    }

    @Test
    void what_nobody_sells_must_go() throws IOException {
        assertThat(run("nudge", formula("\"rice\": \"2 kg\", \"truffle\": \"1 kg\", \"lentils\": \"7 kg\"")))
                .isZero();
        assertThat(run.output())
                .contains("Nobody sells truffle")
                .contains("Must go, since it cannot be bought or has no place in the brief: truffle.")
                .contains("2 changed: ", "- 1000 g more cooked rice in the mix\n- 1000 g less truffle in the mix");
    }

    /**
     * Only two of the three may be used: with the least moved the 2 kg of rice become lentils, half peas and half
     * lentils at 4 a kilogram.
     */
    @Test
    void a_rule_that_the_formula_breaks_is_told_and_kept() throws IOException {
        Files.writeString(
                folder.resolve("brief.json"), BRIEF.replace("\"currency\"", "\"maxIngredients\": 2, \"currency\""));
        var file = formula("\"rice\": \"2 kg\", \"peas\": \"5 kg\", \"lentils\": \"3 kg\"");
        assertThat(run("nudge", file)).as(run.messages()).isZero();
        assertThat(run.output())
                .contains("As made, 10000 g cost 36.00 USD", "It shows 3 names on the label, 2 allowed.")
                .contains("To keep every bound, 2000 g must be moved at least; that costs 0.1814 USD/lb more than now.")
                .contains("The rules leave\na choice of ingredients")
                .contains("as made, breaks the brief");
        assertThat(json(file).get("straight").asBoolean()).isFalse();
    }

    @Test
    void a_cost_per_cooked_weight_is_refused() throws IOException {
        Files.writeString(
                folder.resolve("brief.json"),
                BRIEF.replace(
                        "\"currency\"",
                        "\"cooking\": {\"lose\": {\"WATER\": \"1 %\"}}, \"costBasis\": \"cooked\","
                                + " \"assume\": {\"WATER\": 0}, \"currency\""));
        assertThat(run("nudge", formula("\"rice\": \"2 kg\", \"lentils\": \"7 kg\"")))
                .isEqualTo(3);
        assertThat(run.messages()).contains("cannot follow a cost per cooked weight");
    }

    @Test
    void what_is_wrong_with_a_formula_is_told_with_its_place() throws IOException {
        var file = Files.writeString(
                folder.resolve("wrong.json"),
                "{\"brief\": \"brief.json\",\n \"made\": {\"mix\": {\"rise\": \"1 kg\", \"peas\": \"5\"}}}");
        assertThat(run("nudge", file.toString())).isEqualTo(3);
        assertThat(run.messages()).contains("wrong.json:2", "No ingredient is called \"rise\"", "\"5\" has no unit");
    }

    private String formula(String mix) throws IOException {
        return Files.writeString(
                        folder.resolve("made.json"),
                        "{\"title\": \"loaf as made\", \"brief\": \"brief.json\", \"made\": {\"mix\": {" + mix + "}}}")
                .toString();
    }

    private JsonNode json(String file, String... more) {
        var arguments = new ArrayList<>(List.of("nudge", file, "--json"));
        arguments.addAll(List.of(more));
        assertThat(run(arguments.toArray(String[]::new))).as(run.messages()).isZero();
        return JsonMapper.shared().readTree(run.output());
    }

    private static double[] doubles(JsonNode list, String field) {
        return list.valueStream()
                .mapToDouble(each -> each.get(field).asDouble())
                .toArray();
    }

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }
}
