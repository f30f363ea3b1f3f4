package panade.certify.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Certificate;
import panade.certify.Certifier;
import panade.certify.Verdict.Optimum;
import panade.certify.simplex.Cells;
import panade.certify.simplex.Dictionary;
import panade.certify.simplex.ParametricSimplex;
import panade.model.LinearForm;
import panade.model.LinearModel;

/**
 * Where something unused comes in as its price falls, read off the reduced costs of the optimal dictionary without a
 * pivot. That is exact while the optimum is not degenerate where it comes in; otherwise nothing is told here.
 */
final class Entering {
    private final Dictionary dictionary;
    private final LinearForm weights;
    /** The place of the column that comes in first, and the line that it drives out. */
    private final int place;

    private final int line;

    private Entering(Dictionary dictionary, LinearForm weights, int place, int line) {
        this.dictionary = dictionary;
        this.weights = weights;
        this.place = place;
        this.line = line;
    }

    /**
     * The entrance of some columns.
     *
     * @param weights by column, what one unit of the price adds to its cost, positive
     * @param own columns that must be out of the basis: all of the ingredient
     */
    static Optional<Entering> of(Optimum optimum, LinearForm weights, Set<Integer> own) {
        return optimum.pivoting(dictionary -> of(dictionary, weights, own));
    }

    private static Optional<Entering> of(Dictionary dictionary, LinearForm weights, Set<Integer> own) {
        int place = firstPlace(dictionary, weights, own);
        int line = place < 0 ? -1 : ParametricSimplex.leaving(dictionary, place);
        if (line < 0 || dictionary.constants().sign(line) == 0) {
            return Optional.empty();
        }
        var entering = new Entering(dictionary, weights, place, line);
        return entering.goesOn() ? Optional.empty() : Optional.of(entering);
    }

    /** The place that costs nothing first; -1 where two do at once, or one of the ingredient's columns is basic. */
    private static int firstPlace(Dictionary dictionary, LinearForm weights, Set<Integer> own) {
        if (own.stream().anyMatch(column -> dictionary.placeOf(column) < 0)) {
            return -1;
        }
        int best = -1;
        BigFraction least = null;
        boolean tied = false;
        for (var each : weights.coefficients().entrySet()) {
            int candidate = dictionary.placeOf(each.getKey());
            var by = dictionary.prices().value(candidate).divide(each.getValue());
            int order = least == null ? -1 : by.compareTo(least);
            tied = order == 0 || (tied && order > 0);
            best = order < 0 ? candidate : best;
            least = order < 0 ? by : least;
        }
        return tied ? -1 : best;
    }

    /** Whether more might come in at the same price: something else costs nothing and would make room. */
    private boolean goesOn() {
        return IntStream.range(0, dictionary.columns())
                .filter(k -> k != place
                        && !dictionary.locked(dictionary.nonbasic(k))
                        && dictionary.prices().sign(k) == 0)
                .anyMatch(k -> drivenOut() > 1 || dictionary.line(line).sign(k) > 0);
    }

    /** How many lines reach zero together. */
    private int drivenOut() {
        var column = dictionary.column(place);
        int count = 0;
        for (int i = 0; i < dictionary.rows(); i++) {
            boolean falls = column.sign(i) < 0;
            count += falls && isAsSoon(column, i) ? 1 : 0;
        }
        return count;
    }

    private boolean isAsSoon(Cells column, int i) {
        var constants = dictionary.constants();
        var own = constants.number(i).multiply(column.number(line));
        var first = constants.number(line).multiply(column.number(i));
        return own.equals(first);
    }

    /** How far the price falls before it comes in. */
    BigFraction by() {
        return reducedCost(place).divide(weight(place));
    }

    private BigFraction weight(int k) {
        return weights.at(dictionary.nonbasic(k));
    }

    private BigFraction reducedCost(int k) {
        return dictionary.prices().value(k);
    }

    /** The point just below that price. */
    List<BigFraction> after() {
        var column = dictionary.column(place);
        var constants = dictionary.constants();
        var amount = constants.value(line).divide(column.value(line).negate());
        var point = new ArrayList<>(dictionary.point());
        for (int i = 0; i < dictionary.rows(); i++) {
            if (dictionary.basic(i) < dictionary.columns()) {
                var rise = column.value(i).multiply(amount);
                point.set(dictionary.basic(i), constants.value(i).add(rise));
            }
        }
        point.set(dictionary.nonbasic(place), amount);
        return point;
    }

    /**
     * Checks from the model alone that nothing comes in before, by the multipliers of the optimum, and that the point
     * beyond costs the same at that very price.
     */
    static boolean provesEntrance(Optimum optimum, LinearForm weights, BigFraction by, List<BigFraction> after) {
        var model = optimum.model();
        var fallen = BigFraction.ZERO;
        for (var each : weights.coefficients().entrySet()) {
            var fall = each.getValue().multiply(by);
            if (margin(model, optimum.multipliers(), each.getKey()).compareTo(fall) < 0) {
                return false;
            }
            fallen = fallen.add(fall.multiply(after.get(each.getKey())));
        }
        return Certificate.isFeasible(model, after)
                && model.costAt(after).subtract(fallen).equals(model.costAt(optimum.point()));
    }

    private static BigFraction margin(LinearModel model, List<BigFraction> multipliers, int column) {
        var margin = model.columns().get(column).cost();
        for (int i = 0; i < multipliers.size(); i++) {
            if (multipliers.get(i).signum() != 0) {
                margin = margin.subtract(
                        multipliers.get(i).multiply(model.rows().get(i).form().at(column)));
            }
        }
        return margin;
    }

    /** The same where the multipliers of the optimum do not prove it, by those of a dictionary beyond. */
    static boolean provesEntrance(
            Optimum optimum, LinearForm weights, BigFraction by, List<BigFraction> after, Dictionary beyond) {
        var costs = optimum.model()
                .costs()
                .minus(weights.scaled(by))
                .dense(optimum.model().columns().size());
        var model = optimum.model().withCosts(costs);
        var multipliers = Certifier.multipliers(model, beyond, costs);
        return Certificate.provesOptimal(model, optimum.point(), multipliers)
                && Certificate.provesOptimal(model, after, multipliers);
    }
}
