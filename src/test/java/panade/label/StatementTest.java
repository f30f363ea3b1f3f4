package panade.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.domain.pantry.AllergenGroup;
import panade.label.nutrition.EnergyMethod;
import panade.label.nutrition.Format;
import panade.quantity.Quantity;
import panade.testing.LabelKitchen;

/**
 * The ingredient statement and the allergens, by 21 CFR 101.4, 21 USC 343(w) and Regulation (EU) 1169/2011; invented.
 */
class StatementTest {
    private static final List<String> PANTRY = List.of(
            "{\"id\": \"water\", \"values\": {}, \"allergens\": []}",
            "{\"id\": \"starch\", \"label\": \"potato starch\", \"values\": {}, \"allergens\": []}",
            "{\"id\": \"starch-2\", \"label\": \"potato starch\", \"values\": {}, \"allergens\": []}",
            "{\"id\": \"sauce\", \"label\": \"soy sauce\", \"values\": {}, \"allergens\": [\"wheat\", \"soy\"],"
                    + " \"madeOf\": [\"water\", \"soybeans\", \"wheat\", \"salt\"]}",
            "{\"id\": \"stock\", \"values\": {}, \"allergens\": [\"celery\", \"barley\"]}",
            "{\"id\": \"praline\", \"values\": {}, \"allergens\": [\"hazelnut\"]}",
            "{\"id\": \"oat drink\", \"values\": {}, \"allergens\": [\"oats\", \"barley\"]}",
            "{\"id\": \"peanut butter\", \"values\": {}, \"allergens\": [\"peanuts\", \"milk\"]}",
            "{\"id\": \"gum\", \"values\": {}}");

    @TempDir
    private Path folder;

    private LabelKitchen kitchen;

    @BeforeEach
    void stock() throws IOException {
        kitchen = LabelKitchen.of(folder, PANTRY, "");
    }

    private Panel panel(Format format, String tail, String... partsById) {
        var parts = new LinkedHashMap<String, String>();
        for (int i = 0; i < partsById.length; i += 2) {
            parts.put(partsById[i], partsById[i + 1]);
        }
        var gathered = tail.isEmpty() ? null : Quantity.parse(tail).orElseThrow();
        return kitchen.panel(parts, new PanelRequest(format, EnergyMethod.GENERAL, null, null, gathered));
    }

    private String text(Format format, String tail, String... partsById) {
        return panel(format, tail, partsById).statement().text();
    }

    @Test
    void two_lots_of_one_name_are_one_line_and_move_up_together() {
        assertThat(text(Format.US, "", "water", "50", "starch", "20", "starch-2", "20", "gum", "30"))
                .isEqualTo("water, potato starch, gum.");
    }

    @Test
    void what_an_ingredient_is_made_of_stands_in_brackets() {
        assertThat(text(Format.US, "", "water", "9", "sauce", "1"))
                .isEqualTo("water, soy sauce (water, soybeans, wheat, salt).");
    }

    /** Article 21(1)(b): what carries an allergen stands out; what the name does not tell is added. */
    @Test
    void in_the_union_allergens_stand_out() {
        assertThat(text(Format.EU, "", "water", "7", "sauce", "2", "stock", "1"))
                .isEqualTo("water, SOY sauce (water, SOYBEANS, WHEAT, salt), stock (BARLEY, CELERY).");
    }

    /** One cereal does not stand for another, nor does a word that only sounds like the food. */
    @Test
    void only_the_allergens_own_word_tells_it() {
        assertThat(text(Format.EU, "", "water", "7", "oat drink", "2", "peanut butter", "1"))
                .isEqualTo("water, OAT drink (BARLEY), PEANUT butter (MILK).");
    }

    /** 21 CFR 101.4(a)(2): two per cent or less; exactly two may be gathered, in the Union only what is below. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "2 %; 2; water, potato starch. Contains 2% or less of: gum.",
                "2 %; 2.0001; water, potato starch, gum.",
                "1.5 %; 1.5; water, potato starch. Contains 1.5% or less of: gum.",
                "0.5 %; 0.4; water, potato starch. Contains 0.5% or less of: gum.",
            })
    void small_names_are_gathered_on_request(String tail, String gum, String text) {
        var water = new BigDecimal("90").subtract(new BigDecimal(gum)).toString();
        assertThat(text(Format.US, tail, "water", water, "starch", "10", "gum", gum))
                .isEqualTo(text);
    }

    @Test
    void each_allergen_says_where_it_comes_from() {
        var allergens = panel(Format.US, "", "water", "6", "sauce", "2", "stock", "1", "praline", "1")
                .allergens();
        assertThat(allergens.contains()).isEqualTo("Contains: soy, tree nuts (hazelnut), wheat.");
        assertThat(allergens.named()).contains(new Allergens.Carried("wheat", List.of("sauce")));
        assertThat(allergens.others()).extracting(Allergens.Carried::name).containsExactly("barley", "celery");
        assertThat(allergens.unknownFor()).isEmpty();
    }

    @Test
    void the_unions_list_is_longer() {
        var allergens = panel(Format.EU, "", "water", "6", "sauce", "2", "stock", "1", "praline", "1")
                .allergens();
        assertThat(allergens.sentence())
                .isEqualTo(
                        "In capitals in the list, with no line beside it that repeats them (Article 21(1)): celery, cereals containing gluten (barley), cereals containing gluten (wheat),"
                                + " nuts (hazelnut), soybeans.");
        assertThat(allergens.others()).isEmpty();
    }

    @Test
    void an_ingredient_that_states_no_allergens_is_named_not_cleared() {
        var panel = panel(Format.US, "", "water", "9", "gum", "1");
        assertThat(panel.allergens().unknownFor()).containsExactly("gum");
        assertThat(panel.cautions()).anyMatch(caution -> caution.text().contains("not known for gum"));
    }

    /** 21 USC 321(qq) with the FASTER Act of 2021; Regulation (EU) 1169/2011, Annex II. */
    @Test
    void there_are_nine_and_fourteen() {
        assertThat(names(Format.US)).hasSize(9).contains("sesame", "crustacean shellfish");
        assertThat(names(Format.EU)).hasSize(14).contains("lupin", "molluscs", "sulphur dioxide and sulphites");
    }

    private static Set<String> names(Format format) {
        var names = new TreeSet<String>();
        for (var group : AllergenGroup.values()) {
            AllergenNames.name(group, format).ifPresent(names::add);
        }
        return names;
    }
}
