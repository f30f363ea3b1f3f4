package panade.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers and units as cooks write them. */
class SpellingTest {
    @ParameterizedTest
    @ValueSource(strings = {"lb", "lbs", "Lb", "LBS", "lbs.", "pound", "Pounds", "POUND"})
    void a_pound_is_a_pound_however_it_is_written(String unit) {
        assertThat(Unit.find(unit)).contains(Unit.POUND.symbol().equals(unit) ? Unit.POUND : Unit.of("lb"));
        assertThat(Quantity.parse("20 " + unit).orElseThrow().base()).isEqualTo(Decimal.of("9.0718474"));
        assertThat(UnitPrice.perKg("4.5359237/" + unit)).contains(Decimal.of("10"));
    }

    @ParameterizedTest
    @CsvSource({
        "oz, 0.028349523125",
        "Ounces, 0.028349523125",
        "G, 0.001",
        "grams, 0.001",
        "KG, 1",
        "kilo, 1",
        "Kilos, 1",
        "kilograms, 1",
        "mg, 0.000001",
        "t, 1000"
    })
    void other_masses_are_read_in_any_case_and_number(String unit, String kilograms) {
        assertThat(Unit.find(unit).orElseThrow().factor()).isEqualTo(Decimal.of(kilograms));
    }

    // 420 mg in 100 g are 4.2 g in 1 kg.
    @ParameterizedTest
    @ValueSource(strings = {"420 mg/100g", "420 mg/100 g", "420mg / 100 g", "0.42 %"})
    void a_share_may_have_blanks_in_its_unit(String text) {
        assertThat(Quantity.parse(text).orElseThrow().base()).isEqualTo(Decimal.of("0.0042"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MG/L", "pint", "lb/kg", "lbss", ""})
    void what_is_no_unit_stays_none(String unit) {
        assertThat(Unit.find(unit)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "68,5|Write it as \"68.5\".",
                "68,5 %|Write it as \"68.5 %\".",
                "1.234,5 kg|Write it as \"1234.5 kg\".",
                "1,234.5|Write it as \"1234.5\".",
                "1,234,567|Write it as \"1234567\".",
                "1.234.567|Write it as \"1234567\".",
                "1,234 g|Write it as \"1.234 g\", or as \"1234 g\" if that is meant.",
                "12,50/lb|Write it as \"12.50/lb\".",
                "$3.90/lb|Write it as \"3.90/lb\".",
                "3,90 \u20ac/kg|Write it as \"3.90/kg\".",
                "USD 3.90/lb|Write it as \"3.90/lb\".",
                "1'200.50|Write it as \"1200.50\".",
            })
    void a_number_written_in_another_way_is_written_out(String text, String advice) {
        assertThat(Spelling.advice(text)).contains(advice);
    }

    @ParameterizedTest
    @ValueSource(strings = {"68.5", "68.5 %", "3.90/lb", "much", "", "-", "12 furlongs"})
    void nothing_is_advised_where_the_number_is_not_what_is_wrong(String text) {
        assertThat(Spelling.advice(text)).isEmpty();
    }

    @Test
    void a_currency_sign_is_read_where_it_is_that_of_the_prices() {
        assertThat(UnitPrice.perKg("$4.5359237/lb", "USD")).contains(Decimal.of("10"));
        assertThat(UnitPrice.perKg("10 \u20ac/kg", "EUR")).contains(Decimal.of("10"));
        assertThat(UnitPrice.perKg("EUR 10/kg", "EUR")).contains(Decimal.of("10"));
        assertThat(UnitPrice.perKg("$10/kg", "EUR")).isEmpty();
        assertThat(UnitPrice.perKg("$10/kg", "")).isEmpty();
        assertThat(UnitPrice.perKg("CHF 10/kg", "EUR")).isEmpty();
    }

    @Test
    void a_text_without_end_is_no_quantity() {
        assertThat(Quantity.parse("1" + " ".repeat(1_000_000) + "kg")).isEmpty();
        assertThat(Quantity.parse(" ".repeat(1_000_000))).isEmpty();
        assertThat(Decimal.parse("1".repeat(1_000_000))).isEmpty();
    }
}
