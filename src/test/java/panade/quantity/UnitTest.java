package panade.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {
    /** NIST Special Publication 811 (2008), appendix B.8: exact factors to kilograms, printed there in bold. */
    @ParameterizedTest(name = "1 {0} is {1} kg")
    @CsvSource({"lb, 0.45359237", "oz, 0.028349523125", "g, 0.001", "mg, 0.000001", "t, 1000", "kg, 1"})
    void masses_have_the_factors_of_nist_sp_811(String symbol, String kilograms) {
        assertThat(Unit.of(symbol).factor()).isEqualTo(Decimal.of(kilograms));
    }

    @Test
    void sixteen_ounces_are_exactly_a_pound() {
        assertThat(Unit.of("oz").factor().multiply(16)).isEqualTo(Unit.POUND.factor());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u00b5g", "\u03bcg", "ug", "mcg"})
    void micrograms_may_be_written_four_ways(String symbol) {
        assertThat(Unit.of(symbol).factor()).isEqualTo(Decimal.of("1e-9"));
    }

    @ParameterizedTest(name = "{0} is {1} of the whole")
    @CsvSource({
        "%, 0.01",
        "g/g, 1",
        "g/100g, 0.01",
        "mg/100g, 0.00001",
        "mg/g, 0.001",
        "g/kg, 0.001",
        "mg/kg, 0.000001",
        "ppm, 0.000001"
    })
    void shares_are_fractions_of_the_whole(String symbol, String share) {
        assertThat(Unit.of(symbol).factor()).isEqualTo(Decimal.of(share));
    }

    @Test
    void a_trait_unit_of_its_own_measures_only_like_itself() {
        var chew = Unit.declared("chews");
        assertThat(chew.measuresLike(Unit.declared("chews"))).isTrue();
        assertThat(chew.measuresLike(Unit.declared("bites"))).isFalse();
        assertThat(chew.measuresLike(Unit.NUMBER)).isFalse();
    }

    @Test
    void a_quantity_keeps_its_words_and_its_exact_value() {
        var quantity = Quantity.parse("420 mg/100g").orElseThrow();
        assertThat(quantity.base()).isEqualTo(Decimal.of("0.0042"));
        assertThat(quantity.number()).isEqualTo(Decimal.of("420"));
        assertThat(quantity.text()).isEqualTo("420 mg/100g");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e999999999", "NaN", "0x10", "1,5", "", "--1", "1e-999999999"})
    void what_is_no_plain_decimal_is_no_number(String text) {
        assertThat(Decimal.parse(text)).isEmpty();
    }
}
