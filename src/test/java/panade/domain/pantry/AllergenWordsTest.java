package panade.domain.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Allergens as people write them: 21 USC 321(qq); Regulation (EU) 1169/2011, Annex II. */
class AllergenWordsTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "soy, wheat|soy wheat",
                "soy; wheat|soy wheat",
                "Soya/Wheat|soy wheat",
                "soy and wheat|soy wheat",
                "soy & sesame + milk|soy sesame milk",
                "wheat gluten|wheat",
                "Soybeans|soy",
                "nuts (hazelnuts, almonds)|hazelnut almond",
                "hazelnuts|hazelnut",
                "none|",
                "soy,, wheat;|soy wheat",
                "coconut|coconut",
            })
    void several_in_one_text_are_several(String text, String words) {
        assertThat(String.join(" ", AllergenWords.read(text))).isEqualTo(words == null ? "" : words);
    }

    /**
     * What is not known is kept as written, so that it can be shown, and a mark that splits no known words does not
     * split it.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {"85/20kg", "soi", "see the sheet and ask", "milk (powder)", "none, soy"})
    void a_word_that_no_list_knows_stays_as_it_is(String text) {
        var words = AllergenWords.read(text);
        assertThat(AllergenWords.unknown(Set.copyOf(words))).isNotEmpty();
        assertThat(String.join(", ", words)).isEqualTo(text);
    }

    @ParameterizedTest(name = "{0} is near {1}")
    @CsvSource({"soi, soy", "weat, wheat", "whole wheat flakes, wheat", "sesam, sesame", "hazlenuts, hazelnut"})
    void a_slip_has_a_nearest_word(String slip, String word) {
        assertThat(AllergenWords.nearest(slip)).contains(word);
    }

    @Test
    void nothing_is_near_to_a_price() {
        assertThat(AllergenWords.nearest("85/20kg")).isEmpty();
        assertThat(AllergenWords.nearest("x".repeat(100_000))).isEmpty();
    }

    /** A cook who avoids gluten avoids wheat; one who avoids hazelnuts can't trust plain "nuts". */
    @ParameterizedTest(name = "{0} may be {1}: {2}")
    @CsvSource({
        "soya, soy, true",
        "wheat, gluten, true",
        "barley, gluten, true",
        "gluten, wheat, true",
        "spelt, gluten, true",
        "almond, nuts, true",
        "tree nuts, almond, true",
        "almond, hazelnut, false",
        "clam, shellfish, true",
        "shellfish, clam, true",
        "shrimp, shellfish, true",
        "soi, soy, true",
        "milk, soy, false",
        "rye, wheat, false",
        "85/20kg, soy, false",
    })
    void what_is_avoided_is_kept_out_by_any_of_its_names(String stated, String avoided, boolean mayBe) {
        for (var word : AllergenWords.read(stated)) {
            assertThat(AllergenWords.mayBe(word, avoided)).isEqualTo(mayBe);
        }
    }

    @Test
    void a_kitchens_own_word_can_be_said_to_be_on_no_list() {
        assertThat(AllergenWords.unknown(Set.copyOf(AllergenWords.read("other: kiwi, soy"))))
                .isEmpty();
        assertThat(AllergenWords.read("other: kiwi, soy")).isEqualTo(List.of("other: kiwi", "soy"));
    }
}
