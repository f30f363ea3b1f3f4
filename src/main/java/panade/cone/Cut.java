package panade.cone;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Cone;
import panade.model.LinearForm;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.quantity.Decimal;

/**
 * A row that every point of a cone meets: the column is at least a weighted sum of the cone's forms. By the inequality
 * of Cauchy and Schwarz that holds for all weights g with {@code sum g^2 / weight <= 1}, which is a check in whole
 * fractions without a root (supporting hyperplanes: Kelley, Journal of SIAM 8, 1960).
 *
 * @param cone what it follows from
 * @param weights one for each part of the cone
 */
public record Cut(Cone cone, List<BigFraction> weights) {
    /**
     * Digits of a weight. More would make cuts beside each other differ by less than a solver in floating point can
     * see, and the fractions longer.
     */
    private static final int DIGITS = 8;

    private static final int NEAR = 12;

    public Cut {
        weights = List.copyOf(weights);
    }

    /** The cut that touches the cone beside a point, short of it by the rounding of its weights towards nothing. */
    static Cut at(Cone cone, List<BigFraction> point) {
        var near = new ArrayList<BigFraction>();
        var square = BigFraction.ZERO;
        for (var part : cone.parts()) {
            var value = Decimal.of(Decimal.significant(part.form().dot(point), NEAR));
            near.add(value);
            square = square.add(value.multiply(value).multiply(part.weight()));
        }
        var root = Roots.above(square);
        var weights = new ArrayList<BigFraction>();
        for (int k = 0; k < near.size(); k++) {
            var weight = near.get(k).multiply(cone.parts().get(k).weight());
            weights.add(root.signum() == 0 ? BigFraction.ZERO : towardsNothing(weight.divide(root)));
        }
        return new Cut(cone, weights);
    }

    private static BigFraction towardsNothing(BigFraction weight) {
        return Decimal.of(Decimal.significant(weight, DIGITS, RoundingMode.DOWN));
    }

    /** Whether every point of the cone meets it, checked in fractions. */
    public boolean isValid() {
        var sum = BigFraction.ZERO;
        for (int k = 0; k < weights.size(); k++) {
            var weight = weights.get(k);
            sum = sum.add(weight.multiply(weight).divide(cone.parts().get(k).weight()));
        }
        return sum.compareTo(BigFraction.ONE) <= 0;
    }

    /**
     * The row, by which the column stands off a little further than the cone asks for where there is a margin.
     *
     * @param margin zero for the cut itself
     */
    public Row row(String name, BigFraction margin) {
        var form = LinearForm.of(cone.column(), BigFraction.ONE);
        for (int k = 0; k < weights.size(); k++) {
            form = form.minus(cone.parts().get(k).form().scaled(weights.get(k)));
        }
        return new Row(name, form, Sense.AT_LEAST, margin);
    }
}
