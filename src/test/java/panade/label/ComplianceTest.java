package panade.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.label.nutrition.Format;
import panade.quantity.Decimal;
import panade.testing.LabelKitchen;

/** Tolerances of 21 CFR 101.9(g) and of the Commission's guidance of 2012 (the latter from memory); foods invented. */
class ComplianceTest {
    private static final String SALTY = "{\"id\": \"salty\", \"values\": {\"PROCNT\": 20, \"FAT\": 10, \"NA\": 760},"
            + " \"others\": 0, \"spread\": {\"PROCNT\": 2, \"FAT\": 0.6, \"NA\": 40}}";
    private static final String BLAND = "{\"id\": \"bland\", \"values\": {}, \"others\": 0, \"spread\": {\"NA\": 30}}";
    private static final String SILENT = "{\"id\": \"silent\", \"values\": {\"NA\": 5}, \"others\": 0}";

    @TempDir
    private Path folder;

    private Compliance line(Format format, String id, Map<String, String> parts) throws IOException {
        return LabelKitchen.of(folder, List.of(SALTY, BLAND, SILENT), "")
                .panel(parts, PanelRequest.of(format))
                .compliance()
                .stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** 21 CFR 101.9(g)(5): 380 mg of sodium declared, 456 at most found; half of 40 and half of 30 make 25. */
    @Test
    void sodium_may_be_a_fifth_above_what_is_declared() throws IOException {
        var sodium = line(Format.US, "NA", Map.of("salty", "1", "bland", "1"));
        assertThat(sodium.declared()).isEqualTo("380 mg");
        assertThat(sodium.high()).isEqualTo(Decimal.of("456"));
        assertThat(sodium.low()).isNull();
        assertThat(sodium.spread()).isEqualByComparingTo("25");
        assertThat(sodium.room()).isEqualByComparingTo("3.04");
    }

    /** 21 CFR 101.9(g)(4)(ii): 10 g of protein declared, 8 at least found. */
    @Test
    void protein_may_be_a_fifth_below() throws IOException {
        var protein = line(Format.US, "PROCNT", Map.of("salty", "1", "bland", "1"));
        assertThat(protein.low()).isEqualTo(Decimal.of("8"));
        assertThat(protein.room()).isEqualByComparingTo("2");
    }

    @Test
    void energy_varies_with_what_makes_it_up() throws IOException {
        var energy = line(Format.US, "ENERC", Map.of("salty", "1"));
        assertThat(Objects.requireNonNull(energy.spread()).setScale(4, RoundingMode.HALF_UP))
                .isEqualByComparingTo("9.6519"); // the root of (4 x 2)^2 + (9 x 0.6)^2
    }

    @Test
    void one_missing_spread_is_named() throws IOException {
        var sodium = line(Format.US, "NA", Map.of("salty", "1", "silent", "1"));
        assertThat(sodium.variance()).isNull();
        assertThat(sodium.unknownFor()).containsExactly("silent");
    }

    @Test
    void without_any_spread_nothing_is_told() throws IOException {
        var panel =
                LabelKitchen.of(folder, List.of(SILENT), "").panel(Map.of("silent", "1"), PanelRequest.of(Format.US));
        assertThat(panel.compliance()).isEmpty();
    }

    @ParameterizedTest(name = "{0} declared {1}: {2} to {3}")
    @CsvSource({
        "PROCNT, 9.9, 7.9, 11.9",
        "PROCNT, 10, 8, 12",
        "PROCNT, 40, 32, 48",
        "PROCNT, 41, 33, 49",
        "FAT, 9.9, 8.4, 11.4",
        "FAT, 10, 8, 12",
        "FAT, 41, 33, 49",
        "FASAT, 3.9, 3.1, 4.7",
        "FASAT, 4, 3.2, 4.8",
        "NA, 1.24, 0.865, 1.615",
        "NA, 1.25, 1, 1.5",
        "FE, 10, 6.5, 14.5",
        "VITC, 10, 6.5, 15",
    })
    void the_union_allows_more_or_less_by_what_is_declared(String id, String declared, String low, String high) {
        var tolerance = Tolerance.on(id, Decimal.of(declared), Format.EU).orElseThrow();
        assertThat(tolerance.low()).isEqualTo(Decimal.of(low));
        assertThat(tolerance.high()).isEqualTo(Decimal.of(high));
    }

    /** 21 CFR 101.9(g)(4)(ii) and (5). */
    @ParameterizedTest
    @CsvSource({"FE, 10, 8,", "FIBTG, 10, 8,", "SUGAR, 10,, 12", "ENERC, 250,, 300", "NA, 380,, 456"})
    void the_united_states_mind_one_side_only(String id, String declared, String low, String high) {
        var tolerance = Tolerance.on(id, Decimal.of(declared), Format.US).orElseThrow();
        assertThat(tolerance.low()).isEqualTo(low == null ? null : Decimal.of(low));
        assertThat(tolerance.high()).isEqualTo(high == null ? null : Decimal.of(high));
    }
}
