package panade.sheet.poi;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as spreadsheets store them and as they were typed. */
class TypedTest {
    /** 17 digits are what ECMA-376 workbooks hold for 0.07 and 1.1 (IEEE 754 binary64, printed to 17 digits). */
    @ParameterizedTest(name = "{0} was typed as {1}")
    @CsvSource({
        "0.1, 0.1",
        "7.0000000000000007E-2, 0.07",
        "1.1000000000000001, 1.1",
        "0.10000000000000001, 0.1",
        "1E-3, 0.001",
        "850, 850",
        "123456789012345, 123456789012345",
        "0, 0",
        // no spreadsheet's number: written out it would fill the memory
        "1e999999999, 1E+999999999",
        "-1e-999999999, -1E-999999999"
    })
    void a_number_comes_back_as_it_was_typed(String stored, String typed) {
        assertThat(Typed.number(stored)).isEqualTo(typed);
    }

    @Test
    void a_sum_that_is_not_three_tenths_is_not_made_to_be() {
        assertThat(Typed.number("0.30000000000000004")).isEqualTo("0.30000000000000004");
    }

    @Test
    void a_result_has_the_digits_that_a_spreadsheet_shows() {
        assertThat(Typed.computed("0.30000000000000004")).isEqualTo("0.3");
    }

    @Test
    void more_digits_than_binary_storage_writes_are_all_kept() {
        assertThat(Typed.number("0.1000000000000000055511151231257827"))
                .isEqualTo("0.1000000000000000055511151231257827");
    }

    @Test
    void whatIsLongerThanAnyNumberIsLeftAsItStands() {
        var stored = "9".repeat(1_000_000);
        assertThat(Typed.number(stored)).isSameAs(stored);
        assertThat(Typed.computed(stored)).isSameAs(stored);
        assertThat(Typed.computed("1e999999999")).isEqualTo("1E+999999999");
    }

    @Property
    void up_to_15_digits_survive_a_binary_number_written_with_17(
            @ForAll @LongRange(min = 1, max = 999_999_999_999_999L) long digits,
            @ForAll @IntRange(min = 0, max = 20) int places) {
        var typed = new BigDecimal(BigInteger.valueOf(digits), places);
        var stored = new BigDecimal(typed.doubleValue()).round(new MathContext(17));
        assertThat(new BigDecimal(Typed.number(stored.toString()))).isEqualByComparingTo(typed);
    }
}
