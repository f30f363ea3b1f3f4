package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.testing.CommandRun;
import panade.testing.Pottage;
import tools.jackson.databind.json.JsonMapper;

/** Where a number that is tried stands: faults name what was typed, and bases and workbooks are found. */
class SetFaultsTest {
    @TempDir
    private Path folder;

    private Pottage kitchen;

    @BeforeEach
    void write() throws IOException {
        kitchen = new Pottage(folder).write();
    }

    private CommandRun blend(String name, String... settings) {
        return Pottage.run(List.of("blend", kitchen.path(name)), settings);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            protien min 4 %             | No bound is called "protien"                                | Did you mean "protein"?
            a little rice max 4 %       | No bound is called "a little rice"                          | such as "some rice", "rice maxUse".
            protein min 4               | "4" has no unit, but "PROCNT" has one                       | Expected a share, such as "10 %" or "10 g/100g".
            protein min 4 kcal/100g     | "4 kcal/100g" is energy per weight                          | Expected a share
            protein min 110 %           | "110 %" is outside 0 % to 100 %                             | Expected a share
            protein min 4,5 %           | "4,5 %"                                                     | Write it as "4.5 %".
            soaked max 10 %             | The least, "20 %", is above the most, "10 %"                | Expected "min" at or below "max".
            rice maxUse min 10 %        | "rice maxUse" is the most that may be used, and has no least | Expected such as "rice maxUse max 5 %".
            rice maxUse max 130 %       | "130 %" is outside 0 % to 100 %                             | Expected a share from 0 % to 100 %
            price pease 3/lb            | No ingredient is called "pease"                             | Did you mean "peas"?
            price peas from Tarm 3/lb   | "Tarm" does not sell "peas"                                 | Did you mean "Tarn"?
            price peas -3/lb            | "-3/lb" is a negative price                                 | Expected a price per weight
            price peas 3/pint           | "3/pint" is not a price per weight                     | Expected a price per weight
            price peas £3/lb            | "£3/lb" bears "£", and prices are in USD                    | Expected a price per weight
            available peas 5 lb         | Of "peas" there are 2 offers, and each has its own          | "available peas from Mill 5 lb"
            available rice 5 %          | "5 %" is no weight that there can be                        | Expected a weight from 0 up
            out pease                   | No ingredient is called "pease"                             | Did you mean "peas"?
            """)
    void aFaultIsToldOfWhatWasTyped(String setting, String what, String advice) {
        var run = blend("brief.json", setting);
        assertThat(run.status()).as(run.messages()).isEqualTo(3);
        assertThat(run.messages()).startsWith("--set \"" + setting + "\": ").contains(what, advice, "1 problem");
    }

    @Test
    void whatIsNoSettingIsAnErrorInTheCommandLine() {
        var run = blend("brief.json", "protein 4 %");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.messages()).contains("--set \"protein 4 %\": expected \"NAME min 4 %\"");
    }

    @Test
    void whatNobodySellsHasNoPriceToSet() throws IOException {
        kitchen.edited("prices.csv", "salt,Mill,0.5,kg,\n", "");
        assertThat(blend("brief.json", "price salt 1/kg").messages())
                .contains("No price list sells \"salt\", so there is nothing to set");
    }

    @Test
    void oneNumberIsSetOnce() {
        assertThat(blend("brief.json", "protein min 10 %", "PROCNT min 11 %").messages())
                .contains("--set \"PROCNT min 11 %\": \"protein\" is set twice", "1 problem");
        assertThat(blend("brief.json", "price peas 3/kg", "price peas from Mill 2/kg")
                        .messages())
                .contains("\"price peas\" is set twice", "1 problem");
        assertThat(blend("brief.json", "protein min 10 %", "protein max 20 %").status())
                .isZero();
    }

    @Test
    void aNameThatTwoBoundsHaveIsTold() throws IOException {
        kitchen.edited("brief.json", "\"some rice\"", "\"soaked\"");
        var run = blend("brief.json", "soaked max 35 %");
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages())
                .contains(
                        "2 bounds can be meant by \"soaked\"",
                        "\"soaked\" (/bounds/3), \"soaked\" (/stages/0/bounds/0)");
        assertThat(blend("brief.json", "/stages/0/bounds/0 max 35 %").status()).isZero();
    }

    /** A fault of the documents is told as it is, and nothing of the settings. */
    @Test
    void faultsOfTheDocumentsComeFirst() throws IOException {
        kitchen.edited("brief.json", "\"12 %\"", "\"12\"");
        assertThat(blend("brief.json", "protein min 4 %").messages())
                .contains("/bounds/0/min")
                .doesNotContain("--set");
    }

    private double cost(CommandRun run) {
        return JsonMapper.shared()
                .readTree(run.output())
                .get("cost")
                .get("perKg")
                .asDouble();
    }

    @Test
    void aBriefIsFollowedToItsBasis() throws IOException {
        Files.writeString(
                folder.resolve("richer.json"),
                "{\"basedOn\": \"brief.json\", \"bounds\": [{\"name\": \"protein\", \"property\": \"PROCNT\","
                        + " \"min\": \"13 %\"}]}");
        var tried = Pottage.run(
                List.of("blend", kitchen.path("richer.json"), "--json"), "protein min 14 %", "some rice min 30 %");
        kitchen.edited("brief.json", "\"min\": \"10 %\"", "\"min\": \"30 %\"").edited("richer.json", "13 %", "14 %");
        assertThat(tried.status()).as(tried.messages()).isZero();
        assertThat(cost(tried)).isEqualTo(cost(Pottage.run(List.of("blend", kitchen.path("richer.json"), "--json"))));
    }

    @Test
    void aWorkbookIsSetLikeDocuments() {
        var book = kitchen.path("kitchen.xlsx");
        assertThat(CommandRun.of("export", kitchen.path("brief.json"), "--xlsx", book)
                        .status())
                .isZero();
        for (var setting : List.of(
                "protein min 14 %",
                "sodium max 300 mg/100g",
                "soaked max 30 %",
                "soak share min 80 %",
                "rice maxUse max 20 %",
                "price peas from Mill 1/kg",
                "available rice 1.5 kg",
                "out peas")) {
            var sheets = Pottage.run(List.of("blend", book, "--json"), setting);
            var documents = Pottage.run(List.of("blend", kitchen.path("brief.json"), "--json"), setting);
            assertThat(sheets.status()).as("%s: %s", setting, sheets.messages()).isZero();
            assertThat(cost(sheets)).as(setting).isEqualTo(cost(documents));
        }
    }

    /** One list need not sell what a price is tried for, nor one product have the bound; nobody at all is a fault. */
    @Test
    void whatFitsOneListOrProductIsTriedThere() throws IOException {
        var lists = List.of(
                "quotes",
                kitchen.path("brief.json"),
                "--prices",
                kitchen.path("prices.csv"),
                "--prices",
                kitchen.path("later.csv"),
                "--json");
        var moved = JsonMapper.shared()
                .readTree(Pottage.run(lists, "price peas 1.5/kg").output())
                .get("set")
                .get("moved");
        assertThat(moved.size()).isEqualTo(2);
        assertThat(moved.get(0).get("changePerKg").asDouble()).isNegative();
        assertThat(moved.get(1).get("changePerKg").asDouble()).isZero();
        Files.writeString(folder.resolve("plain.json"), """
                {"title": "plain pottage", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", "bounds": [{"name": "filling", "property": "PROCNT", "min": "10 %"}]}
                """);
        var products = List.of(
                "buy", kitchen.path("plain.json") + "=10 kg", kitchen.path("brief.json") + "=10 kg", "--seconds", "2");
        var order = Pottage.run(products, "some rice min 20 %", "filling min 11 %");
        assertThat(order.status()).as(order.messages()).isZero();
        assertThat(order.output())
                .contains("- filling: at least 11 % instead of 10 %.", "- some rice: at least 20 % instead of 10 %.")
                .contains("plain pottage:", "pottage:");
        var nowhere = Pottage.run(products, "some barley min 20 %");
        assertThat(nowhere.status()).isEqualTo(3);
        assertThat(nowhere.messages()).contains("No bound is called \"some barley\"");
    }
}
