package panade.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.label.nutrition.Format;
import panade.label.nutrition.ReferenceAmount;
import panade.quantity.Quantity;
import panade.testing.LabelKitchen;

/** Names, classes and parts that the laws ask for, and what a finished label still needs; invented. */
class NamesByLawTest {
    private static final String WATER = "{\"id\": \"water\", \"values\": {}, \"others\": 0, \"allergens\": []}";
    private static final String OIL =
            "{\"id\": \"oil\", \"label\": \"canola oil\", \"values\": {}, \"allergens\": []%s}";
    private static final String GUM =
            "{\"id\": \"gum\", \"label\": \"methylcellulose\", \"values\": {}, \"allergens\": []%s}";
    private static final String SPICE =
            "{\"id\": \"spice\", \"label\": \"spices\", \"values\": {}, \"allergens\": []%s}";

    @TempDir
    private Path folder;

    private Panel panel(Format format, String... pantryAndParts) throws IOException {
        var parts = new LinkedHashMap<String, String>();
        var pantry = new ArrayList<String>();
        for (int i = 0; i < pantryAndParts.length; i += 2) {
            pantry.add(pantryAndParts[i]);
            parts.put(pantryAndParts[i].replaceAll("(?s).*?\"id\": \"([^\"]*)\".*", "$1"), pantryAndParts[i + 1]);
        }
        return LabelKitchen.of(folder, pantry, "").panel(parts, PanelRequest.of(format));
    }

    private static String needs(Panel panel) {
        return String.join(
                "\n",
                panel.stillNeeded().stream()
                        .map(need -> need.text() + " [" + need.source() + "]")
                        .toList());
    }

    /** Annex VII, Part C (from memory): the class, then the name or number. */
    @Test
    void in_the_union_an_additive_stands_behind_its_class() throws IOException {
        var marked = GUM.formatted(", \"additive\": {\"class\": \"stabiliser\", \"number\": \"E 461\"}");
        assertThat(panel(Format.EU, WATER, "9", marked, "1").statement().text())
                .isEqualTo("water, stabiliser: methylcellulose.");
        assertThat(panel(Format.US, WATER, "9", marked, "1").statement().text()).isEqualTo("water, methylcellulose.");
        assertThat(needs(panel(Format.EU, WATER, "9", marked, "1"))).doesNotContain("Part C");
        assertThat(needs(panel(Format.EU, WATER, "9", GUM.formatted(""), "1")))
                .contains("The class of methylcellulose (E 461)", "Part C");
    }

    @Test
    void a_name_by_law_stands_in_its_own_law_only() throws IOException {
        var marked = OIL.formatted(", \"labelIn\": {\"eu\": \"rapeseed oil\"}");
        assertThat(panel(Format.EU, WATER, "9", marked, "1").statement().text()).isEqualTo("water, rapeseed oil.");
        assertThat(panel(Format.US, WATER, "9", marked, "1").statement().text()).isEqualTo("water, canola oil.");
        assertThat(needs(panel(Format.EU, WATER, "9", OIL.formatted(""), "1")))
                .contains("Another name for canola oil: rapeseed oil");
    }

    /**
     * Annex VII, Part B: "all spices and herbs not exceeding 2 % by weight of the food" (from memory); exactly 2 % may.
     */
    @Test
    void spices_are_one_word_up_to_two_per_cent() throws IOException {
        assertThat(needs(panel(Format.EU, WATER, "98", SPICE.formatted(""), "2")))
                .doesNotContain("Part B");
        assertThat(needs(panel(Format.EU, WATER, "97.7", SPICE.formatted(""), "2.3")))
                .contains("2 % at most, and they make 2.3 %", "Part B");
        var named = SPICE.formatted(", \"madeOf\": [\"chilli\", \"cumin\"]");
        assertThat(needs(panel(Format.EU, WATER, "97.7", named, "2.3"))).doesNotContain("Part B");
    }

    /**
     * 21 CFR 101.22(a)(2): "Paprika, turmeric, and saffron or other spices which are also colors, shall be declared as
     * 'spice and coloring' unless declared by their common or usual name."
     */
    @Test
    void a_spice_that_colours_says_so_unless_it_has_a_name() throws IOException {
        assertThat(panel(Format.US, WATER, "99", SPICE.formatted(", \"colours\": true"), "1")
                        .statement()
                        .text())
                .isEqualTo("water, spice and coloring.");
        var named = "{\"id\": \"red\", \"label\": \"paprika\", \"values\": {}, \"colours\": true}";
        assertThat(panel(Format.US, WATER, "99", named, "1").statement().text()).isEqualTo("water, paprika.");
    }

    /** 21 CFR 101.4(b)(2): the ingredients of an ingredient stand in brackets. */
    @Test
    void what_is_made_of_several_things_is_asked_for() throws IOException {
        var sauce =
                "{\"id\": \"sauce\", \"label\": \"soy sauce\", \"values\": {}, \"allergens\": [\"soy\", \"wheat\"]%s}";
        assertThat(needs(panel(Format.US, WATER, "9", sauce.formatted(""), "1")))
                .contains("What soy sauce is made of", "101.4(b)(2)");
        for (var parts : List.of(", \"madeOf\": [\"water\", \"soybeans\", \"wheat\", \"salt\"]", ", \"madeOf\": []")) {
            assertThat(needs(panel(Format.US, WATER, "9", sauce.formatted(parts), "1")))
                    .doesNotContain("101.4(b)(2)");
        }
        assertThat(needs(panel(Format.US, WATER, "9", OIL.formatted(""), "1"))).doesNotContain("101.4(b)(2)");
    }

    @Test
    void the_rest_of_a_label_is_listed_with_its_paragraphs() throws IOException {
        assertThat(needs(panel(Format.US, WATER, "1")))
                .contains("21 CFR 101.3]", "21 CFR 101.7]", "21 CFR 101.5]", "101.9(b)(5)", "household measure");
        assertThat(needs(panel(Format.EU, WATER, "9", "{\"id\": \"mushrooms of the test\", \"values\": {}}", "1")))
                .contains("Article 17", "Article 23", "Articles 24, 25 and 27", "Article 26", "9(1)(h)")
                .contains("in the title here: mushrooms of the test 10 %", "Article 22");
    }

    @Test
    void the_kind_of_nut_is_asked_for() throws IOException {
        var paste = "{\"id\": \"spread\", \"values\": {}, \"allergens\": [\"nuts\"]}";
        assertThat(needs(panel(Format.US, WATER, "9", paste, "1"))).contains("Which tree nuts spread carries");
        var named = "{\"id\": \"spread\", \"values\": {}, \"allergens\": [\"walnuts\"]}";
        assertThat(needs(panel(Format.US, WATER, "9", named, "1"))).doesNotContain("Which tree nuts");
    }

    /** 21 CFR 101.9(b)(2)(i): 67 % to under 200 % of the amount is one serving; 113 of 110 g is, of 55 g is not. */
    @Test
    void a_serving_stands_against_the_reference_amount() throws IOException {
        var serving = Quantity.parse("113 g").orElseThrow();
        assertThat(ReferenceAmount.note(serving))
                .contains("110 g: 103 %, one serving")
                .contains("55 g: 205 %, not one serving");
    }

    /**
     * By hand: 4 x 20 + 9 x 1 + 4 x 50 = 289 where the set says 269; with fibre at 2 the Union comes to 269 as well.
     */
    @Test
    void the_two_energies_say_why_they_differ() throws IOException {
        var set =
                "{\"id\": \"bean\", \"values\": {\"PROCNT\": 20, \"FAT\": 1, \"CHOAVL\": 40, \"FIBTG\": 10, \"ENERC\": 269}}";
        assertThat(String.join(" ", panel(Format.US, set, "1").notes()))
                .contains("own energy (ENERC) is 269 kcal", "as its ingredients state it", "law's factors, 289.");
        assertThat(String.join(" ", panel(Format.EU, set, "1").notes())).doesNotContain("ENERC");
    }
}
