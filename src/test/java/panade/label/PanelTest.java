package panade.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.label.nutrition.EnergyMethod;
import panade.label.nutrition.Format;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.testing.LabelKitchen;

/** A panel as a whole. Figures of foods: USDA National Nutrient Database for Standard Reference 26, 2013. */
class PanelTest {
    /** Ground beef, 80 % lean, raw, NDB 23572. */
    private static final String BEEF =
            "{\"id\": \"beef\", \"values\": {\"PROCNT\": 17.17, \"FAT\": 20, \"CHOCDF\": 0, \"FIBTG\": 0, \"SUGAR\": 0,"
                    + " \"FASAT\": 7.673, \"FATRN\": 1.232, \"CHOLE\": 71, \"NA\": 67, \"K\": 270, \"CA\": 18, \"FE\": 1.94,"
                    + " \"VITD\": 0.1, \"VITB12\": 2.14}}";

    private static final String PINCH = "{\"id\": \"pinch\", \"values\": {\"VITD\": 0}, \"others\": 0}";
    private static final String SECRET = "{\"id\": \"secret\", \"values\": {\"FAT\": 0}}";

    @TempDir
    private Path folder;

    private Panel panel(Format format, Map<String, String> parts) throws IOException {
        return LabelKitchen.of(folder, List.of(BEEF, PINCH, SECRET), "\"serving\": \"112 g\", ")
                .panel(parts, PanelRequest.of(format));
    }

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource({
        "ENERC, 280, ''",
        "FAT, 22 g, 29%",
        "FASAT, 9 g, 43%",
        "FATRN, 1.5 g, ''",
        "CHOLE, 80 mg, 27%",
        "NA, 75 mg, 3%",
        "CHOCDF, 0 g, 0%",
        "SUGAD, not known, ''",
        "PROCNT, 19 g, ''",
        "VITD, 0.1 mcg, 0%",
        "CA, 20 mg, 0%",
        "FE, 2.2 mg, 10%",
        "K, 300 mg, 6%",
        "VITB12, 2.4 mcg, 100%",
    })
    void a_serving_of_112_g_of_beef_prints(String id, String printed, String percent) throws IOException {
        var row = LabelKitchen.row(panel(Format.US, Map.of("beef", "1")), id);
        assertThat(row.perServingText()).isEqualTo(printed);
        assertThat(row.percent()).isEqualTo(percent);
    }

    @Test
    void what_one_ingredient_does_not_state_is_not_known_of_the_whole() throws IOException {
        var panel = panel(Format.US, Map.of("beef", "999", "secret", "1"));
        assertThat(LabelKitchen.row(panel, "FAT").per100g())
                .isEqualTo(Decimal.of("20").multiply(Decimal.of("0.999")));
        var sodium = LabelKitchen.row(panel, "NA");
        assertThat(sodium.per100g()).isNull();
        assertThat(sodium.perServingText()).isEqualTo(Panel.NOT_KNOWN);
        assertThat(sodium.percent()).isEmpty();
        assertThat(sodium.unknownFor()).containsExactly("secret");
    }

    @Test
    void lines_that_may_be_left_out_are_when_they_are_not_known_or_nothing() throws IOException {
        assertThat(panel(Format.US, Map.of("pinch", "1")).rows())
                .noneMatch(row -> row.id().equals("VITB12"));
        assertThat(panel(Format.US, Map.of("beef", "1", "secret", "1")).rows())
                .noneMatch(row -> row.id().equals("VITB12"));
    }

    /** Regulation (EU) 1169/2011, Annex I: salt is sodium times 2.5; 67 mg of sodium are 0.1675 g. */
    @Test
    void salt_is_sodium_times_two_and_a_half() throws IOException {
        var salt = LabelKitchen.row(panel(Format.EU, Map.of("beef", "1")), "NA");
        assertThat(salt.per100g()).isEqualTo(Decimal.of("0.1675"));
        assertThat(salt.per100gText()).isEqualTo("0.17 g");
    }

    /** By hand: 76 g of carbohydrate at 4 and 17 are 304 kcal and 1292 kJ; "others" does not make it none. */
    @Test
    void a_syrup_that_states_its_total_carbohydrate_has_it() throws IOException {
        var syrup = "{\"id\": \"syrup\", \"values\": {\"WATER\": 24, \"CHOCDF\": 76, \"SUGAR\": 6}, \"others\": 0}";
        var panel = LabelKitchen.of(folder, List.of(syrup), "").panel(Map.of("syrup", "1"), PanelRequest.of(Format.EU));
        assertThat(LabelKitchen.row(panel, "CHOAVL").per100gText()).isEqualTo("76 g");
        assertThat(LabelKitchen.row(panel, "SUGAR").per100gText()).isEqualTo("6.0 g");
        assertThat(LabelKitchen.row(panel, "ENERC").per100gText()).isEqualTo("304 kcal");
        assertThat(LabelKitchen.row(panel, "ENERC kJ").per100gText()).isEqualTo("1292 kJ");
    }

    @Test
    void without_a_serving_only_100_g_are_told() throws IOException {
        var panel = LabelKitchen.of(folder, List.of(BEEF), "").panel(Map.of("beef", "1"), PanelRequest.of(Format.US));
        assertThat(panel.servingGrams()).isEmpty();
        assertThat(LabelKitchen.row(panel, "FAT").perServingText()).isEmpty();
        assertThat(LabelKitchen.row(panel, "FAT").per100gText()).isEqualTo("20 g");
    }

    @Test
    void a_pack_tells_its_servings() throws IOException {
        var request = new PanelRequest(
                Format.US,
                EnergyMethod.GENERAL,
                Quantity.parse("113 g").orElseThrow(),
                Quantity.parse("1 lb").orElseThrow(),
                null);
        var panel = LabelKitchen.of(folder, List.of(BEEF), "").panel(Map.of("beef", "1"), request);
        assertThat(panel.servings()).isEqualTo("about 4");
    }
}
