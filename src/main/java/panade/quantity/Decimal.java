package panade.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Decimals as people write them, to and from exact fractions. Nothing here passes through binary floating point. */
public final class Decimal {
    /** Longest exponent accepted; a larger one is a slip, and would fill the memory. */
    private static final int LARGEST_EXPONENT = 60;

    /** Longest text accepted: a number that somebody wrote has fewer digits, and long ones take long to read. */
    private static final int LONGEST = 1_000;

    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,9})?");

    private Decimal() {}

    /** The exact value of a decimal such as {@code 0.350} or {@code 12e-3}; empty when the text is not one. */
    public static Optional<BigFraction> parse(String text) {
        if (text.length() > LONGEST || !PLAIN.matcher(text).matches()) {
            return Optional.empty();
        }
        var decimal = new BigDecimal(text);
        long magnitude = (long) decimal.precision() - decimal.scale();
        boolean sensible = Math.abs(magnitude) <= LARGEST_EXPONENT || decimal.signum() == 0;
        return sensible && Math.abs((long) decimal.scale()) <= 1_000 ? Optional.of(of(decimal)) : Optional.empty();
    }

    /** The exact value of a decimal. */
    public static BigFraction of(BigDecimal decimal) {
        var unscaled = decimal.unscaledValue();
        return decimal.scale() >= 0
                ? BigFraction.of(unscaled, BigInteger.TEN.pow(decimal.scale()))
                : BigFraction.of(unscaled.multiply(BigInteger.TEN.pow(-decimal.scale())));
    }

    /** The exact value of a decimal literal that is known to be one. */
    public static BigFraction of(String literal) {
        return of(new BigDecimal(literal));
    }

    /** The nearest decimal with that many digits after the point, halves to even. */
    public static BigDecimal round(BigFraction value, int places) {
        return value.bigDecimalValue(places, RoundingMode.HALF_EVEN);
    }

    /** The nearest decimal with that many significant digits, without trailing zeros. */
    public static BigDecimal significant(BigFraction value, int digits) {
        return significant(value, digits, RoundingMode.HALF_EVEN);
    }

    /** The same rounded another way, such as down where what is said of a number fails just above it. */
    public static BigDecimal significant(BigFraction value, int digits, RoundingMode mode) {
        if (value.signum() == 0) {
            return BigDecimal.ZERO;
        }
        var context = new MathContext(digits, mode);
        var quotient = new BigDecimal(value.getNumerator()).divide(new BigDecimal(value.getDenominator()), context);
        var stripped = quotient.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped;
    }
}
