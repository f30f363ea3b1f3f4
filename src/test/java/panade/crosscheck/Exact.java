package panade.crosscheck;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Arithmetic on fractions that owes nothing to the code under test. */
final class Exact {
    private Exact() {}

    static BigFraction of(BigDecimal decimal) {
        var plain = decimal.setScale(Math.max(0, decimal.scale()));
        return BigFraction.of(plain.unscaledValue(), BigInteger.TEN.pow(plain.scale()));
    }

    static BigFraction times(List<BigFraction> form, List<BigFraction> shares) {
        return IntStream.range(0, form.size())
                .mapToObj(i -> form.get(i).multiply(shares.get(i)))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    static List<BigFraction> scaled(List<BigFraction> form, BigFraction factor) {
        return form.stream().map(factor::multiply).toList();
    }

    static List<BigFraction> both(List<BigFraction> one, List<BigFraction> other) {
        return IntStream.range(0, one.size())
                .mapToObj(i -> one.get(i).multiply(other.get(i)))
                .toList();
    }

    static List<BigFraction> sum(List<List<BigFraction>> forms) {
        return IntStream.range(0, forms.get(0).size())
                .mapToObj(i -> forms.stream().map(form -> form.get(i)).reduce(BigFraction.ZERO, BigFraction::add))
                .toList();
    }

    static List<BigFraction> zeros(int size) {
        return Collections.nCopies(size, BigFraction.ZERO);
    }

    /** A decimal of at most so many places, not above (FLOOR) or not below (CEILING) the fraction. */
    static BigDecimal decimal(BigFraction value, int places, RoundingMode mode) {
        var quotient = new BigDecimal(value.getNumerator())
                .divide(new BigDecimal(value.getDenominator()), places, mode)
                .stripTrailingZeros();
        return quotient.setScale(Math.max(0, quotient.scale()));
    }
}
