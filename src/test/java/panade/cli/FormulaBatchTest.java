package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Formulas scaled and rounded to a scale, worked by hand on small numbers of whole grams. */
class FormulaBatchTest {
    @TempDir
    private Path folder;

    private Grains grains;

    @BeforeEach
    void write() throws IOException {
        grains = new Grains(folder);
    }

    private static double grams(JsonNode sheet, String ingredient) {
        for (var line : sheet.get("lines")) {
            if (line.get("ingredient").asString().equals(ingredient)) {
                return line.get("grams").asDouble();
            }
        }
        throw new AssertionError(ingredient);
    }

    /** 5, 2 and 3 hold 17 % and cost 2.4 a kilogram: 1.0886 a pound. */
    @Test
    void aFormulaIsWeighedAsItIsMadeThoughItBreaksABound() throws IOException {
        grains.made("5000", "2000", "3000");
        var run = grains.run("batch", "made.json");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(Grains.words(run))
                .contains(
                        "as made: 10000 g to weigh", "As it is made, scaled to 10000 g; 1.0886 USD/lb of ingredients.")
                .contains("The formula itself breaks, on any scale: - protein: comes to 17 %, needs at least 20 %")
                .contains("All are as the formula asks.");
        var sheet = Grains.json(grains.run("batch", "made.json", "--batch", "100 g", "--json"));
        assertThat(grams(sheet, "oats")).isCloseTo(50, within(1e-12));
        assertThat(grams(sheet, "soybeans")).isCloseTo(20, within(1e-12));
        assertThat(sheet.get("brokenAsMade").get(0).asString()).isEqualTo("/bounds/0/min");
        assertThat(sheet.get("moved")).isEmpty();
    }

    /**
     * Of 10.8 g one part is 3.6 g of oats and two parts are 7.2 g of beans. Rounded alone, 4 and 7 g hold 19.1 %; 3 and
     * 8 g are as heavy and hold 21.8 %.
     */
    @Test
    void linesMoveTogetherWhereRoundingEachAloneBreaksWhatTheFormulaKeeps() throws IOException {
        grains.write("made.json", """
                {"title": "as made", "brief": "brief.json", "made": {"mix": {"oats": "1.8 kg", "beans": "3.6 kg"}}}
                """);
        var run = grains.run("batch", "made.json", "--batch", "10.8 g", "--weighing", "1 g");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(Grains.words(run))
                .contains("every bound that could be measured is met")
                .contains(
                        "Each weight rounded on its own would break: protein. These lines are moved, by the next step")
                .contains("beans mix 7.20 7.00 8.00 +11 %")
                .contains("oats mix 3.60 4.00 3.00 -17 %")
                .contains("Furthest from the formula is oats, by -17 %.");
    }

    /** 4 and 7 g hold 19.1 % and are whole already: only a line that may move by a gram mends it. */
    @Test
    void aFormulaIsMendedOnlyAsFarAsItsLinesMayMove() throws IOException {
        grains.write("made.json", """
                {"title": "as made", "brief": "brief.json", "made": {"mix": {"oats": "4 g", "beans": "7 g"}}}
                """);
        var still = Grains.json(grains.run("batch", "made.json", "--json"));
        assertThat(grams(still, "beans")).isEqualTo(7);
        assertThat(still.get("moveAtMost").isNull()).isTrue();
        var tight = Grains.json(grains.run("batch", "made.json", "--json", "--move-at-most", "14 %"));
        assertThat(grams(tight, "beans")).isEqualTo(7);
        assertThat(tight.get("met").asBoolean()).isFalse();
        var mended = Grains.json(grains.run("batch", "made.json", "--json", "--move-at-most", "1 g"));
        assertThat(grams(mended, "beans")).isEqualTo(8);
        assertThat(grams(mended, "oats")).isEqualTo(3);
        assertThat(mended.get("met").asBoolean()).isTrue();
        assertThat(mended.get("moved")).hasSize(2);
    }

    /** With at most 21 % neither 4 and 7 g nor 3 and 8 g will do. */
    @Test
    void whatAScaleBreaksBesidesIsToldApartAndEndsWithFour() throws IOException {
        grains.brief("\"min\": \"20 %\", \"max\": \"21 %\"", "");
        grains.write("made.json", """
                {"title": "as made", "brief": "brief.json", "made": {"mix": {"oats": "1.8 kg", "beans": "3.6 kg"}}}
                """);
        var run = grains.run("batch", "made.json", "--batch", "10.8 g", "--weighing", "1 g");
        assertThat(run.status()).isEqualTo(4);
        assertThat(Grains.words(run)).contains("Weighed like this it also breaks what the formula keeps: - protein");
    }

    @Test
    void whatNobodySellsHasNoCostAndABriefHasNoLinesToMoveFrom() throws IOException {
        grains.made("5000", "2000", "3000");
        grains.write("prices.csv", "ingredient,supplier,price,per\noats,s,1,kg\nbeans,s,3,kg\n");
        assertThat(Grains.words(grains.run("batch", "made.json")))
                .contains("what it costs is not known, since nobody sells soybeans.");
        var run = grains.run("batch", "brief.json", "--move-at-most", "5 %");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.messages()).contains("--move-at-most", "expected a formula");
    }

    @Test
    void whatAsksForTheCheapestSaysThatAFormulaIsNoBrief() throws IOException {
        grains.made("5000", "2000", "3000");
        var run = grains.run("blend", "made.json");
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("This says what is made", "Expected a brief");
    }
}
