package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
    private static final List<String> START = List.of("full", "", "", "", "1 kg", "");
    private static final List<String> WATER = List.of("water", "100", "0", "0", "0", "tap", "0/kg", "", "none");
    private static final List<String> SOY = List.of("soy", "8", "50", "1", "10", "Mill", "2/kg", "25 kg", "soy; wheat");
    private static final List<String> NOTHING_MORE = List.of("", "", "", "");
    private static final List<String> OPEN = Collections.nCopies(11, "");

    @TempDir
    Path folder;

    private String out = "";
    private String err = "";

    /** 20 % protein of soy with 50 %: 40 % soy at 2/kg, 0.80 USD/kg. */
    @Test
    void backAsksTheQuestionBeforeOnceMore() throws IOException {
        var wrong =
                List.of("soy", "8", "back", "9", "5", "back", "back", "8", "50", "1", "10", "Mill", "2/kg", "", "soy");
        assertThat(answer(START, WATER, wrong, NOTHING_MORE, protein("20")))
                .as(out + err)
                .isZero();
        assertThat(ingredient(1).get("values").get("WATER").decimalValue()).isEqualByComparingTo("8");
        assertThat(ingredient(1).get("values").get("PROCNT").decimalValue()).isEqualByComparingTo("50");
        assertThat(out).contains("Before, you said: 9");
        assertThat(costPerKg()).isEqualByComparingTo("0.8");
    }

    @Test
    void backAtTheFirstQuestionStaysThere() {
        assertThat(answer(List.of("back"), START, WATER, NOTHING_MORE, OPEN))
                .as(err)
                .isZero();
        assertThat(out).contains("This is the first question.");
    }

    @Test
    void answersThatEndAreKeptAndGoneOnFromAnotherDay() throws IOException {
        assertThat(answer(START, WATER, List.of("soy", "8", "50"))).isEqualTo(2);
        assertThat(err).contains("panade-new.draft").contains("The same command goes on from there");
        assertThat(folder.resolve("constraints")).doesNotExist();
        assertThat(answer(List.of(""), List.of("1", "10", "Mill", "2/kg", "", "soy"), NOTHING_MORE, protein("20")))
                .as(out + err)
                .isZero();
        assertThat(out).contains("There are 18 answers from another time").doesNotContain("What is your pantry called");
        assertThat(costPerKg()).isEqualByComparingTo("0.8");
        assertThat(folder.resolve("panade-new.draft")).doesNotExist();
    }

    @Test
    void whoDoesNotWantToGoOnStartsAnew() {
        answer(START, WATER);
        assertThat(answer(List.of("no"), START, WATER, NOTHING_MORE, OPEN))
                .as(out + err)
                .isZero();
        assertThat(out).contains("What is your pantry called?");
    }

    @Test
    void aPriceThatIsNotKnownIsNoOffer() throws IOException {
        var gum = List.of("gum", "?", "", "", "", "Mill", "?", "");
        assertThat(answer(START, WATER, gum, NOTHING_MORE, List.of("", "", "")))
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
        var soy = List.of("soy", "8", "50", "1", "10", "Mill", "2/kg", "", "85/20kg", "soy; wheat, milk");
        assertThat(answer(START, WATER, soy, NOTHING_MORE, OPEN)).as(out + err).isZero();
        assertThat(out).contains("On no law's list");
        assertThat(ingredient(1).get("allergens").toString()).isEqualTo("[\"soy\",\"wheat\",\"milk\"]");
    }

    /** Port sells soy at 1/kg: 40 % of it cost 0.40; the bite of soy alone is 6, so at least 5 is met. */
    @Test
    void suppliersKindsScoresAndPartsAreAskedOfWhoWantsThem() throws IOException {
        var further = List.of("", "yes", "soy", "Port", "1/kg", "", "");
        var kinds = List.of("yes", "", "texturate, protein");
        var score = List.of("yes", "", "", "6");
        var wishes = List.of("", "", "20", "", "", "", "", "", "texturate", "5", "", "yes", "10", "", "", "");
        var amounts = List.of("");
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
        assertThat(answer(START, WATER, SOY, NOTHING_MORE, OPEN)).as(err).isZero();
        var set = pantry().resolve("ingredients.json");
        Files.writeString(set, "// mine\n" + Files.readString(set));
        var oil = List.of("oil", "0", "0", "100", "0", "Port", "3/kg", "", "none");
        assertThat(answer(
                        List.of("full", "", "crumble", "", "1 kg", "Soy, water", ""),
                        oil,
                        NOTHING_MORE,
                        List.of("", "", "20", "", "10", "", "", ""),
                        List.of("", "", "")))
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

    /** Of gluten with 75.16 % protein 18 % come with 23.949 %, at 6/kg; the rest is water at nothing: 1.4369 USD/kg. */
    @Test
    void aShortBeginningAsksForPricesOfCommonIngredientsAlone() throws IOException {
        assertThat(answer(
                        List.of("", "", "", "", "1 kg", "Vital wheat gluten, water", "0/kg", "6/kg", ""),
                        List.of("18", "", "", "", "", "", "", "")))
                .as(out + err)
                .isZero();
        assertThat(out)
                .doesNotContain("From whom", "In packs of", "group", "score", "on its own first", "allergens does");
        assertThat(ingredient(1).get("values").get("PROCNT").decimalValue()).isEqualByComparingTo("75.16");
        assertThat(ingredient(1).get("allergens").toString()).isEqualTo("[\"wheat\"]");
        assertThat(ingredient(1).get("source").stringValue()).contains("NDB 48052");
        assertThat(out).contains("read your supplier's papers");
        assertThat(costPerKg().multiply(new BigDecimal("75.16")).setScale(9, RoundingMode.HALF_EVEN))
                .isEqualByComparingTo("108");
    }

    @Test
    void onlyIngredientsThatAreNamedAreAskedForLimits() throws IOException {
        var limited = List.of("", "", "", "", "", "", "", "", "soy", "10", "30", "", "");
        assertThat(answer(START, WATER, SOY, NOTHING_MORE, limited))
                .as(out + err)
                .isZero();
        assertThat(brief().get("bounds").toString())
                .isEqualTo("[{\"ingredient\":\"soy\",\"min\":\"10 %\",\"max\":\"30 %\"}]");
        assertThat(Files.readString(pantry().resolve("prices-today.csv"))).contains("soy,Mill,2,kg,25 kg,,,USD,");
    }

    @Test
    void anIngredientIsAddedToThePantryThatIsThere() throws IOException {
        assertThat(adding("ingredient")).isEqualTo(2);
        assertThat(err).contains("there is no pantry here yet");
        assertThat(answer(START, WATER, SOY, NOTHING_MORE, OPEN)).as(err).isZero();
        var briefBefore = brief();
        Files.move(pantry().resolve("prices-today.csv"), pantry().resolve("prices-spring.csv"));
        assertThat(adding("ingredient", List.of("short", "salt", "0.5/lb"))).isEqualTo(2);
        assertThat(err).contains("panade-new-ingredient.draft");
        assertThat(folder.resolve("panade-new.draft")).doesNotExist();
        var oil = List.of("oil", "0", "100", "0", "3/kg", "none", "");
        assertThat(adding("INGREDIENT", List.of("yes"), oil)).as(out + err).isZero();
        assertThat(out).doesNotContain("want to make");
        assertThat(ingredient(2).get("source").stringValue()).contains("NDB 02047");
        assertThat(ingredient(3).get("values").get("FAT").decimalValue()).isEqualByComparingTo("100");
        assertThat(Files.readString(pantry().resolve("prices-spring.csv")))
                .contains("soy,Mill,2,kg", "salt,market,0.5,lb", "oil,market,3,kg");
        assertThat(pantry().resolve("prices-today.csv")).doesNotExist();
        assertThat(brief()).isEqualTo(briefBefore);
        assertThat(folder.resolve("panade-new-ingredient.draft")).doesNotExist();
    }

    @Test
    void aProductIsAddedWithoutNamingThePantry() throws IOException {
        assertThat(answer(START, WATER, SOY, NOTHING_MORE, OPEN)).as(err).isZero();
        var crumble = List.of("short", "crumble", "", "1 kg", "", "", "", "20", "", "", "", "", "", "", "");
        assertThat(adding("product", crumble)).as(out + err).isZero();
        assertThat(out).contains("The pantry is my-pantry.").doesNotContain("pantry called");
        assertThat(folder.resolve("constraints/crumble.json")).content().contains("\"min\": \"20 %\"");
    }

    /** Scores of a pantry that is there are declared in it, or nothing could be read any more. */
    @Test
    void aNewScoreIsDeclaredInThePantryThatIsThere() throws IOException {
        assertThat(answer(START, WATER, SOY, NOTHING_MORE, OPEN)).as(err).isZero();
        var chew = List.of("full", "chewy", "", "1 kg", "", "", "gum", "", "", "", "", "Mill", "9/kg", "", "none");
        assertThat(adding("product", chew, List.of("", "", "", "yes", "bite", "4"), Collections.nCopies(12, "")))
                .as(out + err)
                .isZero();
        assertThat(Files.readString(pantry().resolve("ingredients.json"))).contains("\"bite\": {\"title\"");
    }

    /** Answers about water, protein, fat and sodium, limited ingredients, parts and the target. */
    private static List<String> protein(String least) {
        return List.of("", "", least, "", "", "", "", "", "", "", "");
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
        return adding("", answers);
    }

    private int adding(String what, List<?>... answers) {
        var lines = Arrays.stream(answers)
                .flatMap(List::stream)
                .map(String::valueOf)
                .toList();
        var words = new ArrayList<>(List.of("new", folder.toString()));
        if (!what.isEmpty()) {
            words.addAll(List.of("--add", what));
        }
        return run(lines.isEmpty() ? "" : String.join("\n", lines) + "\n", words.toArray(String[]::new));
    }

    private int run(String answers, String... words) {
        var run = CommandRun.answering(answers, words);
        out = run.output();
        err = run.messages();
        return run.status();
    }
}
