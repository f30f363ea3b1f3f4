package panade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Blends that stand in print, keep the bounds and are not the cheapest: {@code made} comes to their printed costs. */
class PublishedFormulasTest {
    @TempDir
    private Path folder;

    /** What is made under the brief of a published problem, in kilograms. */
    private JsonNode made(String problem, Map<String, String> kilograms, String... options) throws IOException {
        var weighed = kilograms.entrySet().stream()
                .map(each -> "\"" + each.getKey() + "\": \"" + each.getValue() + " kg\"")
                .collect(Collectors.joining(", "));
        var formula = Files.writeString(folder.resolve("formula.json"), "{\"made\": {\"mix\": {" + weighed + "}}}");
        var brief = Documents.folder("published/" + problem).resolve("constraints/brief.json");
        var words = new String[options.length + 5];
        words[0] = "made";
        words[1] = formula.toString();
        words[2] = "--brief";
        words[3] = brief.toString();
        words[4] = "--json";
        System.arraycopy(options, 0, words, 5, options.length);
        var run = CommandRun.of(words);
        assertThat(run.status()).as(run.messages()).isZero();
        return JsonMapper.shared().readTree(run.output());
    }

    private static void assertKept(JsonNode made) {
        assertThat(made.get("bounds"))
                .isNotEmpty()
                .allMatch(bound -> bound.get("met").asBoolean());
    }

    private static double perKg(JsonNode made, String of) {
        return made.get(of).get("perKg").asDouble();
    }

    /**
     * V. Chvatal, "Linear Programming" (1983), chapter 1, from memory: eight servings of milk and two of cherry pie
     * will do for 1.12 dollars, which is more than the least, 92.5 cents; ten servings of pork with beans cost 1.90
     * dollars and are more than anybody eats of it in a day.
     */
    @Test
    void eightServingsOfMilkAndTwoOfPieWillDoForMoreThanTheLeast() throws IOException {
        var milk = made("chvatal_diet", Map.of("milk", "8", "pie", "2", "nothing", "90"));
        assertKept(milk);
        assertThat(milk.get("cost").get("batch").asDouble()).isCloseTo(1.12, within(1e-12));
        assertThat(perKg(milk, "cheapest") * 100).isCloseTo(0.925, within(1e-12));
        var pork = made("chvatal_diet", Map.of("pork", "10", "nothing", "90"));
        assertThat(pork.get("cost").get("batch").asDouble()).isCloseTo(1.90, within(1e-12));
        pork.get("bounds")
                .forEach(bound -> assertThat(bound.get("met").asBoolean())
                        .as(bound.get("name").asString())
                        .isEqualTo(!bound.get("name").asString().equals("pork servings")));
    }

    /**
     * W. Hock and K. Schittkowski, "Test Examples for Nonlinear Programming Codes" (1981), Problem 73, after van de
     * Panne and Popp (1963): the feed that is sure of its protein costs 29.894378, that which has it on average
     * 28.9426476517.
     */
    @Test
    void aFeedThatIsSureOfItsProteinCostsMoreThanOneThatHasItOnAverage() throws IOException {
        var sure =
                made("chance_feed_mean", Map.of("barley", "635.5216", "sesame", "312.7019", "groundnut", "51.77655"));
        assertKept(sure);
        assertThat(perKg(sure, "cost") * 1000).isCloseTo(29.894378, within(5e-7));
        assertThat(perKg(sure, "cheapest") * 1000).isCloseTo(28.9426476517, within(1e-9));
    }

    /**
     * R. Fourer, D. M. Gay, B. W. Kernighan, "AMPL", 2nd ed. 2003, section 8.3 (dietobj): the dinners that cost least
     * over all three shops are the first shop's best, and dearer than the best of the others there; the fewest packages
     * cost more everywhere. Costs as in ports of the model; the amounts were computed with four solvers.
     */
    @Test
    void dinnersThatAreBestInOneShopOrFewestCostMoreInOthers() throws IOException {
        var first = Map.of(
                "BEEF",
                "2",
                "CHK",
                "10",
                "FISH",
                "2",
                "HAM",
                "2",
                "MCH",
                "2",
                "MTL",
                "6.23595505618",
                "SPG",
                "5.25842696629",
                "TUR",
                "2",
                "nothing",
                "68.50561797753");
        assertDinners(first, "1", 74.2738202247, 74.2738202247);
        assertDinners(first, "2", 75.0196629213, 74.3532967033);
        assertDinners(first, "3", 79.5971910112, 79.0556756757);
        var fewest = Map.of(
                "BEEF",
                "2",
                "CHK",
                "10",
                "FISH",
                "2",
                "HAM",
                "7.62686567164",
                "MCH",
                "2",
                "MTL",
                "2",
                "SPG",
                "3.29850746269",
                "TUR",
                "2",
                "nothing",
                "69.07462686567");
        assertDinners(fewest, "1", 78.2056716418, 74.2738202247);
        assertDinners(fewest, "2", 77.0674626866, 74.3532967033);
        assertDinners(fewest, "3", 81.1132835821, 79.0556756757);
    }

    private void assertDinners(Map<String, String> packages, String shop, double cost, double least)
            throws IOException {
        var prices =
                Documents.folder("published/ampl_dietobj").resolve("ingredient-sets/dinners/prices-s" + shop + ".csv");
        var dinners = made("ampl_dietobj", packages, "--prices", prices.toString());
        assertKept(dinners);
        assertThat(perKg(dinners, "cost") * 100).isCloseTo(cost, within(1e-8));
        assertThat(perKg(dinners, "cheapest") * 100).isCloseTo(least, within(1e-8));
    }
}
