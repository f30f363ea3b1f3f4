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
import panade.domain.pantry.IsolatedFibre;
import panade.label.nutrition.Format;
import panade.quantity.Decimal;
import panade.testing.LabelKitchen;

/**
 * Dietary fibre in the two laws. 21 CFR 101.9(c)(6)(i): "non-digestible soluble and insoluble carbohydrates (with 3 or
 * more monomeric units), and lignin that are intrinsic and intact in plants; isolated or synthetic non-digestible
 * carbohydrates (with 3 or more monomeric units) determined by FDA to have physiological effects that are beneficial to
 * human health", and the seven it lists; FDA's guidance of June 2018 and its answers of 2019 to 2021 add eleven.
 */
class FibreTest {
    private static final List<String> PANTRY = List.of(
            "{\"id\": \"water\", \"values\": {\"WATER\": 100}, \"others\": 0, \"allergens\": []}",
            "{\"id\": \"bran\", \"name\": \"oat bran\", \"values\": {\"PROCNT\": 0, \"FAT\": 0, \"CHOAVL\": 20, \"FIBTG\": 40}}",
            "{\"id\": \"gum\", \"name\": \"strong grade\", \"label\": \"methylcellulose\","
                    + " \"values\": {\"PROCNT\": 0, \"FAT\": 0, \"CHOAVL\": 0, \"FIBTG\": 90}}",
            "{\"id\": \"husk\", \"name\": \"psyllium husk\", \"fibre\": \"psyllium husk\","
                    + " \"values\": {\"PROCNT\": 0, \"FAT\": 0, \"CHOAVL\": 0, \"FIBTG\": 80}}",
            "{\"id\": \"gel\", \"fibre\": \"carrageenan\", \"values\": {\"FIBTG\": 66}, \"others\": 0}",
            "{\"id\": \"root\", \"label\": \"konjac flour\", \"values\": {\"FIBTG\": 80}, \"others\": 0}",
            "{\"id\": \"stew\", \"label\": \"bean stew with carrageenan\", \"values\": {\"FIBTG\": 6}, \"others\": 0}",
            "{\"id\": \"grown\", \"label\": \"agar weed\", \"fibre\": \"intact\", \"values\": {\"FIBTG\": 50}, \"others\": 0}");

    @TempDir
    private Path folder;

    private Panel panel(Format format, Map<String, String> parts) throws IOException {
        return LabelKitchen.of(folder, PANTRY, "").panel(parts, PanelRequest.of(format));
    }

    /**
     * By hand, per 100 g: bran 5 % of 40 = 2.0 g and husk 1 % of 80 = 0.8 g count, methylcellulose 2 % of 90 = 1.8 g
     * does not, and stays in the carbohydrate: 5 % of 60 + 1.8 + 0.8 = 5.6 g, 22.4 kcal.
     */
    @Test
    void methylcellulose_is_carbohydrate_but_not_dietary_fiber_in_the_states() throws IOException {
        var panel = panel(Format.US, Map.of("water", "92", "bran", "5", "gum", "2", "husk", "1"));
        assertThat(LabelKitchen.row(panel, "FIBTG").per100g()).isEqualTo(Decimal.of("2.8"));
        assertThat(LabelKitchen.row(panel, "FIBTG").per100gText()).isEqualTo("3 g");
        assertThat(LabelKitchen.row(panel, "FIBTG").percent()).isEqualTo("10%");
        assertThat(LabelKitchen.row(panel, "CHOCDF").per100g()).isEqualTo(Decimal.of("5.6"));
        assertThat(LabelKitchen.row(panel, "ENERC").per100g()).isEqualTo(Decimal.of("22.4"));
        assertThat(String.join(" ", panel.notes()))
                .contains("leaves out 1.8 g per 100 g from methylcellulose")
                .contains("names of methylcellulose");
    }

    /** Regulation (EU) 1169/2011, Annex I, point 12. */
    @Test
    void the_union_counts_it_and_says_on_what_condition() throws IOException {
        var panel = panel(Format.EU, Map.of("water", "92", "bran", "5", "gum", "2", "husk", "1"));
        assertThat(LabelKitchen.row(panel, "FIBTG").per100g()).isEqualTo(Decimal.of("4.6"));
        assertThat(LabelKitchen.row(panel, "CHOAVL").per100g()).isEqualTo(Decimal.of("1"));
        assertThat(String.join(" ", panel.notes()))
                .contains("Annex I, point 12", "2.6 g per 100 g", "methylcellulose", "psyllium husk");
    }

    @Test
    void konjac_counts_while_its_rule_is_pending() throws IOException {
        var panel = panel(Format.US, Map.of("water", "99", "root", "1"));
        assertThat(LabelKitchen.row(panel, "FIBTG").per100g()).isEqualTo(Decimal.of("0.8"));
        assertThat(String.join(" ", panel.notes())).contains("pending rulemaking", "konjac flour");
    }

    /** A name tells only of what is mostly fibre, and the set's word goes before the name. */
    @Test
    void the_mark_goes_before_the_name() throws IOException {
        assertThat(LabelKitchen.row(panel(Format.US, Map.of("gel", "1")), "FIBTG")
                        .per100g())
                .isEqualTo(Decimal.of("0"));
        assertThat(LabelKitchen.row(panel(Format.US, Map.of("stew", "1")), "FIBTG")
                        .per100g())
                .isEqualTo(Decimal.of("6"));
        assertThat(LabelKitchen.row(panel(Format.US, Map.of("grown", "1")), "FIBTG")
                        .per100g())
                .isEqualTo(Decimal.of("50"));
    }

    @ParameterizedTest(name = "{0} counts: {1}")
    @CsvSource({
        "beta-glucan, true",
        "psyllium husk, true",
        "cellulose, true",
        "guar gum, true",
        "pectin, true",
        "locust bean gum, true",
        "hydroxypropyl methylcellulose, true",
        "inulin, true",
        "alginate, true",
        "pea fiber, true",
        "glucomannan, true",
        "acacia, true",
        "methylcellulose, false",
        "carrageenan, false",
        "xanthan gum, false",
    })
    void the_laws_list(String name, boolean counts) {
        assertThat(IsolatedFibre.named(name)).map(IsolatedFibre::counts).contains(counts);
    }

    /** Seven by the rule, eleven by guidance and petitions: eighteen in all as of December 2021. */
    @Test
    void eighteen_sorts_count() {
        assertThat(IsolatedFibre.names().stream()
                        .flatMap(name -> IsolatedFibre.named(name).stream())
                        .filter(IsolatedFibre::counts))
                .hasSize(18);
    }
}
