package panade.certify.sensitivity;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.simplex.Dictionary;
import panade.certify.simplex.ParametricSimplex;
import panade.model.LinearForm;

/**
 * How far a ratio's number may move while the same bounds bind. The number multiplies an amount p in one row, so moving
 * it by k moves that row's slack by k p(x): with p written over the nonbasic variables, both the amounts and the prices
 * of the moved model are those of the dictionary over the common factor 1 - k p_r (Sherman and Morrison, Annals of
 * Mathematical Statistics 21, 1950), and each stays right up to a k of its own.
 */
final class RatioReach {
    /** Ties are settled by at most this many pivots; beyond, no reach is told. */
    private static final int MAX_PIVOTS = 60;

    private final Dictionary dictionary;
    private final int row;
    private final int sign;

    private RatioReach(Dictionary dictionary, int row, int sign) {
        this.dictionary = dictionary;
        this.row = row;
        this.sign = sign;
    }

    /**
     * The reach in units of the row per unit of p.
     *
     * @param dictionary of the optimum; pivoted on
     * @param sign which way the slack moves
     * @param weights p, by column
     * @return empty when there is no end, or ties could not be settled
     */
    static Optional<BigFraction> of(Dictionary dictionary, int row, int sign, LinearForm weights) {
        dictionary.setDirection(weights);
        return new RatioReach(dictionary, row, sign).reach();
    }

    private Optional<BigFraction> reach() {
        for (int step = 0; step < MAX_PIVOTS; step++) {
            dictionary.moveSlack(row, sign);
            if (!ParametricSimplex.trySettle(dictionary)) {
                return Optional.empty();
            }
            int tied = tiedPlace();
            if (tied < 0) {
                return settledReach();
            }
            int line = ParametricSimplex.leaving(dictionary, tied);
            if (line < 0) {
                return Optional.empty();
            }
            dictionary.pivot(line, tied);
        }
        return Optional.empty();
    }

    private Optional<BigFraction> settledReach() {
        boolean empty = dictionary.directionNow().signum() == 0;
        var amounts = empty ? pole() : amountsReach();
        var prices = pricesReach();
        if (amounts == null) {
            return Optional.ofNullable(prices);
        }
        return Optional.of(prices == null || amounts.compareTo(prices) < 0 ? amounts : prices);
    }

    /** The k at which an amount reaches zero; null when none does while p stays above zero. */
    private @Nullable BigFraction amountsReach() {
        int line = ParametricSimplex.limitingLine(dictionary);
        if (line < 0) {
            return null;
        }
        var moved = ParametricSimplex.limit(dictionary, line);
        var p = dictionary.directionNow().add(dictionary.parameterOfDirection().multiply(moved));
        return p.signum() > 0 ? moved.divide(p) : null;
    }

    /**
     * The k at which the common factor vanishes, where p is zero: no amount moves before, but from there on there may
     * be some of p, and the least cost may jump. Null when it never does.
     */
    private @Nullable BigFraction pole() {
        var growth = dictionary.parameterOfDirection();
        return growth.signum() > 0 ? growth.reciprocal() : null;
    }

    /** The k at which a price reaches zero; null when none does. */
    private @Nullable BigFraction pricesReach() {
        BigFraction least = null;
        for (int j = 0; j < dictionary.columns(); j++) {
            var fall = fall(j);
            if (fall.signum() > 0) {
                var k = dictionary.prices().value(j).divide(fall);
                least = least == null || k.compareTo(least) < 0 ? k : least;
            }
        }
        return least;
    }

    /** A place whose price is zero already and would fall. */
    private int tiedPlace() {
        for (int j = 0; j < dictionary.columns(); j++) {
            if (dictionary.prices().sign(j) == 0 && fall(j).signum() > 0) {
                return j;
            }
        }
        return -1;
    }

    /**
     * How fast the price at a place falls with k: d_j p_r - d_r p_j, the other way round for a slack that moves down.
     */
    private BigFraction fall(int j) {
        int place = dictionary.placeOf(dictionary.columns() + row);
        if (place < 0 || j == place || dictionary.locked(dictionary.nonbasic(j))) {
            return BigFraction.ZERO;
        }
        var prices = dictionary.prices();
        var directions = dictionary.directions();
        var own = prices.value(j).multiply(directions.value(place));
        var through = prices.value(place).multiply(directions.value(j));
        return own.subtract(through).multiply(dictionary.slackScale(row)).multiply(sign);
    }
}
