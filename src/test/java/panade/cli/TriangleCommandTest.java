package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A triangle test from documents to sheets. Half oats and half almonds against the cheapest, all oats; invented. */
class TriangleCommandTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("pantry.json"), """
                {"ingredients": [
                  {"id": "oats", "name": "rolled oats", "values": {}, "allergens": ["oats"]},
                  {"id": "almonds", "values": {}, "allergens": ["almond"]},
                  {"id": "seeds", "name": "poppy seeds", "values": {}}]}
                """);
        Files.writeString(
                folder.resolve("list.csv"),
                "ingredient,supplier,price,per\noats,a,1,kg\nalmonds,a,9,kg\nseeds,a,4,kg\n");
        Files.writeString(folder.resolve("bar.json"), """
                {"title": "bar", "ingredients": "pantry.json", "prices": ["list.csv"], "currency": "USD", "batch": "1 kg",
                 "bounds": [{"name": "some oats", "ingredient": "oats", "min": "10 %"}]}
                """);
        formula("dear", "\"oats\": \"500 g\", \"almonds\": \"500 g\"");
        formula("seeded", "\"oats\": \"500 g\", \"seeds\": \"500 g\"");
        formula("plain", "\"oats\": \"900 g\"");
    }

    private void formula(String name, String weighed) throws IOException {
        Files.writeString(
                folder.resolve(name + ".json"),
                "{\"title\": \"" + name + " bar\", \"brief\": \"bar.json\", \"made\": {\"mix\": {" + weighed + "}}}");
    }

    private CommandRun triangle(String name, String... options) {
        var words = new ArrayList<>(List.of("triangle", file(name)));
        words.addAll(List.of(options));
        return CommandRun.of(words.toArray(String[]::new));
    }

    private String file(String name) {
        return folder.resolve(name + ".json").toString();
    }

    private static String words(CommandRun run) {
        return run.output().replaceAll("\\s+", " ");
    }

    private static JsonNode json(CommandRun run) {
        assertThat(run.status()).as(run.messages()).isZero();
        return JsonMapper.shared().readTree(run.output());
    }

    /** Eight of twelve: the table of ISO 4120, from memory; 1.88 % of the binomial distribution. */
    @Test
    void the_sheet_says_how_many_must_be_right_and_who_may_not_taste() {
        var run = triangle("dear", "--tasters", "12");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(words(run))
                .contains("- A: dear bar - B: the cheapest blend of \"bar\"")
                .contains("If 8 or more are right, a difference is shown; fewer show nothing.")
                .contains("7 6.64 nothing shown 8 1.88 a difference")
                .contains("18 with A, 18 with B")
                .contains("Allergens: almond, oats. Mind cross-contact. Ask every taster before a cup is filled");
        assertThat(run.output().lines()).allMatch(line -> line.length() <= 100);
    }

    /** Every cup is worked out again from the sheet alone. */
    @Test
    void each_taster_has_three_cups_of_their_own_of_which_one_is_odd() {
        var answer = json(triangle("dear", "--tasters", "30", "--json"));
        assertThat(answer.get("leastRight").asInt()).isEqualTo(15);
        var codes = new HashSet<Integer>();
        var orders = new HashSet<String>();
        for (var serving : answer.get("servings")) {
            var cups = serving.get("cups").values().stream()
                    .map(JsonNode::asString)
                    .toList();
            serving.get("codes").forEach(code -> codes.add(code.asInt()));
            orders.add(String.join("", cups));
            var odd = cups.stream().filter(cup -> cup.equals("A")).count() == 1 ? "A" : "B";
            assertThat(serving.get("odd").asInt())
                    .isEqualTo(serving.get("codes").get(cups.indexOf(odd)).asInt());
        }
        assertThat(codes).hasSize(90);
        assertThat(orders).containsExactlyInAnyOrder("AAB", "ABA", "BAA", "BBA", "BAB", "ABB");
    }

    /** By hand: of three, two or more are right by guessing in 7 of 27. */
    @Test
    void right_answers_are_judged() {
        var found = json(triangle("dear", "--tasters", "3", "--right", "2", "--json"))
                .get("found");
        assertThat(found.get("p").asDouble()).isCloseTo(7 / 27.0, within(1e-12));
        assertThat(found.get("different").asBoolean()).isFalse();
        assertThat(words(triangle("dear", "--tasters", "3", "--right", "3")))
                .contains(
                        "3 of 3 were right. Guessing alone gives that many or more in 3.70 % of tests: a difference is");
        assertThat(words(triangle("dear", "--tasters", "12", "--right", "4")))
                .contains("no difference is shown, which is not the same as none. At most 42 % of people can tell them")
                .contains("(95 % sure)");
    }

    @Test
    void another_formula_stands_in_for_the_cheapest_and_unknown_allergens_are_told() {
        var run = triangle("dear", "--against", file("seeded"), "--tasters", "2", "--risk", "10 %");
        assertThat(words(run))
                .contains("B: seeded bar")
                .contains("That is too few: even if all were right, guessing would give it more often than in 10 %")
                .contains("Allergens: almond, oats; not known for poppy seeds.");
        assertThat(words(triangle("plain", "--tasters", "12"))).contains("A and B weigh the same.");
    }

    @Test
    void a_seed_gives_the_sheet_again() {
        assertThat(triangle("dear", "--tasters", "9").output())
                .isEqualTo(triangle("dear", "--tasters", "9", "--seed", "1").output())
                .isNotEqualTo(triangle("dear", "--tasters", "9", "--seed", "2").output());
    }

    @Test
    void what_cannot_be_meant_is_refused_with_what_to_write() {
        assertThat(triangle("dear").messages()).contains("--tasters");
        assertThat(triangle("dear", "--tasters", "301").messages()).contains("expected from 1 to 300");
        assertThat(triangle("dear", "--tasters", "12", "--right", "13").messages())
                .contains("--right 13: expected from 0 to 12, the number of tasters.");
        assertThat(triangle("dear", "--tasters", "12", "--risk", "60 %").status())
                .isEqualTo(2);
        assertThat(triangle("dear", "--tasters", "12", "--against", file("gone"))
                        .status())
                .isEqualTo(3);
    }
}
