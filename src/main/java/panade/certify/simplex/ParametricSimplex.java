package panade.certify.simplex;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Follows the optimum exactly while one right side or one price moves, pivot by pivot, so that rates are one-sided and
 * true at degenerate optima, where the multipliers of a single basis are not (Gal, "Postoptimal Analyses", 1979).
 */
public final class ParametricSimplex {
    private final Tableau tableau;

    private ParametricSimplex(Tableau tableau) {
        this.tableau = tableau;
    }

    /**
     * The rate at which the objective line changes as the scaled slack of a row is moved, and how far that rate holds.
     *
     * @param rate in cells of the objective per unit of scaled slack
     * @param reach in units of scaled slack; null when it holds for ever
     */
    public record Slope(BigFraction rate, @Nullable BigFraction reach) {}

    /** Moves a row's right side; empty when there is no solution on that side. */
    public static Optional<Slope> alongRow(Tableau optimal, int row, int sign) {
        var tableau = optimal.copy();
        tableau.moveSlack(row, sign);
        return new ParametricSimplex(tableau).slope();
    }

    private Optional<Slope> slope() {
        if (contradictsAnEquation() || !trySettle()) {
            return Optional.empty();
        }
        var rate = tableau.value(tableau.parameter(tableau.objective()));
        return Optional.of(new Slope(rate, reach(rate)));
    }

    private boolean contradictsAnEquation() {
        for (int i = 0; i < tableau.rows(); i++) {
            if (tableau.locked(tableau.basic(i)) && tableau.parameter(i).signum() != 0) {
                return true;
            }
        }
        return false;
    }

    private boolean trySettle() {
        return trySettle(tableau);
    }

    /** Pivots until the first small move keeps every amount at or above zero; false when none can. */
    public static boolean trySettle(Tableau tableau) {
        int line = limitingLine(tableau);
        while (line >= 0 && tableau.constant(line).signum() == 0) {
            if (!tryPivotOut(tableau, line)) {
                return false;
            }
            line = limitingLine(tableau);
        }
        return true;
    }

    private @Nullable BigFraction reach(BigFraction rate) {
        while (true) {
            int line = limitingLine(tableau);
            if (line < 0) {
                return null;
            }
            var limit = BigFraction.of(
                    tableau.constant(line), tableau.parameter(line).negate());
            int place = entering(line);
            if (place < 0) {
                return limit;
            }
            tableau.pivot(line, place);
            if (!tableau.value(tableau.parameter(tableau.objective())).equals(rate)) {
                return limit;
            }
        }
    }

    /** The line that reaches zero first, or -1; lowest index among equals. */
    public static int limitingLine(Tableau tableau) {
        int best = -1;
        for (int i = 0; i < tableau.rows(); i++) {
            boolean falls = tableau.parameter(i).signum() < 0 && !tableau.locked(tableau.basic(i));
            best = falls && (best < 0 || reachesSooner(tableau, i, best)) ? i : best;
        }
        return best;
    }

    private static boolean reachesSooner(Tableau tableau, int a, int b) {
        var left = tableau.constant(a).multiply(tableau.parameter(b).negate());
        var right = tableau.constant(b).multiply(tableau.parameter(a).negate());
        int order = left.compareTo(right);
        return order < 0 || (order == 0 && tableau.basic(a) < tableau.basic(b));
    }

    /** Takes a limiting line out of the basis; false when nothing can come in for it. */
    static boolean tryPivotOut(Tableau tableau, int line) {
        int place = new ParametricSimplex(tableau).entering(line);
        if (place >= 0) {
            tableau.pivot(line, place);
        }
        return place >= 0;
    }

    private int entering(int line) {
        return Ratios.entering(tableau, line, sign -> sign > 0);
    }

    /**
     * Moves the second objective's weight up from zero until its own value changes, and on to the point that is the
     * best just beyond; null when it never changes.
     */
    public static @Nullable Breakpoint alongDirection(Tableau optimal) {
        return new ParametricSimplex(optimal).turn();
    }

    /** Every change of the second objective's own value as its weight goes up from zero without end. */
    public static List<Breakpoint> allAlongDirection(Tableau optimal) {
        var walk = new ParametricSimplex(optimal);
        var turns = new ArrayList<Breakpoint>();
        var turn = walk.turn();
        while (turn != null) {
            turns.add(new Breakpoint(turn.at(), turn.after().copy()));
            turn = walk.turn();
        }
        return turns;
    }

    /**
     * Where a moving price changes the blend.
     *
     * @param at how much of the second objective had been added, in cells
     * @param after the dictionary that is optimal just beyond, and from there to the next turn
     */
    public record Breakpoint(BigFraction at, Tableau after) {}

    private @Nullable Breakpoint turn() {
        var before = tableau.value(tableau.constant(tableau.direction()));
        int place = limitingPlace();
        while (place >= 0) {
            var at = weightAt(place);
            if (!tryPivotThrough(at)) {
                return null;
            }
            if (!tableau.value(tableau.constant(tableau.direction())).equals(before)) {
                return new Breakpoint(at, tableau);
            }
            place = limitingPlace();
        }
        return null;
    }

    /** Pivots through everything that is tied at a weight; false when something grows there without end. */
    private boolean tryPivotThrough(BigFraction at) {
        int place = limitingPlace();
        while (place >= 0 && weightAt(place).equals(at)) {
            int line = leaving(tableau, place);
            if (line < 0) {
                return false;
            }
            tableau.pivot(line, place);
            place = limitingPlace();
        }
        return true;
    }

    /** The weight of the second objective at which a place costs nothing. */
    private BigFraction weightAt(int place) {
        return BigFraction.of(
                tableau.at(tableau.objective(), place),
                tableau.at(tableau.direction(), place).negate());
    }

    private int limitingPlace() {
        int best = -1;
        for (int j = 0; j < tableau.columns(); j++) {
            boolean falls = tableau.at(tableau.direction(), j).signum() < 0 && !tableau.locked(tableau.nonbasic(j));
            best = falls && (best < 0 || turnsSooner(j, best)) ? j : best;
        }
        return best;
    }

    private boolean turnsSooner(int a, int b) {
        var left = tableau.at(tableau.objective(), a)
                .multiply(tableau.at(tableau.direction(), b).negate());
        var right = tableau.at(tableau.objective(), b)
                .multiply(tableau.at(tableau.direction(), a).negate());
        int order = left.compareTo(right);
        return order < 0 || (order == 0 && tableau.nonbasic(a) < tableau.nonbasic(b));
    }

    /** The line that reaches zero first as the variable at a place grows, or -1. */
    public static int leaving(Tableau tableau, int place) {
        int best = -1;
        for (int i = 0; i < tableau.rows(); i++) {
            boolean falls = tableau.at(i, place).signum() < 0;
            best = falls && (best < 0 || Ratios.sooner(tableau, place, i, best)) ? i : best;
        }
        return best;
    }
}
