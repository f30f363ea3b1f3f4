package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/** What {@code quotes} says where lists or suppliers have no blend of their own, or all have the same. Invented. */
class QuotesCommandTest {
    private static final String HEAD = "ingredient,supplier,price,per\n";

    @TempDir
    private Path folder;

    private CommandRun run = CommandRun.NONE;

    @Test
    void whereEachSupplierSellsOneThingThereIsNobodyToBuyFromAlone() throws IOException {
        var brief = brief("lean,farm,1,kg\nlard,mill,2,kg\n");
        assertThat(run("quotes", brief, "--suppliers")).isEqualTo(2);
        assertThat(run.messages()).contains("nobody in these price lists sells more than one ingredient");
    }

    @Test
    void aSupplierWithoutABlendIsToldWithTheBoundAndWhatIsMissing() throws IOException {
        // the shop has no lard, so 20 % of fat cannot be reached; the market has all
        var brief = brief("lean,shop,1,kg\nbran,shop,1,kg\nlean,market,2,kg\nlard,market,2,kg\nbran,market,2,kg\n");
        assertThat(run("quotes", brief, "--suppliers")).isZero();
        assertThat(words())
                .contains("- shop: no blend. It cannot keep \"fat\" (at least 20 %). Of what the cheapest blend"
                        + " of all lists takes it has no lard.");
        assertThat(words()).contains("market 0.9072");
    }

    @Test
    void whereNoSupplierHasAllThereAreNoTablesOfDashes() throws IOException {
        var brief = brief("lean,shop,1,kg\nbran,shop,1,kg\nlard,market,2,kg\noil,market,2,kg\n");
        assertThat(run("quotes", brief, "--suppliers")).isZero();
        assertThat(words())
                .contains("No list alone allows a blend. Bought from all together: 0.")
                .contains("- market: no blend. It cannot keep \"fat\" (at most 30 %).")
                .doesNotContain("List by list")
                .doesNotContain("cannot be made")
                .doesNotContain("One blend for all");
    }

    @Test
    void aBlendThatIsBestUnderEveryListIsToldOnce() throws IOException {
        var brief = brief("lean,shop,1,kg\nlard,shop,2,kg\n");
        var dearer = Files.writeString(folder.resolve("dearer.csv"), HEAD + "lean,shop,1.1,kg\nlard,shop,2.2,kg\n");
        assertThat(run(
                        "quotes",
                        brief,
                        "--prices",
                        folder.resolve("prices.csv").toString(),
                        "--prices",
                        dearer.toString()))
                .isZero();
        assertThat(words()).containsOnlyOnce("It is lean 80.00 %, lard 20.00 %.");
        assertThat(words()).contains("under dearer is the same.").contains("safest and cheapest on average");
    }

    private String words() {
        return run.output().replaceAll("\\s+", " ");
    }

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }

    private String brief(String rows) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "t", "source": "invented", "ingredients": [
                 {"id": "lean", "values": {"FAT": 0}}, {"id": "lard", "values": {"FAT": 100}},
                 {"id": "bran", "values": {"FAT": 0}}, {"id": "oil", "values": {"FAT": 100}}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), HEAD + rows);
        return Files.writeString(folder.resolve("brief.json"), """
                {"title": "t", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "1 kg",
                 "bounds": [{"name": "fat", "property": "FAT", "min": "20 %", "max": "30 %"}]}
                """).toString();
    }
}
