package panade.certify;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/**
 * Checks claims about a model from the model alone, exactly and with no tolerance, by the theorem of duality (Dantzig,
 * "Linear Programming and Extensions", 1963, ch. 6) and Farkas' lemma. It knows nothing of how a claim was reached.
 */
final class Certificate {
    private Certificate() {}

    /** Whether the point meets every row and the multipliers prove that nothing costs less. */
    static boolean provesOptimal(LinearModel model, List<BigFraction> point, List<BigFraction> multipliers) {
        return isFeasible(model, point)
                && signsAreRight(model, multipliers)
                && noColumnGains(model, multipliers, BigFraction.ONE)
                && model.costAt(point).equals(rightSides(model, multipliers));
    }

    /** Whether the multipliers add the rows up to a contradiction, so that no point meets them all. */
    static boolean provesImpossible(LinearModel model, List<BigFraction> multipliers) {
        return signsAreRight(model, multipliers)
                && noColumnGains(model, multipliers, BigFraction.ZERO)
                && rightSides(model, multipliers).signum() > 0;
    }

    /** Whether a point meets every row and is nowhere negative. */
    static boolean isFeasible(LinearModel model, List<BigFraction> point) {
        return point.stream().allMatch(value -> value.signum() >= 0)
                && model.rows().stream().allMatch(row -> holds(row, row.activity(point)));
    }

    private static boolean holds(Row row, BigFraction activity) {
        // subtraction, because BigFraction.compareTo (Commons Numbers 1.2) errs when both sides are negative
        int order = activity.subtract(row.right()).signum();
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

    /** Whether {@code weight * cost - multipliers . column} is nowhere negative. */
    private static boolean noColumnGains(LinearModel model, List<BigFraction> multipliers, BigFraction weight) {
        var reduced = new BigFraction[model.columns().size()];
        for (int j = 0; j < reduced.length; j++) {
            reduced[j] = model.columns().get(j).cost().multiply(weight);
        }
        for (int i = 0; i < multipliers.size(); i++) {
            var multiplier = multipliers.get(i);
            if (multiplier.signum() != 0) {
                model.rows()
                        .get(i)
                        .coefficients()
                        .forEach(
                                (j, coefficient) -> reduced[j] = reduced[j].subtract(multiplier.multiply(coefficient)));
            }
        }
        return List.of(reduced).stream().allMatch(value -> value.signum() >= 0);
    }

    private static BigFraction rightSides(LinearModel model, List<BigFraction> multipliers) {
        var total = BigFraction.ZERO;
        for (int i = 0; i < multipliers.size(); i++) {
            total = total.add(model.rows().get(i).right().multiply(multipliers.get(i)));
        }
        return total;
    }
}
