package panade.certify.simplex;

import java.math.BigInteger;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.WholeForm;

/**
 * A line or a column of a dictionary: whole numbers over one positive denominator of its own. Ratio tests compare two
 * of them by cross-multiplication, so that the denominators never matter.
 */
public final class Cells {
    private final BigInteger[] numbers;
    private final BigInteger denominator;

    /** Whole numbers over a denominator above zero; not copied. */
    Cells(BigInteger[] numbers, BigInteger denominator) {
        this.numbers = numbers;
        this.denominator = denominator;
    }

    static Cells of(List<BigFraction> values) {
        var common = WholeForm.commonDenominator(values);
        return new Cells(
                values.stream().map(value -> Integers.times(value, common)).toArray(BigInteger[]::new), common);
    }

    /** All cells times a factor above zero. */
    Cells times(BigFraction factor) {
        if (factor.equals(BigFraction.ONE)) {
            return this;
        }
        var upper = factor.getNumerator().abs();
        var products = new BigInteger[numbers.length];
        for (int k = 0; k < numbers.length; k++) {
            products[k] = numbers[k].multiply(upper);
        }
        return new Cells(products, denominator.multiply(factor.getDenominator().abs()));
    }

    /** -1, 0 or 1. */
    public int sign(int k) {
        return numbers[k].signum();
    }

    /** A cell times the common denominator. */
    public BigInteger number(int k) {
        return numbers[k];
    }

    /** A cell. */
    public BigFraction value(int k) {
        return numbers[k].signum() == 0 ? BigFraction.ZERO : BigFraction.of(numbers[k], denominator);
    }
}
