package panade.intake.food;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.pantry.IngredientSet;
import panade.intake.Importing;
import panade.intake.Intake;
import panade.intake.Request;
import panade.intake.Request.Differing;
import panade.intake.table.Columns;
import panade.quantity.Decimal;
import panade.sheet.poi.PoiSpreadsheets;
import panade.testing.CommandRun;

/**
 * Foods as USDA FoodData Central publishes them. The file {@code intake/foods.json} has the layout of its Foundation
 * Foods download (foods, numbers and unit names as in the release of 2022; its foods and amounts are invented).
 */
class FoodDataCentralTest {
    private static final Path FOODS = Path.of("src/test/resources/intake/foods.json");

    @TempDir
    Path folder;

    /** Nutrient numbers and tagnames: USDA SR 28, NUTR_DEF; its amino acids are in g and manganese in mg. */
    @ParameterizedTest(name = "{0} is {1} in our unit")
    @CsvSource({
        "PROCNT, 24.1",
        "FAT, 1.1",
        "WATER, 9.7",
        "NA, 12",
        "MN, 1234",
        "LYS, 1661",
        "FOL, 444",
        "SUGAR, 2.1",
        "ENERC, 336.5"
    })
    void amounts_are_taken_exactly_and_in_the_tagname_s_unit(String tagname, String amount) {
        assertThat(set(taken(FOODS, List.of()))
                        .ingredient("bean-meal-invented-dry")
                        .values())
                .containsEntry(tagname, Decimal.of(amount));
    }

    @ParameterizedTest
    @CsvSource({"1e999999999, is no amount of PROCNT", "1e2147483648, This is not a download that can be read"})
    void an_amount_that_nobody_can_have_measured_is_refused(String amount, String told) throws IOException {
        var download = Files.readString(FOODS).replaceFirst("\"amount\": 24.1", "\"amount\": " + amount);
        var file = Files.writeString(folder.resolve("download.json"), download);
        var run = CommandRun.of("import", file.toString(), "--into", folder.toString());
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains(told);
    }

    @Test
    void what_has_no_amount_or_means_something_else_is_left_out_and_told() {
        var intake = taken(FOODS, List.of());
        assertThat(set(intake).ingredient("bean-meal-invented-dry").values()).doesNotContainKeys("VITE", "CHOCDF");
        assertThat(set(intake).ingredient("oil-invented").values()).doesNotContainKey("CHOCDF");
        assertThat(String.join(" ", intake.notes()))
                .contains("Vitamin E (alpha-tocopherol)")
                .contains("Lycopene")
                .contains("CHOCDF of Oil, invented, which is below zero");
    }

    @Test
    void the_source_is_named_and_allergens_stay_unknown() {
        var intake = taken(FOODS, List.of());
        assertThat(intake.files().get(0).text()).contains("USDA FoodData Central, FDC ID 9000001, 4/1/2020");
        assertThat(set(intake).ingredient("oil-invented").allergens()).isNull();
        assertThat(intake.unsaid()).containsExactly("bean-meal-invented-dry", "oil-invented");
    }

    @Test
    void foods_are_chosen_by_words_or_by_their_id() {
        assertThat(set(taken(FOODS, List.of("invented oil"))).ingredients()).containsOnlyKeys("oil-invented");
        assertThat(set(taken(FOODS, List.of("9000001"))).ingredients()).containsOnlyKeys("bean-meal-invented-dry");
    }

    @Test
    void a_download_of_thousands_asks_which() throws IOException {
        var foods = IntStream.range(0, 60)
                .mapToObj(i -> "{\"description\": \"Food " + i + "\", \"fdcId\": " + i + ", \"foodNutrients\": []}")
                .toList();
        var file = Files.writeString(
                folder.resolve("many.json"), "{\"SRLegacyFoods\": [" + String.join(",", foods) + "]}");
        assertThat(read(file, List.of()))
                .isInstanceOfSatisfying(
                        Reading.Rejected.class,
                        rejected -> assertThat(rejected.problems().toString())
                                .contains("It has 60 foods")
                                .contains("--only"));
        assertThat(set(taken(file, List.of(""))).ingredients()).hasSize(60);
    }

    private Intake taken(Path file, List<String> only) {
        return ((Reading.Accepted<Intake>) read(file, only)).value();
    }

    private Reading<Intake> read(Path file, List<String> only) {
        return Importing.of(
                new Request(file, folder, Columns.OURS, null, List.of(), only, Map.of(), "x", Differing.REFUSED),
                new PoiSpreadsheets());
    }

    private static IngredientSet set(Intake intake) {
        return ((Reading.Accepted<IngredientSet>)
                        Documents.setOf(intake.files().get(0).text(), ""))
                .value();
    }
}
