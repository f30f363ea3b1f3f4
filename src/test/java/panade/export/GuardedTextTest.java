package panade.export;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words in CSV output (OWASP, CSV Injection, lists the signs). */
class GuardedTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx"})
    void what_could_be_a_formula_gets_an_apostrophe(String words) {
        assertThat(GuardedText.of(words)).isEqualTo("'" + words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "water", "1+1", "'=", "North Mill -1"})
    void other_words_stay_as_they_are(String words) {
        assertThat(GuardedText.of(words)).isEqualTo(words);
    }
}
