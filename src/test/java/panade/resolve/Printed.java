package panade.resolve;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;

/** Printed numbers against exact ones. */
final class Printed {
    /** What fifteen significant digits leave open, as a part of the number. */
    private static final BigFraction ROUNDING = PlainReading.of(new BigDecimal("6e-15"));
    /** What they leave open where a figure was worked out from several of them. */
    static final BigFraction NEAR = PlainReading.of(new BigDecimal("1e-10"));

    private Printed() {}

    static BigFraction number(JsonNode node) {
        return PlainReading.of(node.decimalValue());
    }

    /** Whether a number is printed as exactly as fifteen digits allow. */
    static boolean is(JsonNode node, BigFraction exact) {
        return node.isNumber() && within(number(node), exact, ROUNDING);
    }

    static boolean isNear(BigFraction one, BigFraction other) {
        return within(one, other, NEAR)
                || one.subtract(other).abs().subtract(NEAR).signum() <= 0;
    }

    static boolean within(BigFraction one, BigFraction other, BigFraction part) {
        return one.subtract(other).abs().subtract(other.abs().multiply(part)).signum() <= 0;
    }

    static String text(BigFraction value) {
        return new BigDecimal(value.getNumerator())
                .divide(new BigDecimal(value.getDenominator()), new MathContext(17, RoundingMode.HALF_EVEN))
                .toPlainString();
    }
}
