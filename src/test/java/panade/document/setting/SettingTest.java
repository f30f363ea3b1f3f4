package panade.document.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.domain.Side;

/** What can be typed after --set. */
class SettingTest {
    private static Setting of(String text) {
        return Setting.of(text).orElseThrow();
    }

    @Test
    void aBoundHasANameASideAndANumber() {
        assertThat(of("fat like an 80/20 grind min 4 %"))
                .isEqualTo(new Setting.OfBound(
                        "fat like an 80/20 grind min 4 %", "fat like an 80/20 grind", Side.MIN, "4 %"));
        assertThat(of(" NA  MAX 300 mg/100g "))
                .isEqualTo(new Setting.OfBound("NA  MAX 300 mg/100g", "NA", Side.MAX, "300 mg/100g"));
        assertThat(of("salt=1.2 %")).isEqualTo(new Setting.OfBound("salt=1.2 %", "salt", Side.FIXED, "1.2 %"));
        assertThat(of("umami min -0.2")).isEqualTo(new Setting.OfBound("umami min -0.2", "umami", Side.MIN, "-0.2"));
    }

    /** A bound without a name is called by its numbers, so that the last word counts. */
    @Test
    void theLastSideCounts() {
        assertThat(of("NA min 2 mg/100g max 4 mg/100g max 3 mg/100g"))
                .isEqualTo(new Setting.OfBound(
                        "NA min 2 mg/100g max 4 mg/100g max 3 mg/100g",
                        "NA min 2 mg/100g max 4 mg/100g",
                        Side.MAX,
                        "3 mg/100g"));
    }

    @Test
    void aPriceIsEverybodysOrOneSuppliers() {
        assertThat(of("price pea flour 00 3.10/lb"))
                .isEqualTo(new Setting.OfPrice("price pea flour 00 3.10/lb", "pea flour 00", null, "3.10/lb"));
        assertThat(of("price peas from Mill 7 & Sons $62 / 20 kg"))
                .isEqualTo(new Setting.OfPrice(
                        "price peas from Mill 7 & Sons $62 / 20 kg", "peas", "Mill 7 & Sons", "$62 / 20 kg"));
    }

    @Test
    void whatIsToBeHadIsAWeightOrNothing() {
        assertThat(of("available pea flour 00 5 lb"))
                .isEqualTo(new Setting.OfAvailable("available pea flour 00 5 lb", "pea flour 00", null, "5 lb"));
        assertThat(of("available peas from Tarn 2.5kg"))
                .isEqualTo(new Setting.OfAvailable("available peas from Tarn 2.5kg", "peas", "Tarn", "2.5kg"));
        assertThat(of("out pea flour 00")).isEqualTo(new Setting.Out("out pea flour 00", "pea flour 00"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "fat", "fat 4 %", "price peas 3", "price 3/lb", "available peas", "max 3 %", "out", "fat min"
            })
    void whatIsNoneOfTheFormsIsNoSetting(String text) {
        assertThat(Setting.of(text)).isEmpty();
    }
}
