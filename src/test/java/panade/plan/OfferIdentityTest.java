package panade.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.testing.Planners;

/**
 * Offers are told apart by the row they stand in, not by what they say. Two ingredients, protein at least 10 %: half of
 * each, (2 + 6) / 2 = 4 a kilogram. Data invented.
 */
class OfferIdentityTest {
    private static final Planner PLANNER = Planners.LINEAR;
    private static final String HEAD = "ingredient,supplier,price,per,pack,minimum,available\n";
    private static final String ROWS = HEAD + "lean,a,6,kg,,,\nrich,a,2,kg,,,\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void writeDocuments() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "two", "source": "invented", "ingredients": [
                  {"id": "lean", "values": {"PROCNT": 20}, "others": 0, "allergens": []},
                  {"id": "rich", "values": {"PROCNT": 0}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(folder.resolve("p.csv"), ROWS);
    }

    @Test
    void a_price_list_named_twice_counts_once() throws IOException {
        var brief = brief("\"p.csv\", \"p.csv\"");
        checkHalfAndHalf(blend(brief));
        assertThat(brief.offers()).hasSize(2);
        assertThat(brief.remarks())
                .anyMatch(remark ->
                        remark.text().contains("p.csv") && remark.text().contains("counts once"));
    }

    @Test
    void a_price_list_named_by_two_paths_counts_once() throws IOException {
        Files.createDirectory(folder.resolve("sub"));
        Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("p.csv"));
        var brief = brief("\"p.csv\", \"sub/../p.csv\", \"link.csv\"");
        checkHalfAndHalf(blend(brief));
        assertThat(brief.offers()).hasSize(2);
        assertThat(brief.remarks()).hasSize(2);
    }

    @Test
    void what_a_list_named_twice_has_available_is_there_once() throws IOException {
        // 4 kg of lean at 6, the rest at 9: .4 x 6 + .1 x 9 + .5 x 2 = 4.3
        Files.writeString(folder.resolve("p.csv"), HEAD + "lean,a,6,kg,,,4 kg\nlean,b,9,kg,,,\nrich,a,2,kg,,,\n");
        assertThat(blend(brief("\"p.csv\", \"p.csv\"")).costPerKg()).isEqualTo(BigFraction.of(43, 10));
    }

    @Test
    void two_rows_that_say_the_same_are_two_offers() throws IOException {
        // 2 kg from each of the equal rows, 1 kg at 9: .4 x 6 + .1 x 9 + .5 x 2 = 4.3
        Files.writeString(
                folder.resolve("p.csv"),
                HEAD + "lean,a,6,kg,,,2 kg\nlean,a,6,kg,,,2 kg\nlean,b,9,kg,,,\nrich,a,2,kg,,,\n");
        assertThat(blend(brief("\"p.csv\"")).costPerKg()).isEqualTo(BigFraction.of(43, 10));
    }

    @Test
    void the_same_rows_in_two_files_are_offers_of_their_own() throws IOException {
        Files.writeString(folder.resolve("q.csv"), ROWS);
        var brief = brief("\"p.csv\", \"q.csv\"");
        assertThat(brief.offers()).hasSize(4);
        checkHalfAndHalf(blend(brief));
    }

    private static void checkHalfAndHalf(Blend blend) {
        assertThat(blend.costPerKg()).isEqualTo(BigFraction.of(4));
        assertThat(blend.shareOf("lean")).isEqualTo(BigFraction.of(1, 2));
        assertThat(blend.shareOf("rich")).isEqualTo(BigFraction.of(1, 2));
    }

    private Brief brief(String lists) throws IOException {
        var file = Files.writeString(folder.resolve("brief.json"), """
                {"title": "half", "ingredients": "set.json", "prices": [%s], "currency": "USD", "batch": "10 kg",
                 "bounds": [{"property": "PROCNT", "min": "10 %%"}]}
                """.formatted(lists));
        return ((Reading.Accepted<Brief>) Documents.readBrief(file, Overrides.NONE)).value();
    }

    private static Blend blend(Brief brief) {
        return ((Blended) PLANNER.plan(brief)).blend();
    }
}
