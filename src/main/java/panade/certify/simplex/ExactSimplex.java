package panade.certify.simplex;

import java.math.BigInteger;
import org.jspecify.annotations.Nullable;

/**
 * Pivots a dictionary to an optimum: dual steps while prices are right and amounts are not, primal steps in the other
 * case, and criss-cross steps (Terlaky, "A convergent criss-cross method", Optimization 16, 1985) when neither is.
 * Always the lowest index among equals, so the same model takes the same path; after {@link #STEPS_BY_VALUE} steps the
 * lowest index outright (Bland, Math. of Operations Research 2, 1977), so every run ends.
 */
public final class ExactSimplex {
    /** How the pivots ended. */
    public enum Ending {
        OPTIMAL,
        INFEASIBLE,
        UNBOUNDED
    }

    private static final int STEPS_BY_VALUE = 500;

    private final Tableau tableau;
    private int steps;
    private int stuckLine = -1;

    public ExactSimplex(Tableau tableau) {
        this.tableau = tableau;
    }

    /** The line that shows there is no solution, once that was the ending. */
    public int stuckLine() {
        return stuckLine;
    }

    /** Runs to the end. */
    public Ending run() {
        if (!drivesEquationsOut()) {
            return Ending.INFEASIBLE;
        }
        while (true) {
            int line = negativeLine();
            int place = negativePlace();
            if (line < 0 && place < 0) {
                return Ending.OPTIMAL;
            }
            var ending = step(line, place);
            if (ending != null) {
                return ending;
            }
            steps++;
        }
    }

    private @Nullable Ending step(int line, int place) {
        if (line < 0) {
            return primal(place);
        }
        if (place < 0) {
            return dual(line);
        }
        return crissCross();
    }

    private @Nullable Ending primal(int place) {
        int line = Ratios.leaving(tableau, place);
        if (line < 0) {
            return Ending.UNBOUNDED;
        }
        tableau.pivot(line, place);
        return null;
    }

    private @Nullable Ending dual(int line) {
        int place = entering(line);
        if (place < 0) {
            stuckLine = line;
            return Ending.INFEASIBLE;
        }
        tableau.pivot(line, place);
        return null;
    }

    /** One step of the criss-cross method: the lowest-numbered variable that is wrong decides which side moves. */
    private @Nullable Ending crissCross() {
        int line = lowestNegativeLine();
        int place = lowestNegativePlace();
        if (tableau.basic(line) < tableau.nonbasic(place)) {
            int partner = lowestPlace(line);
            if (partner < 0) {
                stuckLine = line;
                return Ending.INFEASIBLE;
            }
            tableau.pivot(line, partner);
            return null;
        }
        int partner = lowestLine(place);
        if (partner < 0) {
            // No amount limits this direction, but amounts are wrong elsewhere: mend those first.
            return dual(line);
        }
        tableau.pivot(partner, place);
        return null;
    }

    private boolean drivesEquationsOut() {
        for (int i = 0; i < tableau.rows(); i++) {
            if (tableau.locked(tableau.basic(i)) && !drivesOut(i)) {
                return false;
            }
        }
        return true;
    }

    private boolean drivesOut(int line) {
        int place = cheapestEntering(line);
        if (place >= 0) {
            tableau.pivot(line, place);
            return true;
        }
        stuckLine = tableau.constant(line).signum() == 0 ? -1 : line;
        return stuckLine < 0;
    }

    /** For an equation: the place that keeps prices right if one does, else any that is not zero. */
    private int cheapestEntering(int line) {
        return Ratios.entering(tableau, line, sign -> sign != 0);
    }

    private int negativeLine() {
        int worst = -1;
        for (int i = 0; i < tableau.rows(); i++) {
            boolean negative = tableau.constant(i).signum() < 0 && !tableau.locked(tableau.basic(i));
            if (negative
                    && (worst < 0
                            || precedes(
                                    tableau.constant(i),
                                    tableau.basic(i),
                                    tableau.constant(worst),
                                    tableau.basic(worst)))) {
                worst = i;
            }
        }
        return worst;
    }

    private int negativePlace() {
        int worst = -1;
        int objective = tableau.objective();
        for (int j = 0; j < tableau.columns(); j++) {
            boolean negative = tableau.at(objective, j).signum() < 0 && !tableau.locked(tableau.nonbasic(j));
            if (negative
                    && (worst < 0
                            || precedes(
                                    tableau.at(objective, j),
                                    tableau.nonbasic(j),
                                    tableau.at(objective, worst),
                                    tableau.nonbasic(worst)))) {
                worst = j;
            }
        }
        return worst;
    }

    private boolean precedes(BigInteger value, int variable, BigInteger best, int bestVariable) {
        int byValue = steps < STEPS_BY_VALUE ? value.compareTo(best) : 0;
        return byValue < 0 || (byValue == 0 && variable < bestVariable);
    }

    /** Dual ratio test: which price reaches zero first as the variable of a line grows. */
    private int entering(int line) {
        return Ratios.entering(tableau, line, sign -> sign > 0);
    }

    private int lowestNegativeLine() {
        int best = -1;
        for (int i = 0; i < tableau.rows(); i++) {
            boolean wrong = tableau.constant(i).signum() < 0 && !tableau.locked(tableau.basic(i));
            best = wrong && (best < 0 || tableau.basic(i) < tableau.basic(best)) ? i : best;
        }
        return best;
    }

    private int lowestNegativePlace() {
        int best = -1;
        for (int j = 0; j < tableau.columns(); j++) {
            boolean wrong = tableau.at(tableau.objective(), j).signum() < 0 && !tableau.locked(tableau.nonbasic(j));
            best = wrong && (best < 0 || tableau.nonbasic(j) < tableau.nonbasic(best)) ? j : best;
        }
        return best;
    }

    private int lowestPlace(int line) {
        int best = -1;
        for (int j = 0; j < tableau.columns(); j++) {
            boolean usable =
                    !tableau.locked(tableau.nonbasic(j)) && tableau.at(line, j).signum() > 0;
            best = usable && (best < 0 || tableau.nonbasic(j) < tableau.nonbasic(best)) ? j : best;
        }
        return best;
    }

    private int lowestLine(int place) {
        int best = -1;
        for (int i = 0; i < tableau.rows(); i++) {
            boolean usable = tableau.at(i, place).signum() < 0 && !tableau.locked(tableau.basic(i));
            best = usable && (best < 0 || tableau.basic(i) < tableau.basic(best)) ? i : best;
        }
        return best;
    }
}
