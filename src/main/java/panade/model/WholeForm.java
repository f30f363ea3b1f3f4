package panade.model;

import java.math.BigInteger;
import java.util.Collection;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A linear form in whole numbers over one denominator: sums of many terms are quick so, since no fraction has to be
 * brought to its lowest terms on the way.
 */
public final class WholeForm {
    private final int[] columns;
    private final List<BigInteger> values;
    private final BigInteger denominator;

    private WholeForm(int[] columns, List<BigInteger> values, BigInteger denominator) {
        this.columns = columns;
        this.values = values;
        this.denominator = denominator;
    }

    /** The form of coefficients, none zero, in ascending order of columns. */
    static WholeForm of(int[] columns, List<BigFraction> coefficients) {
        var multiple = commonDenominator(coefficients);
        var values = coefficients.stream()
                .map(value -> value.getNumerator().multiply(multiple.divide(value.getDenominator())))
                .toList();
        return new WholeForm(columns, values, multiple);
    }

    /** The least positive number that makes all values whole. */
    public static BigInteger commonDenominator(Collection<BigFraction> values) {
        var common = BigInteger.ONE;
        for (var value : values) {
            var own = value.getDenominator().abs();
            if (!own.equals(BigInteger.ONE) && common.mod(own).signum() != 0) {
                common = common.divide(common.gcd(own)).multiply(own);
            }
        }
        return common;
    }

    /** How many terms there are. */
    public int size() {
        return columns.length;
    }

    /** The column of a term. */
    public int column(int term) {
        return columns[term];
    }

    /** Its coefficient times the denominator. */
    public BigInteger value(int term) {
        return values.get(term);
    }

    /** The least positive number that makes all coefficients whole. */
    public BigInteger denominator() {
        return denominator;
    }
}
