package panade.certify;

import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.Integers;
import panade.certify.simplex.ParametricSimplex;
import panade.certify.simplex.Tableau;
import panade.model.LinearForm;
import panade.model.Unproved;

/** Moves about among the points that all cost the least. */
public final class Extremes {
    private Extremes() {}

    /** The least or most of a linear form over the columns among all least-cost points. */
    public static BigFraction over(Verdict.Optimum optimum, LinearForm form, boolean most) {
        return form.dot(pointOver(optimum, form, most));
    }

    /** A least-cost point at which a linear form is the least or the most. */
    public static List<BigFraction> pointOver(Verdict.Optimum optimum, LinearForm form, boolean most) {
        var tableau = optimum.tableau().copy();
        var line = (most ? form.negated() : form).dense(tableau.columns());
        tableau.setDirection(Integers.whole(line, Integers.scaleOf(line)));
        descend(tableau);
        return tableau.point();
    }

    /** Whether any of the nonbasic variables can rise above zero at no cost. */
    public static boolean canGrow(Verdict.Optimum optimum, Set<Integer> variables) {
        for (int variable : variables) {
            var tableau = optimum.tableau().copy();
            tableau.setDirectionToVariable(variable);
            descend(tableau);
            if (tableau.constant(tableau.direction()).signum() != 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * Primal steps on the second objective through places that cost nothing; lowest index first (Bland), so it ends.
     */
    private static void descend(Tableau tableau) {
        int place = freePlace(tableau);
        while (place >= 0) {
            int line = ParametricSimplex.leaving(tableau, place);
            if (line < 0) {
                throw new Unproved("a form has no end over the least-cost points");
            }
            tableau.pivot(line, place);
            place = freePlace(tableau);
        }
    }

    private static int freePlace(Tableau tableau) {
        int best = -1;
        for (int j = 0; j < tableau.columns(); j++) {
            boolean free = !tableau.locked(tableau.nonbasic(j))
                    && tableau.at(tableau.objective(), j).signum() == 0
                    && tableau.at(tableau.direction(), j).signum() < 0;
            best = free && (best < 0 || tableau.nonbasic(j) < tableau.nonbasic(best)) ? j : best;
        }
        return best;
    }
}
