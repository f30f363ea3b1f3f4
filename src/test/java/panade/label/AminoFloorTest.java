package panade.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.label.nutrition.Format;
import panade.label.nutrition.ProteinQuality;
import panade.plan.Outcome.Blended;
import panade.testing.Planners;

/**
 * An amino-acid floor in a brief against the score on the panel. Lysine of white wheat flour (NDB 20081) and defatted
 * soy flour (NDB 16117): USDA National Nutrient Database for Standard Reference 26, 2013; prices invented.
 */
class AminoFloorTest {
    @TempDir
    private Path folder;

    @Test
    void a_floor_at_the_pattern_is_met_exactly_by_the_cheapest_mixture() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [
                  {"id": "wheat", "values": {"PROCNT": 10.33, "LYS": 228}},
                  {"id": "soy", "values": {"PROCNT": 47.01, "LYS": 3129}}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\nwheat,a,1,kg\nsoy,a,2,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"ingredients": "set.json", "prices": ["prices.csv"], "batch": "1 kg",
                 "bounds": [{"property": "LYS", "per": {"property": "PROCNT"}, "min": "58 mg/g"}]}
                """);
        var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        var brief = ((Reading.Accepted<Brief>) reading).value();
        var best = (Blended) Planners.LINEAR.answer(brief);
        var protein = held(best, "PROCNT");
        assertThat(held(best, "LYS").divide(protein)).isEqualTo(BigFraction.of(58));
        assertThat(best.blend().shareOf("soy").signum()).isPositive();
        var missing = Panel.of(best.brief(), best.blend(), Format.US).protein().pdcaas();
        assertThat(missing.value()).isNull();
        assertThat(missing.missing())
                .extracting(ProteinQuality.Missing::ingredient)
                .containsExactlyInAnyOrder("soy", "wheat");
    }

    private static BigFraction held(Blended blended, String tagname) {
        return blended.blend().lines().stream()
                .map(line -> line.share()
                        .multiply(blended.brief()
                                .composition()
                                .stated(line.use().ingredient(), tagname)
                                .orElseThrow()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }
}
