package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import panade.testing.Pottage;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What moves, worked by hand. With lentils at 3 and 30 %, peas at 5 and 40 % and rice at 1, a fifth of protein takes 60
 * % lentils, the most allowed, and 5 % peas: 1.8 + 0.25 + 0.35 = 2.4 a kilogram. Invented.
 */
class SetMovesTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [
                  {"id": "rice", "name": "cooked rice", "values": {"PROCNT": 0}, "allergens": []},
                  {"id": "peas", "values": {"PROCNT": 40}, "allergens": []},
                  {"id": "lentils", "values": {"PROCNT": 30}, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\nrice,s,1,kg\npeas,s,5,kg\nlentils,s,3,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "loaf", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "10 kg",
                 "bounds": [{"name": "protein", "property": "PROCNT", "min": "20 %"},
                            {"name": "few lentils", "ingredient": "lentils", "max": "60 %"}]}
                """);
        Files.writeString(
                folder.resolve("formula.json"),
                "{\"brief\": \"brief.json\", \"made\":"
                        + " {\"mix\": {\"rice\": \"5 kg\", \"peas\": \"2 kg\", \"lentils\": \"3 kg\"}}}");
    }

    private CommandRun blend(String... settings) {
        return Pottage.run(List.of("blend", folder.resolve("brief.json").toString()), settings);
    }

    private static String words(CommandRun run) {
        return run.output().replaceAll("\\s+", " ");
    }

    private JsonNode set(String setting) {
        var run = CommandRun.of("blend", folder.resolve("brief.json").toString(), "--json", "--set", setting);
        return JsonMapper.shared().readTree(run.output()).get("set");
    }

    /** Two thirds of lentils and a third of rice are 7/3 a kilogram, 1.0584 a pound instead of 1.0886. */
    @Test
    void costAmountsAndBoundsThatMoveAreTold() {
        assertThat(words(blend("few lentils max 70 %")))
                .contains("- few lentils: at most 70 % instead of 60 %.")
                .contains("The cheapest blend costs 1.0584 USD/lb instead of 1.0886,"
                        + " 2.3333 USD/kg instead of 2.4000: 0.0302 USD/lb less.")
                .contains("lentils 6000 6667 +667 peas 500 none -500 cooked rice 3500 3333 -167")
                .contains("- No longer binding: few lentils, at its most.")
                .doesNotContain("Now binding");
    }

    @Test
    void theResultForMachinesHasThemInFull() {
        var set = set("few lentils max 70 %");
        var tried = set.get("tried").get(0);
        assertThat(tried.get("of").asString()).isEqualTo("max");
        assertThat(tried.get("path").asString()).isEqualTo("/bounds/1");
        assertThat(tried.get("from").asString()).isEqualTo("60 %");
        assertThat(tried.get("to").asString()).isEqualTo("70 %");
        var moved = set.get("moved").get(0);
        assertThat(moved.get("written").get("perKg").asDouble()).isCloseTo(2.4, within(1e-12));
        assertThat(moved.get("now").get("perKg").asDouble()).isCloseTo(7 / 3.0, within(1e-12));
        assertThat(moved.get("changePerKg").asDouble()).isCloseTo(7 / 3.0 - 2.4, within(1e-12));
        assertThat(moved.get("changePerLb").asDouble()).isCloseTo((7 / 3.0 - 2.4) * 0.45359237, within(1e-12));
        assertThat(moved.get("unique").asBoolean()).isTrue();
        assertThat(moved.get("amounts").get(0).get("ingredient").asString()).isEqualTo("lentils");
        assertThat(moved.get("amounts").get(0).get("change").asDouble()).isCloseTo(1 / 15.0, within(1e-12));
        assertThat(moved.get("starts").isEmpty()).isTrue();
        assertThat(moved.get("stops").get(0).get("name").asString()).isEqualTo("few lentils");
        assertThat(moved.has("made")).isFalse();
    }

    /** Half peas and half rice are 3 a kilogram, where lentils at 7 have no place. */
    @Test
    void aPriceIsToldAgainstTheListAndWhoseItIs() {
        assertThat(words(blend("price lentils 7/kg")))
                .contains("- lentils from s: 3.1751 USD/lb instead of 1.3608.")
                .contains("1.3608 USD/lb instead of 1.0886, 3.0000 USD/kg instead of 2.4000: 0.2722 USD/lb more.")
                .contains("lentils 6000 none -6000 peas 500 5000 +4500 cooked rice 3500 5000 +1500");
    }

    @Test
    void aPriceOfWhatStaysOutMovesNothing() {
        assertThat(words(blend("price lentils 2.9/kg"))).contains("0.0272 USD/lb less. - The blend stays the same.");
        assertThat(words(blend("protein max 90 %")))
                .contains("- protein: at most 90 %.")
                .contains("The cheapest blend costs 1.0886 USD/lb either way. - The blend stays the same.");
    }

    /** With lentils at 5/4 and peas at 5 both make protein at the same price: any mix of the two costs the same. */
    @Test
    void otherBlendsAtTheSameCostAreMentioned() {
        assertThat(set("price lentils 4/kg").get("moved").get(0).get("unique").asBoolean())
                .isFalse();
        assertThat(words(blend("price lentils 4/kg", "few lentils max 50 %")))
                .contains(
                        "Other blends, or other suppliers' goods, cost exactly the same: compare costs, not amounts.");
    }

    @Test
    void aBlendThatIsLostOrWonIsTold() throws IOException {
        var lost = blend("protein min 45 %");
        assertThat(lost.status()).isEqualTo(4);
        assertThat(words(lost))
                .contains("As written the cheapest blend costs 1.0886 USD/lb; now no blend keeps every bound.");
        Files.writeString(
                folder.resolve("brief.json"),
                Files.readString(folder.resolve("brief.json")).replace("20 %", "45 %"));
        var won = blend("protein min 20 %");
        assertThat(won.status()).isZero();
        assertThat(words(won))
                .contains("As written no blend keeps every bound; now the cheapest blend costs 1.0886 USD/lb.");
        assertThat(words(blend("few lentils max 50 %")))
                .contains("As written no blend keeps every bound; now no blend keeps every bound.");
    }

    /** 5 + 2 x 6 + 3 x 3 make 26 instead of 24; 17 % of protein are enough where 16 are asked. */
    @Test
    void aFormulaIsToldWhatItCostsAndBreaksNow() {
        var run = Pottage.run(
                List.of("made", folder.resolve("formula.json").toString()), "price peas 6/kg", "protein min 16 %");
        assertThat(words(run))
                .contains("- The formula costs 1.1793 USD/lb instead of 1.0886: 0.0907 more.")
                .contains("- It no longer breaks: protein.");
        var broken = Pottage.run(List.of("made", folder.resolve("formula.json").toString()), "few lentils max 25 %");
        assertThat(words(broken))
                .contains("- The formula costs 1.0886 USD/lb either way.")
                .contains("- It breaks now: few lentils.");
    }

    /** A title says what is tried, so that a page that is found later is not taken for the documents' answer. */
    @Test
    void theTitleSaysSo() throws IOException {
        assertThat(blend("few lentils max 70 %").output()).startsWith("loaf, trying few lentils max 70 %\n");
        var page = folder.resolve("page.html");
        CommandRun.of(
                "report",
                folder.resolve("brief.json").toString(),
                "--no-curves",
                "-o",
                page.toString(),
                "--set",
                "few lentils max 70 %");
        assertThat(Files.readString(page)).contains("loaf, trying few lentils max 70 %");
    }
}
