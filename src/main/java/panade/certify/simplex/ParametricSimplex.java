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
    private final Dictionary dictionary;

    private ParametricSimplex(Dictionary dictionary) {
        this.dictionary = dictionary;
    }

    /**
     * The rate at which the objective changes as the slack of a row is moved, and how far that rate holds.
     *
     * @param rate money per unit of the row
     * @param reach in units of the row; null when it holds for ever
     */
    public record Slope(BigFraction rate, @Nullable BigFraction reach) {}

    /** Moves a row's right side; empty when there is no solution on that side. */
    public static Optional<Slope> alongRow(Dictionary optimal, int row, int sign) {
        var dictionary = optimal.copy();
        dictionary.moveSlack(row, sign);
        return new ParametricSimplex(dictionary).slope();
    }

    private Optional<Slope> slope() {
        if (contradictsAnEquation() || !trySettle(dictionary)) {
            return Optional.empty();
        }
        var rate = dictionary.parameterOfCost();
        return Optional.of(new Slope(rate, reach(rate)));
    }

    private boolean contradictsAnEquation() {
        for (int i = 0; i < dictionary.rows(); i++) {
            if (dictionary.locked(dictionary.basic(i))
                    && dictionary.parameters().sign(i) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Pivots until the first small move keeps every amount at or above zero; false when none can. */
    public static boolean trySettle(Dictionary dictionary) {
        int line = limitingLine(dictionary);
        while (line >= 0 && dictionary.constants().sign(line) == 0) {
            int place = entering(dictionary, line);
            if (place < 0) {
                return false;
            }
            dictionary.pivot(line, place);
            line = limitingLine(dictionary);
        }
        return true;
    }

    private @Nullable BigFraction reach(BigFraction rate) {
        while (true) {
            int line = limitingLine(dictionary);
            if (line < 0) {
                return null;
            }
            var limit = limit(dictionary, line);
            int place = entering(dictionary, line);
            if (place < 0) {
                return limit;
            }
            dictionary.pivot(line, place);
            if (!dictionary.parameterOfCost().equals(rate)) {
                return limit;
            }
        }
    }

    /** The line that reaches zero first, or -1; lowest index among equals. */
    public static int limitingLine(Dictionary dictionary) {
        return Ratios.limiting(dictionary);
    }

    /** The parameter at which a limiting line is zero. */
    public static BigFraction limit(Dictionary dictionary, int line) {
        return dictionary
                .constants()
                .value(line)
                .divide(dictionary.parameters().value(line).negate());
    }

    private static int entering(Dictionary dictionary, int line) {
        return Ratios.entering(dictionary, line, sign -> sign > 0);
    }

    /** The line that reaches zero first as the variable at a place grows, or -1. */
    public static int leaving(Dictionary dictionary, int place) {
        return Ratios.leaving(dictionary, place);
    }

    /**
     * Moves the second objective's weight up from zero until its own value changes, and on to the point that is the
     * best just beyond; null when it never changes.
     */
    public static @Nullable Breakpoint alongDirection(Dictionary optimal) {
        return new ParametricSimplex(optimal).turn();
    }

    /** Every change of the second objective's own value as its weight goes up from zero without end. */
    public static List<Breakpoint> allAlongDirection(Dictionary optimal) {
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
     * @param at how much of the second objective had been added
     * @param after the dictionary that is optimal just beyond, and from there to the next turn
     */
    public record Breakpoint(BigFraction at, Dictionary after) {}

    private @Nullable Breakpoint turn() {
        var before = dictionary.directionNow();
        int place = Ratios.turning(dictionary);
        while (place >= 0) {
            var at = weightAt(place);
            if (!tryPivotThrough(at)) {
                return null;
            }
            if (!dictionary.directionNow().equals(before)) {
                return new Breakpoint(at, dictionary);
            }
            place = Ratios.turning(dictionary);
        }
        return null;
    }

    /** Pivots through everything that is tied at a weight; false when something grows there without end. */
    private boolean tryPivotThrough(BigFraction at) {
        int place = Ratios.turning(dictionary);
        while (place >= 0 && weightAt(place).equals(at)) {
            int line = leaving(dictionary, place);
            if (line < 0) {
                return false;
            }
            dictionary.pivot(line, place);
            place = Ratios.turning(dictionary);
        }
        return true;
    }

    /** The weight of the second objective at which a place costs nothing. */
    private BigFraction weightAt(int place) {
        return dictionary
                .prices()
                .value(place)
                .divide(dictionary.directions().value(place).negate());
    }
}
