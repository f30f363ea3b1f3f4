package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.testing.CommandRun;

/** The invented demo's products on a label. */
class PanelCommandTest {
    private CommandRun run = CommandRun.NONE;

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }

    @ParameterizedTest(name = "{0} by {1}")
    @CsvSource({
        "dumpling-filling, us, Calories",
        "skewer-mince, us, Calories",
        "taco-crumble, us, Calories",
        "dumpling-filling, eu, energy",
        "skewer-mince, eu, energy",
        "taco-crumble, eu, energy",
    })
    void each_product_prints_a_panel_a_statement_and_cautions(String name, String format, String energy) {
        assertThat(run("panel", "constraints/" + name + ".json", "--format", format))
                .isZero();
        assertThat(run.messages()).isEmpty();
        assertThat(run.output())
                .contains("DRAFT, not a finished label")
                .contains(energy)
                .contains("Ingredients: water, ")
                .contains(
                        name.startsWith("taco")
                                ? "No allergen that the law names"
                                : format.equals("eu") ? "In capitals in the list" : "Contains: ")
                .contains("PDCAAS: not known. Missing: ")
                .contains("3-501.16")
                .contains("3-501.17");
        assertThat(run.output().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void components_that_nobody_stated_are_not_known_and_never_nothing() {
        run("panel", "constraints/dumpling-filling.json");
        assertThat(run.output().lines().filter(line -> line.startsWith("Iron")))
                .allMatch(line -> line.contains("not known") && !line.contains("0 mg"))
                .hasSize(1);
    }

    @Test
    void the_batch_as_weighed_has_a_label_of_its_own() {
        assertThat(run("panel", "constraints/skewer-mince.json", "--weighed")).isZero();
        assertThat(run.output()).contains("Of 20 lb as weighed in steps of 1 g.");
    }

    @ParameterizedTest
    @CsvSource({
        "--format, uk, 'expected one of us, eu'",
        "--energy, joules, 'expected one of general, digestible, specific'",
        "--serving, 3 %, 'expected a weight above zero'",
        "--pack, 0 g, 'expected a weight above zero'",
        "--tail, 3 %, 'expected 2%, 1.5%, 1% or 0.5%'",
    })
    void an_option_that_means_nothing_exits_2_and_says_what_was_expected(String option, String value, String message) {
        assertThat(run("panel", "constraints/skewer-mince.json", option, value)).isEqualTo(2);
        assertThat(run.messages()).contains(message);
    }

    @Test
    void the_result_for_machines_has_exact_and_printed_figures() {
        assertThat(run("panel", "constraints/dumpling-filling.json", "--json")).isZero();
        assertThat(run.output())
                .contains("\"draft\" : true")
                .contains("\"per100gText\" : \"380 mg\"")
                .contains("\"perServing\" : null");
    }

    /** 21 USC 343(w): an allergen whose word means nothing must not be left out in silence. */
    @Test
    void a_word_that_no_law_knows_stops_the_label_and_nothing_else(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [
                  {"id": "water", "values": {}, "others": 0, "allergens": []},
                  {"id": "paste", "values": {}, "others": 0, "allergens": ["wheat; soi"]}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per\nwater,tap,0,kg\npaste,anyone,1,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"ingredients": "set.json", "prices": ["prices.csv"], "batch": "1 kg",
                 "bounds": [{"ingredient": "paste", "min": "10 %"}]}
                """);
        var brief = folder.resolve("brief.json").toString();
        assertThat(run("panel", brief)).isEqualTo(3);
        assertThat(run.output()).isEmpty();
        assertThat(run.messages())
                .contains("set.json:3", "\"soi\"", "\"paste\"", "Did you mean \"soy\"?", "\"other: soi\"");
        assertThat(run("panel", brief, "--json")).isEqualTo(3);
        assertThat(run.output()).isEmpty();
        assertThat(run("blend", brief)).isZero();
        assertThat(run.output().replaceAll("\\s+", " ")).contains("No law's list knows the allergen \"soi\"");
    }

    @Test
    void an_impossible_brief_has_no_label() {
        assertThat(run("panel", "constraints/taco-wish-list.json")).isEqualTo(4);
        assertThat(run.output()).contains("No blend can meet every bound");
    }
}
