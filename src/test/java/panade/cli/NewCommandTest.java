package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Questions answered one way and another, about an invented kitchen. */
class NewCommandTest {
    private static final List<String> START = List.of("", "", "", "1 kg");
    private static final List<String> WATER = List.of("water", "100", "0", "0", "0", "tap", "0/kg", "none");
    private static final List<String> SOY = List.of("soy", "8", "50", "1", "10", "Mill", "2/kg", "soy; wheat");
    private static final List<String> NOTHING_MORE = List.of("", "", "", "");

    @TempDir
    Path folder;

    private String out = "";
    private String err = "";

    /** 20 % protein of soy with 50 %: 40 % soy at 2/kg, 0.80 USD/kg. */
    @Test
    void backAsksTheQuestionBeforeOnceMore() throws IOException {
        var wrong = List.of("soy", "8", "back", "9", "5", "back", "back", "8", "50", "1", "10", "Mill", "2/kg", "soy");
        assertThat(answer(START, WATER, wrong, NOTHING_MORE, protein("20"), List.of("", "")))
                .as(out + err)
                .isZero();
        assertThat(ingredient(1).get("values").get("WATER").decimalValue()).isEqualByComparingTo("8");
        assertThat(ingredient(1).get("values").get("PROCNT").decimalValue()).isEqualByComparingTo("50");
        assertThat(out).contains("Before, you said: 9");
        assertThat(costPerKg()).isEqualByComparingTo("0.8");
    }

    @Test
    void backAtTheFirstQuestionStaysThere() {
        assertThat(answer(List.of("back"), START, WATER, NOTHING_MORE, limits(5), List.of("", "")))
                .as(err)
                .isZero();
        assertThat(out).contains("This is the first question.");
    }

    @Test
    void answersThatEndAreKeptAndGoneOnFromAnotherDay() throws IOException {
        assertThat(answer(START, WATER, List.of("soy", "8", "50"))).isEqualTo(2);
        assertThat(err).contains("panade-new.draft").contains("panade new goes on from there");
        assertThat(folder.resolve("constraints")).doesNotExist();
        assertThat(answer(
                        List.of(""),
                        List.of("1", "10", "Mill", "2/kg", "soy"),
                        NOTHING_MORE,
                        protein("20"),
                        List.of("", "")))
                .as(out + err)
                .isZero();
        assertThat(out).contains("There are 15 answers from another time").doesNotContain("What is your pantry called");
        assertThat(costPerKg()).isEqualByComparingTo("0.8");
        assertThat(folder.resolve("panade-new.draft")).doesNotExist();
    }

    @Test
    void whoDoesNotWantToGoOnStartsAnew() {
        answer(START, WATER);
        assertThat(answer(List.of("no"), START, WATER, NOTHING_MORE, limits(5), List.of("", "")))
                .as(out + err)
                .isZero();
        assertThat(out).contains("What is your pantry called?");
    }

    @Test
    void aPriceThatIsNotKnownIsNoOffer() throws IOException {
        var gum = List.of("gum", "?", "", "", "", "Mill", "?", "");
        assertThat(answer(START, WATER, gum, NOTHING_MORE, List.of("", ""), limits(2), List.of("", "")))
                .as(out + err)
                .isZero();
        assertThat(out).contains("No offer is noted then");
        assertThat(Files.readString(pantry().resolve("prices-today.csv")))
                .contains("water,tap")
                .doesNotContain("gum");
        assertThat(ingredient(1).has("allergens")).isFalse();
    }

    @Test
    void allergensAreSplitAndAnUnknownOneIsAskedAgain() throws IOException {
        var soy = List.of("soy", "8", "50", "1", "10", "Mill", "2/kg", "85/20kg", "soy; wheat, milk");
        assertThat(answer(START, WATER, soy, NOTHING_MORE, limits(6), List.of("", "")))
                .as(out + err)
                .isZero();
        assertThat(out).contains("On no law's list");
        assertThat(ingredient(1).get("allergens").toString()).isEqualTo("[\"soy\",\"wheat\",\"milk\"]");
    }

    /** Port sells soy at 1/kg: 40 % of it cost 0.40; the bite of soy alone is 6, so at least 5 is met. */
    @Test
    void suppliersKindsScoresAndPartsAreAskedOfWhoWantsThem() throws IOException {
        var further = List.of("", "yes", "soy", "Port", "1/kg", "");
        var kinds = List.of("yes", "", "texturate, protein");
        var score = List.of("yes", "", "", "6");
        var wishes = List.of("", "", "20", "", "", "", "", "", "texturate", "5", "", "yes", "10", "", "", "");
        var amounts = List.of("", "", "", "");
        var parts = List.of("yes", "soaked soy", "soy, water", "water", "50", "90", "");
        assertThat(answer(START, WATER, SOY, further, kinds, score, wishes, amounts, parts, List.of("")))
                .as(out + err)
                .isZero();
        assertThat(costPerKg()).isEqualByComparingTo("0.4");
        var brief = brief();
        assertThat(ingredient(1).get("kinds").size()).isEqualTo(2);
        assertThat(brief.get("bounds").get(1).toString())
                .isEqualTo("{\"name\":\"bite\",\"property\":\"bite\",\"within\":{\"kind\":\"texturate\"},"
                        + "\"per\":{\"kind\":\"texturate\"},\"min\":5}");
        assertThat(brief.get("bounds").get(2).toString()).isEqualTo("{\"kind\":\"protein\",\"min\":\"10 %\"}");
        assertThat(brief.get("stages").get(0).get("share").toString()).isEqualTo("{\"min\":\"50 %\",\"max\":\"90 %\"}");
        assertThat(brief.get("stages").get(1).toString()).isEqualTo("{\"id\":\"mix\",\"ingredients\":[\"water\"]}");
    }

    @Test
    void aSecondProductTakesWhatThePantryHasAndAddsToIt() throws IOException {
        assertThat(answer(START, WATER, SOY, NOTHING_MORE, limits(6), List.of("", "")))
                .as(err)
                .isZero();
        var set = pantry().resolve("ingredients.json");
        Files.writeString(set, "// mine\n" + Files.readString(set));
        var oil = List.of("oil", "0", "0", "100", "0", "Port", "3/kg", "none");
        assertThat(answer(
                        List.of("", "crumble", "", "1 kg", "Soy, water"),
                        oil,
                        NOTHING_MORE,
                        List.of("", "", "20", "", "10", "", "", ""),
                        limits(3),
                        List.of("", "")))
                .as(out + err)
                .isZero();
        assertThat(out).contains("The pantry is there already, with water, soy.");
        assertThat(Files.readString(set)).startsWith("// mine\n").contains("\"oil\"");
        assertThat(Files.readString(pantry().resolve("prices-today.csv")))
                .contains("water,tap", "soy,Mill", "oil,Port");
        var crumble = JsonMapper.shared().readTree(Files.readString(folder.resolve("constraints/crumble.json")));
        assertThat(crumble.get("only").toString()).isEqualTo("[\"water\",\"soy\",\"oil\"]");
        assertThat(run("", "blend", folder.resolve("constraints/crumble.json").toString(), "--json"))
                .isZero();
        // 40 % soy carry 20 % protein and 0.4 % fat; 9.6 % oil the rest: 0.4 x 2 + 0.096 x 3
        assertThat(JsonMapper.shared().readTree(out).get("cost").get("perKg").decimalValue())
                .isEqualByComparingTo("1.088");
    }

    /** Answers to the questions about water, protein, fat and sodium, and about two ingredients. */
    private static List<String> protein(String least) {
        return List.of("", "", least, "", "", "", "", "", "", "", "", "");
    }

    /** As many pairs of least and most, all open. */
    private static List<String> limits(int count) {
        return Collections.nCopies(2 * count, "");
    }

    private BigDecimal costPerKg() {
        assertThat(run("", "blend", folder.resolve("constraints/my-mince.json").toString(), "--json"))
                .as(err)
                .isZero();
        return JsonMapper.shared().readTree(out).get("cost").get("perKg").decimalValue();
    }

    private Path pantry() {
        return folder.resolve("ingredient-sets/my-pantry");
    }

    private JsonNode brief() throws IOException {
        return JsonMapper.shared().readTree(Files.readString(folder.resolve("constraints/my-mince.json")));
    }

    private JsonNode ingredient(int index) throws IOException {
        var set = JsonMapper.shared().readTree(Files.readString(pantry().resolve("ingredients.json")));
        return set.get("ingredients").get(index);
    }

    private int answer(List<?>... answers) {
        var lines = Arrays.stream(answers)
                .flatMap(List::stream)
                .map(String::valueOf)
                .toList();
        return run(lines.isEmpty() ? "" : String.join("\n", lines) + "\n", "new", folder.toString());
    }

    private int run(String answers, String... words) {
        var run = CommandRun.answering(answers, words);
        out = run.output();
        err = run.messages();
        return run.status();
    }
}
