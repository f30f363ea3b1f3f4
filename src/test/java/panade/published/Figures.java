package panade.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import tools.jackson.databind.JsonNode;

/** Comparison of printed figures with expected ones. */
final class Figures {

    static final BigDecimal MILLIONTH = new BigDecimal("1e-6");
    static final BigDecimal BILLIONTH = new BigDecimal("1e-9");
    static final BigDecimal HUNDRED_THOUSANDTH = new BigDecimal("1e-5");

    private Figures() {}

    /** Within the given part of the expected figure; an expected nought must be exactly nought. */
    static void assertClose(String what, JsonNode actual, BigDecimal expected, BigDecimal part) {
        assertThat(actual.isNumber())
                .as("%s is a number: %s, expected %s", what, actual, expected)
                .isTrue();
        assertClose(what, actual.decimalValue(), expected, part);
    }

    static void assertClose(String what, BigDecimal actual, BigDecimal expected, BigDecimal part) {
        assertThat(actual.subtract(expected).abs())
                .as("%s is %s, expected %s", what, actual, expected)
                .isLessThanOrEqualTo(expected.abs().multiply(part));
    }

    /** An expected null is asserted as such: a figure must not stand where none exists. */
    static void assertCloseOrNull(String what, JsonNode actual, JsonNode expected, BigDecimal part) {
        if (expected.isNull()) {
            assertThat(actual.isNull()).as("%s is null: %s", what, actual).isTrue();
        } else {
            assertClose(what, actual, expected.decimalValue(), part);
        }
    }

    static void assertRoundsTo(String what, BigDecimal actual, BigDecimal printed) {
        BigDecimal halfOfTheLastDigit =
                BigDecimal.ONE.movePointLeft(printed.scale()).divide(BigDecimal.valueOf(2));
        assertThat(actual.subtract(printed).abs())
                .as("%s is %s, printed as %s", what, actual, printed)
                .isLessThanOrEqualTo(halfOfTheLastDigit);
    }

    static BigDecimal divide(BigDecimal dividend, BigDecimal divisor) {
        return dividend.divide(divisor, MathContext.DECIMAL128);
    }
}
