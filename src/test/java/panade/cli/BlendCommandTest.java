package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.json.JsonMapper;

class BlendCommandTest {
    private CommandRun run = CommandRun.NONE;

    @Test
    void a_blend_exits_0_and_says_nothing_on_standard_error() {
        assertThat(run("blend", "constraints/taco-crumble.json")).isZero();
        assertThat(run.messages()).isEmpty();
        assertThat(run.output().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void the_same_brief_prints_the_same_bytes() {
        run("blend", "constraints/skewer-mince.json", "--json");
        var first = run.output();
        run("blend", "constraints/skewer-mince.json", "--json");
        assertThat(run.output()).isEqualTo(first).contains("\"status\" : \"optimal\"");
    }

    @Test
    void an_impossible_brief_exits_4_and_says_so() {
        assertThat(run("blend", "constraints/taco-wish-list.json")).isEqualTo(4);
        assertThat(run.output()).contains("No blend can meet every bound");
    }

    @Test
    void a_command_line_that_is_wrong_exits_2_with_a_suggestion() {
        assertThat(run("blnd", "constraints/taco-crumble.json")).isEqualTo(2);
        assertThat(run.output()).isEmpty();
        assertThat(run.messages()).contains("blend");
    }

    @Test
    void a_blend_with_rules_says_that_its_prices_are_with_this_choice() {
        assertThat(run("blend", "constraints/dumpling-filling-tidy.json")).isZero();
        assertThat(run.output())
                .contains("The rules leave a choice of ingredients")
                .contains("1.2927 USD/lb");
    }

    @Test
    void too_few_names_are_told_as_a_rule_that_cannot_hold(@TempDir Path folder) throws IOException {
        var brief = Files.writeString(folder.resolve("short.json"), """
                {"basedOn": "%s", "maxIngredients": 3}
                """.formatted(
                        Path.of("constraints", "taco-crumble.json").toAbsolutePath()));
        assertThat(run("blend", brief.toString())).isEqualTo(4);
        assertThat(run.output()).contains("maxIngredients 3");
    }

    /** Both files have a bound at /bounds/0; only "file" tells which of the two is meant. */
    @Test
    void a_conflict_between_two_files_says_which_file_each_bound_stands_in(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [{"id": "pea", "values": {"PROCNT": 60}, "others": 0, "allergens": []},
                                 {"id": "fat", "values": {"FAT": 100}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per\npea,north,4,kg\nfat,north,3,kg\n");
        var whole = Files.writeString(folder.resolve("whole.json"), """
                {"ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "1 kg",
                 "bounds": [{"property": "FAT", "min": "30 %"}]}
                """);
        var part = Files.writeString(folder.resolve("part.json"), """
                {"basedOn": "whole.json", "bounds": [{"property": "PROCNT", "min": "48 %"}]}
                """);
        assertThat(run("blend", part.toString(), "--json")).isEqualTo(4);
        var answer = JsonMapper.shared().readTree(run.output());
        for (var list : List.of(answer.get("members").get(0), answer.get("cures"))) {
            var places = list.valueStream()
                    .map(node -> node.get("file").asString() + node.get("path").asString());
            assertThat(places).containsExactlyInAnyOrder(whole + "/bounds/0/min", part + "/bounds/0/min");
        }
    }

    @Test
    void a_cost_per_cooked_weight_is_not_followed_by_trace(@TempDir Path folder) throws IOException {
        var brief = Files.writeString(folder.resolve("cooked.json"), """
                {"basedOn": "%s", "costBasis": "cooked", "cooking": {"lose": {"WATER": "10 %%"}}}
                """.formatted(
                        Path.of("constraints", "taco-crumble.json").toAbsolutePath()));
        assertThat(run("trace", brief.toString(), "--price", "rapeseed-oil")).isEqualTo(3);
        assertThat(run.messages()).contains("/costBasis: this command cannot follow a cost per cooked weight");
        assertThat(run("blend", brief.toString())).isZero();
        assertThat(run.output()).contains("USD per cooked lb");
    }

    @Test
    void a_target_is_met_or_missed_by_a_stated_amount() {
        run("blend", "constraints/taco-crumble.json", "--target", "1.23/lb");
        assertThat(run.output()).contains("Target 1.23/lb: met, with 0.0058 USD/lb to spare.");
        run("blend", "constraints/taco-crumble.json", "--target", "1.22/lb");
        assertThat(run.output()).contains("Target 1.22/lb: missed by 0.0042 USD/lb.");
    }

    @Test
    void the_share_of_a_blend_does_not_depend_on_the_batch() {
        run("blend", "constraints/taco-crumble.json", "--batch", "5kg");
        assertThat(run.output()).contains("1.2242 USD/lb").contains("5kg batch costs 13.49 USD");
    }

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }
}
