package panade.model;

import java.math.BigInteger;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** A point in whole numbers over one denominator, for measuring many forms at it. */
public final class WholePoint {
    private final List<BigInteger> amounts;
    private final BigInteger denominator;

    private WholePoint(List<BigInteger> amounts, BigInteger denominator) {
        this.amounts = amounts;
        this.denominator = denominator;
    }

    /** The point of amounts by column. */
    public static WholePoint of(List<BigFraction> point) {
        var multiple = WholeForm.commonDenominator(point);
        return new WholePoint(
                point.stream()
                        .map(amount -> amount.signum() == 0
                                ? BigInteger.ZERO
                                : amount.getNumerator().multiply(multiple.divide(amount.getDenominator())))
                        .toList(),
                multiple);
    }

    /** The value of a form at the point. */
    public BigFraction dot(LinearForm form) {
        return BigFraction.of(
                sum(form.whole()), denominator.multiply(form.whole().denominator()));
    }

    /** How the value of a form compares with a number: -1, 0 or 1; nothing is brought to lowest terms for it. */
    public int compare(LinearForm form, BigFraction number) {
        var bottom = number.getDenominator();
        var left = sum(form.whole()).multiply(bottom);
        var right = number.getNumerator()
                .multiply(denominator)
                .multiply(form.whole().denominator());
        return left.compareTo(right) * bottom.signum();
    }

    private BigInteger sum(WholeForm whole) {
        var total = BigInteger.ZERO;
        for (int k = 0; k < whole.size(); k++) {
            var amount = amounts.get(whole.column(k));
            if (amount.signum() != 0) {
                total = total.add(amount.multiply(whole.value(k)));
            }
        }
        return total;
    }
}
