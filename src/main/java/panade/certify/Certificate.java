package panade.certify;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.Integers;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.WholeForm;
import panade.model.WholePoint;

/**
 * Checks claims about a model from the model alone, exactly and with no tolerance, by the theorem of duality (Dantzig,
 * "Linear Programming and Extensions", 1963, ch. 6) and Farkas' lemma. It knows nothing of how a claim was reached.
 */
public final class Certificate {
    private Certificate() {}

    /** Whether the point meets every row and the multipliers prove that nothing costs less. */
    public static boolean provesOptimal(LinearModel model, List<BigFraction> point, List<BigFraction> multipliers) {
        return isFeasible(model, point)
                && provesBound(model, multipliers)
                && model.costAt(point).equals(rightSides(model, multipliers));
    }

    /** Whether the multipliers prove that no point costs less than the right sides they add up to. */
    static boolean provesBound(LinearModel model, List<BigFraction> multipliers) {
        return signsAreRight(model, multipliers) && noColumnGains(model, multipliers, BigFraction.ONE);
    }

    /** Whether the multipliers add the rows up to a contradiction, so that no point meets them all. */
    static boolean provesImpossible(LinearModel model, List<BigFraction> multipliers) {
        return signsAreRight(model, multipliers)
                && noColumnGains(model, multipliers, BigFraction.ZERO)
                && rightSides(model, multipliers).signum() > 0;
    }

    /** Whether a point meets every row and is nowhere negative. */
    public static boolean isFeasible(LinearModel model, List<BigFraction> point) {
        return point.stream().allMatch(value -> value.signum() >= 0) && rowsHold(model, point);
    }

    private static boolean rowsHold(LinearModel model, List<BigFraction> point) {
        var whole = WholePoint.of(point);
        return model.rows().stream().allMatch(row -> holds(row, whole.compare(row.form(), row.right())));
    }

    private static boolean holds(Row row, int order) {
        return row.sense() == Sense.AT_LEAST ? order >= 0 : row.sense() == Sense.AT_MOST ? order <= 0 : order == 0;
    }

    private static boolean signsAreRight(LinearModel model, List<BigFraction> multipliers) {
        for (int i = 0; i < multipliers.size(); i++) {
            var sense = model.rows().get(i).sense();
            int sign = multipliers.get(i).signum();
            if ((sense == Sense.AT_LEAST && sign < 0) || (sense == Sense.AT_MOST && sign > 0)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether {@code weight * cost - multipliers . column} is nowhere negative. All is brought to whole numbers first,
     * for fractions of a hundred digits are slow to add.
     */
    private static boolean noColumnGains(LinearModel model, List<BigFraction> multipliers, BigFraction weight) {
        var common = WholeForm.commonDenominator(multipliers);
        var gained = new BigInteger[model.columns().size()];
        Arrays.fill(gained, BigInteger.ZERO);
        var rowScale = commonDenominator(model, multipliers);
        for (int i = 0; i < multipliers.size(); i++) {
            if (multipliers.get(i).signum() != 0) {
                var form = model.rows().get(i).form().whole();
                var multiplier =
                        Integers.times(multipliers.get(i), common).multiply(rowScale.divide(form.denominator()));
                for (int k = 0; k < form.size(); k++) {
                    int j = form.column(k);
                    gained[j] = gained[j].add(multiplier.multiply(form.value(k)));
                }
            }
        }
        var scale = common.multiply(rowScale);
        for (int j = 0; j < gained.length; j++) {
            var cost = model.columns().get(j).cost().multiply(weight);
            var bottom = cost.getDenominator();
            var left = cost.getNumerator().multiply(scale).subtract(gained[j].multiply(bottom));
            if (left.signum() * bottom.signum() < 0) {
                return false;
            }
        }
        return true;
    }

    private static BigInteger commonDenominator(LinearModel model, List<BigFraction> multipliers) {
        var common = BigInteger.ONE;
        for (int i = 0; i < multipliers.size(); i++) {
            if (multipliers.get(i).signum() != 0) {
                var own = model.rows().get(i).form().whole().denominator();
                common = common.divide(common.gcd(own)).multiply(own);
            }
        }
        return common;
    }

    /** The right sides times their multipliers. */
    static BigFraction rightSides(LinearModel model, List<BigFraction> multipliers) {
        var total = BigFraction.ZERO;
        for (int i = 0; i < multipliers.size(); i++) {
            if (multipliers.get(i).signum() != 0) {
                total = total.add(model.rows().get(i).right().multiply(multipliers.get(i)));
            }
        }
        return total;
    }
}
