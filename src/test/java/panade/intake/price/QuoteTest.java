package panade.intake.price;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.json.JsonMapper;

/** One supplier's quote taken into a list of several suppliers' prices, all invented. */
class QuoteTest {
    @TempDir
    Path folder;

    private Path list;
    private String out = "";
    private String err = "";

    @BeforeEach
    void pantry() throws IOException {
        Files.writeString(folder.resolve("ingredients.json"), """
                {"ingredients": [
                  {"id": "water", "values": {"WATER": 100}, "others": 0},
                  {"id": "soy", "name": "soy grits", "values": {"PROCNT": 51}},
                  {"id": "oil", "values": {"FAT": 100}}]}
                """);
        list = Files.writeString(folder.resolve("prices-list.csv"), """
                ingredient,supplier,price,per,note
                oil,Port,2,kg,first
                soy,Mill,1.1,kg,
                soy,Port,1.3,kg,
                oil,Mill,2.4,kg,
                water,tap,0,kg,
                """);
    }

    @Test
    void aQuoteReplacesTheRowsOfItsOwnSupplierAlone() throws IOException {
        quote("ingredient,supplier,price,per\nsoy,Mill,1.2,kg\nwater,Mill,0.01,kg\n");
        assertThat(take("--update")).isZero();
        assertThat(list).hasContent("""
                ingredient,supplier,price,per,pack,minimum,available,currency,note
                oil,Port,2,kg,,,,,first
                soy,Mill,1.2,kg,,,,,
                soy,Port,1.3,kg,,,,,
                water,tap,0,kg,,,,,
                water,Mill,0.01,kg,,,,,
                """);
        assertThat(out).contains("gone").contains("oil from Mill").doesNotContain("from Port", "from tap");
    }

    @Test
    void tablesAsSpreadsheetProgramsSaveThemAreReadAlike() throws IOException {
        for (var separator : List.of(";", "\t", ",")) {
            pantry();
            var saved = Files.readString(list).replace("\n", ",,\n").replace("oil,Mill", ",,,,,,\n\noil,Mill");
            Files.writeString(list, "\uFEFF" + separated(saved, separator));
            var quote =
                    "\uFEFFingredient,supplier,price,per,,\n\n,,,,,\nsoy,Mill,1.2,kg,,\nwater,Mill,0.01,kg,,\n,,,,,\n";
            quote(separated(quote, separator));
            assertThat(take("--update")).as(out + err).isZero();
            assertThat(Files.readString(list).lines().map(line -> line.replaceAll(",.*", "")))
                    .as(separator)
                    .containsExactly("ingredient", "oil", "soy", "soy", "water", "water");
            assertThat(Files.readString(list)).contains("oil,Port,2,kg,,,,,first", "soy,Mill,1.2,kg");
        }
    }

    @Test
    void aListThatCannotBeReadIsToldAndStays() throws IOException {
        Files.writeString(list, "ingredient,supplier,price,per\n\"soy,Mill,1.1,kg\n");
        quote("ingredient,supplier,price,per\nsoy,Mill,1.2,kg\n");
        assertThat(take("--update")).isEqualTo(3);
        assertThat(err).contains("prices-list.csv: A quote in it is not closed");
        assertThat(Files.readString(list)).contains("1.1");
    }

    private static String separated(String text, String separator) {
        return text.replace(",", separator);
    }

    @Test
    void whatWouldChangeIsShownFirstAndOnlyThat() throws IOException {
        var before = Files.readString(list);
        quote("ingredient,supplier,price,per\nsoy,Mill,1.2,kg\n");
        assertThat(take()).isEqualTo(3);
        assertThat(out)
                .contains("Nothing was written.", "soy from Mill", "oil from Mill")
                .doesNotContain("Port");
        assertThat(list).hasContent(before);
        quote("ingredient,supplier,price,per\nsoy,Mill,1.1,kg\noil,Mill,2.40,kg\n");
        assertThat(take()).isZero();
        assertThat(out).contains("Nothing to write");
    }

    @Test
    void oneUnknownItemDoesNotRefuseTheWholeQuote() throws IOException {
        quote("""
                ingredient,supplier,price,per,pack
                soyy,Mill,1.2,kg,
                water,Mill,0.01,kg,
                oil,Mill,2.6,kg,
                oil,Mill,2.5,kg,big
                water,Mill,"0,02",kg,
                """);
        assertThat(take("--update")).isEqualTo(3);
        assertThat(out)
                .contains("Taken in but for 3 rows")
                .contains("list.csv:2:1: A2: There is no ingredient \"soyy\" in the set.")
                .contains("Did you mean \"soy\"?")
                .contains("list.csv:5:5: E5:")
                .contains("list.csv:6:3: C6: \"0,02\" is not a number.");
        assertThat(Files.readString(list)).contains("water,Mill,0.01,kg", "oil,Mill,2.6,kg");
    }

    @Test
    void noRowGoesWhileOneOfItsSupplierCouldNotBeTaken() throws IOException {
        quote("ingredient,supplier,price,per\nsoyy,Mill,1.2,kg\noil,Mill,2.6,kg\n");
        assertThat(take("--update")).isEqualTo(3);
        assertThat(Files.readString(list)).contains("soy,Mill,1.1,kg", "oil,Mill,2.6,kg");
        assertThat(out).contains("Nothing of Mill was removed");
    }

    @Test
    void whereNothingCanBeTakenNothingIsWritten() throws IOException {
        var before = Files.readString(list);
        quote("ingredient,supplier,price,per\nsoyy,Mill,1.2,kg\n");
        assertThat(take("--update")).isEqualTo(3);
        assertThat(err).contains("There is no ingredient \"soyy\"");
        assertThat(list).hasContent(before);
    }

    @Test
    void rowsThatAreNotTakenStandInTheResultForMachines() throws IOException {
        quote("ingredient,supplier,price,per\nsoyy,Mill,1.2,kg\noil,Mill,2.6,kg\n");
        assertThat(take("--update", "--json")).isEqualTo(3);
        var result = JsonMapper.shared().readTree(out);
        assertThat(result.get("written").booleanValue()).isTrue();
        assertThat(result.get("notTaken").size()).isOne();
        assertThat(result.get("notTaken").get(0).stringValue()).contains("soyy");
    }

    @Test
    void aScoreOfOnesOwnIsTakenWhereOneSaysSo() throws IOException {
        Files.writeString(folder.resolve("list.csv"), "id,PROCNT,bite,set strength (g)\nsoy,51,6.5,120\npea,22,7,90\n");
        assertThat(take()).isZero();
        assertThat(out)
                .contains("Column not taken: \"bite\"")
                .contains("a score of your own? Say --trait \"bite\"")
                .contains("--trait \"set strength (g)\"");
        assertThat(take("--trait", "bite", "--trait", "set strength (g)", "--update"))
                .isZero();
        var set = JsonMapper.shared().readTree(Files.readString(folder.resolve("ingredients.json")));
        assertThat(set.get("traits").get("bite").isObject()).isTrue();
        assertThat(set.get("traits").get("set strength").get("unit").stringValue())
                .isEqualTo("g");
        assertThat(set.get("ingredients").get(1).get("values").get("bite").decimalValue())
                .isEqualByComparingTo("6.5");
        assertThat(set.get("ingredients")
                        .get(3)
                        .get("values")
                        .get("set strength")
                        .decimalValue())
                .isEqualByComparingTo("90");
        assertThat(out).doesNotContain("Column not taken");
    }

    @Test
    void aTraitThatIsNoColumnIsRefused() throws IOException {
        Files.writeString(folder.resolve("list.csv"), "id,PROCNT,bite\nsoy,51,6.5\n");
        assertThat(take("--trait", "bit")).isEqualTo(3);
        assertThat(err).contains("There is no column \"bit\"").contains("Did you mean \"bite\"?");
    }

    private void quote(String text) throws IOException {
        Files.writeString(folder.resolve("list.csv"), text);
    }

    private int take(String... more) {
        var words =
                new ArrayList<>(List.of("import", folder.resolve("list.csv").toString(), "--into", folder.toString()));
        words.addAll(List.of(more));
        var run = CommandRun.of(words.toArray(String[]::new));
        out = run.output();
        err = run.messages();
        return run.status();
    }
}
