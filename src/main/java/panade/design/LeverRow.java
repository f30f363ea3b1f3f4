package panade.design;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.WholeForm;

/**
 * A row over levers: their weighted sum, and the number that it is held against.
 *
 * @param weights one for each lever
 */
public record LeverRow(List<BigFraction> weights, BigFraction number) {
    public LeverRow {
        weights = List.copyOf(weights);
    }

    /** The same row with every sign turned: what was a least is a most. */
    public LeverRow negated() {
        return new LeverRow(weights.stream().map(BigFraction::negate).toList(), number.negate());
    }

    /** By how much the sum exceeds the number at a point. */
    public BigFraction excess(List<BigFraction> point) {
        var excess = number.negate();
        for (int i = 0; i < weights.size(); i++) {
            excess = excess.add(weights.get(i).multiply(point.get(i)));
        }
        return excess;
    }

    /** The weights, then the number negated, multiplied by what makes all of them whole. */
    List<BigInteger> homogeneous() {
        var all = new ArrayList<>(weights);
        all.add(number.negate());
        return whole(all);
    }

    /** Values multiplied by what makes all of them whole. */
    static List<BigInteger> whole(List<BigFraction> values) {
        var common = WholeForm.commonDenominator(values);
        return values.stream()
                .map(value -> value.getNumerator().multiply(common.divide(value.getDenominator())))
                .toList();
    }
}
