package panade.certify.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Certificate;
import panade.certify.Certifier;
import panade.certify.Verdict.Optimum;
import panade.certify.simplex.Integers;
import panade.certify.simplex.ParametricSimplex;
import panade.certify.simplex.Tableau;
import panade.model.LinearForm;
import panade.model.LinearModel;

/**
 * Where something unused comes in as its price falls, read off the reduced costs of the optimal dictionary without a
 * pivot. That is exact while the optimum is not degenerate where it comes in; otherwise nothing is told here.
 */
final class Entering {
    private final Tableau tableau;
    private final LinearForm weights;
    /** The place of the column that comes in first, and the line that it drives out. */
    private final int place;

    private final int line;

    private Entering(Tableau tableau, LinearForm weights, int place, int line) {
        this.tableau = tableau;
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
        var tableau = optimum.tableau();
        int place = firstPlace(tableau, weights, own);
        int line = place < 0 ? -1 : ParametricSimplex.leaving(tableau, place);
        if (line < 0 || tableau.constant(line).signum() == 0) {
            return Optional.empty();
        }
        var entering = new Entering(tableau, weights, place, line);
        return entering.goesOn() ? Optional.empty() : Optional.of(entering);
    }

    /** The place that costs nothing first; -1 where two do at once, or one of the ingredient's columns is basic. */
    private static int firstPlace(Tableau tableau, LinearForm weights, Set<Integer> own) {
        if (own.stream().anyMatch(column -> tableau.placeOf(column) < 0)) {
            return -1;
        }
        int best = -1;
        BigFraction least = null;
        boolean tied = false;
        for (var each : weights.coefficients().entrySet()) {
            int candidate = tableau.placeOf(each.getKey());
            var by = tableau.money(tableau.at(tableau.objective(), candidate)).divide(each.getValue());
            int order = least == null ? -1 : by.compareTo(least);
            tied = order == 0 || (tied && order > 0);
            best = order < 0 ? candidate : best;
            least = order < 0 ? by : least;
        }
        return tied ? -1 : best;
    }

    /** Whether more might come in at the same price: something else costs nothing and would make room. */
    private boolean goesOn() {
        boolean several = drivenOut() > 1;
        for (int k = 0; k < tableau.columns(); k++) {
            boolean free = k != place
                    && !tableau.locked(tableau.nonbasic(k))
                    && tableau.at(tableau.objective(), k).signum() == 0;
            if (free && (several || tableau.at(line, k).signum() > 0)) {
                return true;
            }
        }
        return false;
    }

    /** How many lines reach zero together. */
    private int drivenOut() {
        int count = 0;
        for (int i = 0; i < tableau.rows(); i++) {
            boolean falls = tableau.at(i, place).signum() < 0;
            count += falls && isAsSoon(i) ? 1 : 0;
        }
        return count;
    }

    private boolean isAsSoon(int i) {
        var own = tableau.constant(i).multiply(tableau.at(line, place));
        var first = tableau.constant(line).multiply(tableau.at(i, place));
        return own.equals(first);
    }

    /** How far the price falls before it comes in. */
    BigFraction by() {
        return reducedCost(place).divide(weight(place));
    }

    private BigFraction weight(int k) {
        return weights.at(tableau.nonbasic(k));
    }

    private BigFraction reducedCost(int k) {
        return tableau.money(tableau.at(tableau.objective(), k));
    }

    /** The point just below that price. */
    List<BigFraction> after() {
        var amount =
                BigFraction.of(tableau.constant(line), tableau.at(line, place).negate());
        var point = new ArrayList<>(tableau.point());
        for (int i = 0; i < tableau.rows(); i++) {
            if (tableau.basic(i) < tableau.columns()) {
                var rise = tableau.value(tableau.at(i, place)).multiply(amount);
                point.set(tableau.basic(i), tableau.value(tableau.constant(i)).add(rise));
            }
        }
        point.set(tableau.nonbasic(place), amount);
        return point;
    }

    /** Whether that point is still the best when the price has fallen so far in all. */
    boolean stays(BigFraction fallen) {
        var gain = fallen.multiply(weight(place)).subtract(reducedCost(place));
        var pivot = tableau.at(line, place);
        for (int k = 0; k < tableau.columns(); k++) {
            int side = tableau.at(line, k).signum() * pivot.signum();
            boolean own = weight(k).signum() != 0;
            if (k == place || tableau.locked(tableau.nonbasic(k)) || (side >= 0 && !own)) {
                continue;
            }
            var price = reducedCost(k)
                    .add(gain.multiply(BigFraction.of(tableau.at(line, k), pivot)))
                    .subtract(fallen.multiply(weight(k)));
            if (price.signum() < 0) {
                return false;
            }
        }
        return true;
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
            Optimum optimum, LinearForm weights, BigFraction by, List<BigFraction> after, Tableau beyond) {
        var costs = optimum.model()
                .costs()
                .minus(weights.scaled(by))
                .dense(optimum.model().columns().size());
        var model = optimum.model().withCosts(costs);
        var scale = Integers.scaleOf(costs);
        var dictionary = beyond.copy();
        dictionary.setObjective(Integers.whole(costs, scale));
        var multipliers = Certifier.multipliers(model, dictionary, scale);
        return Certificate.provesOptimal(model, optimum.point(), multipliers)
                && Certificate.provesOptimal(model, after, multipliers);
    }
}
