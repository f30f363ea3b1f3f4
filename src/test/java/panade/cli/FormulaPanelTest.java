package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * The label of what is made. 5, 2 and 3 of oats, soybeans and beans hold 17 g of protein and (5 x 7 + 2 x 20 + 3 x 1) /
 * 10 = 7.8 g of fat in 100 g; the cheapest blend holds 20 g of protein, and no soybeans.
 */
class FormulaPanelTest {
    @TempDir
    private Path folder;

    private static double held(JsonNode panel, String id) {
        for (var row : panel.get("rows")) {
            if (row.get("id").asString().equals(id)) {
                return row.get("per100g").asDouble();
            }
        }
        throw new AssertionError(id);
    }

    @Test
    void theLabelIsOfWhatIsMadeAndNotOfTheCheapestBlend() throws IOException {
        var grains = new Grains(folder);
        grains.made("5000", "2000", "3000");
        var run = grains.run("panel", "made.json");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(Grains.words(run))
                .contains("Of what is made, \"as made\", whatever bounds it breaks.")
                .contains("rolled oats, beans, soybeans.")
                .contains("Contains: soy.");
        var made = Grains.json(grains.run("panel", "made.json", "--json"));
        assertThat(held(made, "PROCNT")).isCloseTo(17, within(1e-12));
        assertThat(held(made, "FAT")).isCloseTo(7.8, within(1e-12));
        var cheapest = Grains.json(grains.run("panel", "brief.json", "--json"));
        assertThat(held(cheapest, "PROCNT")).isCloseTo(20, within(1e-12));
    }

    /** 5.4, 2.4 and 3.2 g of 11 g are weighed as 5, 2 or 3 and 3 g: 6 would be 12 g in all, or 10. */
    @Test
    void whatIsWeighedIsRoundedAsTheSheetSays() throws IOException {
        var grains = new Grains(folder);
        grains.brief("\"max\": \"90 %\"", "\"weighing\": \"1 g\",");
        grains.made("5.4", "2.4", "3.2");
        var panel = Grains.json(grains.run("panel", "made.json", "--weighed", "--json"));
        var sheet = Grains.json(grains.run("batch", "made.json", "--json"));
        double protein = 0;
        for (var line : sheet.get("lines")) {
            var rich = line.get("ingredient").asString().equals("soybeans") ? 0.4 : 0.3;
            protein += line.get("ingredient").asString().equals("oats")
                    ? 0
                    : rich * line.get("grams").asDouble();
        }
        assertThat(held(panel, "PROCNT"))
                .isCloseTo(100 * protein / sheet.get("total").asDouble(), within(1e-9));
        assertThat(Grains.words(grains.run("panel", "made.json", "--weighed")))
                .contains("; as weighed in steps of 1 g.");
    }
}
