package panade.certify.simplex;

import java.math.BigInteger;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Clearing fractions. */
public final class Integers {
    private Integers() {}

    /** The smallest positive factor that makes all values whole numbers without a common divisor. */
    public static BigFraction scaleOf(List<BigFraction> values) {
        var multiple = BigInteger.ONE;
        var divisor = BigInteger.ZERO;
        for (var value : values) {
            var denominator = value.getDenominator().abs();
            multiple = multiple.divide(multiple.gcd(denominator)).multiply(denominator);
        }
        for (var value : values) {
            divisor = divisor.gcd(value.multiply(multiple).getNumerator());
        }
        return BigFraction.of(multiple, divisor.signum() == 0 ? BigInteger.ONE : divisor);
    }

    /** A value times a multiple of its denominator. */
    public static BigInteger times(BigFraction value, BigInteger multiple) {
        return value.getNumerator().multiply(multiple.divide(value.getDenominator()));
    }

    /** The values times the factor, which makes them whole; a fraction's sign may sit in its denominator. */
    public static BigInteger[] whole(List<BigFraction> values, BigFraction factor) {
        return values.stream()
                .map(value -> value.multiply(factor))
                .map(value -> value.getNumerator().divide(value.getDenominator()))
                .toArray(BigInteger[]::new);
    }
}
