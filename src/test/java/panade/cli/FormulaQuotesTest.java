package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What keeping a formula costs under price lists, by hand. 5, 2 and 3 of oats, soybeans and beans cost 2.4 a kilogram
 * at 1, 5 and 3, and 3.2 at 2, 5 and 4; the best blends, oats and beans one to two, cost 7/3 and 10/3.
 */
class FormulaQuotesTest {
    @TempDir
    private Path folder;

    private Grains grains;

    @BeforeEach
    void write() throws IOException {
        grains = new Grains(folder);
        grains.made("5000", "2000", "3000");
        grains.write("winter.csv", "ingredient,supplier,price,per\noats,w,2,kg\nsoybeans,w,5,kg\nbeans,w,4,kg\n");
    }

    @Test
    void keepingAFormulaStandsBesideTheBestOfEachList() {
        var run = grains.run("quotes", "made.json", "--prices", "prices.csv", "--prices", "winter.csv");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(Grains.words(run))
                .contains("as made: 2 price lists")
                .contains("prices 1.0886 1.0584 0.0302 winter 1.4515 1.5120 -0.0605 all together 1.0886 1.0584 0.0302")
                .contains("what is made breaks: protein.")
                .contains("The best blends");
        var made = Grains.json(
                        grains.run("quotes", "made.json", "--prices", "prices.csv", "--prices", "winter.csv", "--json"))
                .get("made");
        assertThat(made.get(1).get("perKg").asDouble()).isCloseTo(3.2, within(1e-12));
        assertThat(made.get(1).get("abovePerKg").asDouble()).isCloseTo(3.2 - 10 / 3.0, within(1e-12));
    }

    @Test
    void whatAListDoesNotSellIsNamedAndCostsNothingKnown() throws IOException {
        grains.write("winter.csv", "ingredient,supplier,price,per\noats,w,2,kg\nbeans,w,4,kg\n");
        var run = grains.run("quotes", "made.json", "--prices", "prices.csv", "--prices", "winter.csv");
        assertThat(Grains.words(run)).contains("winter - 1.5120 - no soybeans");
    }

    /** At 2, 4 and 4 all cost 3 a kilogram, as half oats and half soybeans do; the cheaper of two offers makes 2.2. */
    @Test
    void suppliersAreComparedAlone() throws IOException {
        grains.write("prices.csv", """
                ingredient,supplier,price,per
                oats,s,1,kg
                soybeans,s,5,kg
                beans,s,3,kg
                oats,w,2,kg
                soybeans,w,4,kg
                beans,w,4,kg
                """);
        assertThat(Grains.words(grains.run("quotes", "made.json", "--suppliers")))
                .contains("s 1.0886 1.0584 0.0302 w 1.3608 1.3608 0.0000 all together 0.9979 1.0584 -0.0605");
    }
}
