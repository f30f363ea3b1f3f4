package panade.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.label.nutrition.Format;
import panade.testing.LabelKitchen;

/** What a change of the blend does to the label; foods invented. */
class LabelChangeTest {
    private static final List<String> PANTRY = List.of(
            "{\"id\": \"water\", \"values\": {}, \"others\": 0, \"allergens\": []}",
            "{\"id\": \"oil\", \"values\": {\"FAT\": 100}, \"others\": 0, \"allergens\": []}",
            "{\"id\": \"soy\", \"values\": {\"PROCNT\": 50, \"FAT\": 2}, \"others\": 0, \"allergens\": [\"soy\"]}",
            "{\"id\": \"pea\", \"values\": {\"PROCNT\": 50, \"FAT\": 2}, \"others\": 0, \"allergens\": []}",
            "{\"id\": \"bean\", \"values\": {\"PROCNT\": 50, \"FAT\": 2}, \"others\": 0}",
            "{\"id\": \"slip\", \"values\": {\"PROCNT\": 50, \"FAT\": 2}, \"others\": 0, \"allergens\": [\"soi\"]}");

    @TempDir
    private Path folder;

    private LabelChange change(Map<String, String> before, Map<String, String> after) throws IOException {
        var kitchen = LabelKitchen.of(folder, PANTRY, "\"serving\": \"100 g\", ");
        var request = PanelRequest.of(Format.US);
        return LabelChange.between(kitchen.panel(before, request), kitchen.panel(after, request));
    }

    @Test
    void another_protein_changes_a_name_and_an_allergen_and_no_figure() throws IOException {
        var change = change(Map.of("water", "70", "soy", "30"), Map.of("water", "70", "pea", "30"));
        assertThat(change.added()).containsExactly("pea");
        assertThat(change.gone()).containsExactly("soy");
        assertThat(change.reordered()).isFalse();
        assertThat(change.allergensGone()).containsExactly("soy");
        assertThat(change.figures()).isEmpty();
    }

    /** Nobody says what the bean carries: that must not read as if nothing changed. */
    @Test
    void what_states_no_allergens_keeps_none() throws IOException {
        for (var id : List.of("bean", "slip")) {
            var change = change(Map.of("water", "70", "pea", "30"), Map.of("water", "70", id, "30"));
            assertThat(change.keepsAllergens()).isFalse();
            assertThat(change.allergensNotKnown()).containsExactly(id);
        }
        assertThat(change(Map.of("water", "70", "bean", "30"), Map.of("water", "60", "bean", "40"))
                        .keepsAllergens())
                .isTrue();
    }

    @Test
    void a_shift_that_no_rounding_shows_is_no_change() throws IOException {
        var change = change(
                Map.of("water", "60", "pea", "30", "oil", "10"), Map.of("water", "60.1", "pea", "29.9", "oil", "10"));
        assertThat(change.keepsNames()).isTrue();
        assertThat(change.keepsAllergens()).isTrue();
        assertThat(change.figures()).isEmpty();
    }

    @Test
    void names_that_pass_each_other_are_told_with_the_figures() throws IOException {
        var change = change(
                Map.of("water", "50", "pea", "30", "oil", "20"), Map.of("water", "50", "pea", "20", "oil", "30"));
        assertThat(change.reordered()).isTrue();
        assertThat(change.figures())
                .contains(new LabelChange.Figure("FAT", "Total Fat", "21 g", "30 g"))
                .contains(new LabelChange.Figure("PROCNT", "Protein", "15 g", "10 g"));
    }
}
