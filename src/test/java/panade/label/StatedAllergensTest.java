package panade.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.label.nutrition.Format;
import panade.testing.LabelKitchen;

/**
 * Allergens from an ingredient set's words to a label: 21 USC 343(w); 21 CFR 101.91; Regulation (EU) 1169/2011;
 * invented.
 */
class StatedAllergensTest {
    private static final String WATER = "{\"id\": \"water\", \"values\": {}, \"allergens\": []}";
    private static final String SAUCE = "{\"id\": \"sauce\", \"values\": {}, \"allergens\": [\"soya, wheat gluten\"]}";
    private static final String SLIP = "{\"id\": \"paste\", \"values\": {}, \"allergens\": [\"soi\", \"sesame\"]}";

    @TempDir
    private Path folder;

    private Panel panel(Format format, String... pantry) throws IOException {
        var kitchen = LabelKitchen.of(folder, List.of(pantry), "");
        var parts = new LinkedHashMap<String, String>();
        kitchen.brief().set().ingredients().keySet().forEach(id -> parts.put(id, "1"));
        return kitchen.panel(parts, PanelRequest.of(format));
    }

    @Test
    void two_in_one_text_are_both_on_the_label() throws IOException {
        assertThat(panel(Format.US, WATER, SAUCE).allergens().contains()).isEqualTo("Contains: soy, wheat.");
        assertThat(panel(Format.EU, WATER, SAUCE).statement().text()).contains("SOY", "WHEAT");
    }

    @Test
    void who_avoids_soy_gets_no_soya_and_nothing_that_looks_like_a_slip_for_it() throws IOException {
        var avoid = "\"avoid\": {\"allergens\": [\"soy\"]}, ";
        var brief = LabelKitchen.of(folder, List.of(WATER, SAUCE, SLIP), avoid).brief();
        assertThat(brief.candidates()).containsExactly("water");
    }

    @Test
    void a_slip_in_what_is_avoided_keeps_out_what_it_was_meant_for_and_says_so() throws IOException {
        var avoid = "\"avoid\": {\"allergens\": [\"soi\"]}, ";
        var brief = LabelKitchen.of(folder, List.of(WATER, SAUCE), avoid).brief();
        assertThat(brief.candidates()).containsExactly("water");
        assertThat(brief.remarks().toString()).contains("brief.json", "\"soi\"", "what carries \"soy\" is kept out");
    }

    @Test
    void none_and_something_beside_it_is_told() throws IOException {
        var both = "{\"id\": \"paste\", \"values\": {}, \"allergens\": [\"none\", \"soy\"]}";
        assertThat(panel(Format.US, WATER, both).allergens().strange())
                .extracting(Allergens.Strange::word)
                .containsExactly("none");
    }

    @Test
    void who_avoids_gluten_gets_no_wheat() throws IOException {
        var avoid = "\"avoid\": {\"allergens\": [\"gluten, milk\"]}, ";
        var brief = LabelKitchen.of(folder, List.of(WATER, SAUCE), avoid).brief();
        assertThat(brief.candidates()).containsExactly("water");
    }

    @Test
    void a_word_that_no_law_knows_is_a_remark_with_what_it_may_have_meant() throws IOException {
        var brief = LabelKitchen.of(folder, List.of(WATER, SLIP), "").brief();
        assertThat(brief.remarks().toString()).contains("\"soi\"", "paste", "\"soy\"", "set.json");
        assertThat(panel(Format.US, WATER, SLIP).allergens().strange())
                .extracting(Allergens.Strange::word)
                .containsExactly("soi");
    }

    /**
     * Nothing stated is told as that only where every ingredient states what it carries, in words that mean something.
     */
    @Test
    void none_is_told_only_where_all_is_known_and_never_as_free_of() throws IOException {
        var none = panel(Format.US, WATER).allergens().sentence();
        assertThat(none).startsWith("No allergen that the law names is stated").contains("not the same as free of");
        assertThat(none).contains("wheat-free is not gluten-free", "101.91");
        var silent = "{\"id\": \"gum\", \"values\": {}}";
        assertThat(panel(Format.US, WATER, silent).allergens().sentence())
                .doesNotContain("No allergen")
                .contains("gum");
        assertThat(panel(Format.US, WATER, SLIP).allergens().sentence()).doesNotContain("No allergen that");
    }

    @Test
    void gluten_alone_does_not_say_whether_it_is_wheat() throws IOException {
        var gluten = "{\"id\": \"stock\", \"values\": {}, \"allergens\": [\"gluten\"]}";
        var strange = panel(Format.US, WATER, gluten).allergens().strange();
        assertThat(strange).extracting(Allergens.Strange::word).containsExactly("gluten");
        assertThat(strange.get(0).advice()).contains("wheat", "rye", "barley", "oats");
    }

    @Test
    void in_the_union_no_line_beside_the_list_repeats_them() throws IOException {
        var allergens = panel(Format.EU, WATER, SAUCE).allergens();
        assertThat(allergens.contains()).isEmpty();
        assertThat(allergens.sentence()).startsWith("In capitals in the list").contains("Article 21(1)");
    }
}
