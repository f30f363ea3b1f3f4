package panade.certify;

import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.Dictionary;
import panade.certify.simplex.ParametricSimplex;
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
        return optimum.pivoting(dictionary -> {
            dictionary.setDirection(most ? form.negated() : form);
            descend(dictionary);
            return dictionary.point();
        });
    }

    /** Whether any of the nonbasic variables can rise above zero at no cost. */
    public static boolean canGrow(Verdict.Optimum optimum, Set<Integer> variables) {
        for (int variable : variables) {
            if (optimum.pivoting(dictionary -> canGrow(dictionary, variable))) {
                return true;
            }
        }
        return false;
    }

    private static boolean canGrow(Dictionary dictionary, int variable) {
        dictionary.setDirectionToVariable(variable);
        var before = dictionary.directionNow();
        descend(dictionary);
        return !dictionary.directionNow().equals(before);
    }

    /**
     * Primal steps on the second objective through places that cost nothing; lowest index first (Bland), so it ends.
     */
    private static void descend(Dictionary dictionary) {
        int place = freePlace(dictionary);
        while (place >= 0) {
            int line = ParametricSimplex.leaving(dictionary, place);
            if (line < 0) {
                throw new Unproved("a form has no end over the least-cost points");
            }
            dictionary.pivot(line, place);
            place = freePlace(dictionary);
        }
    }

    private static int freePlace(Dictionary dictionary) {
        var prices = dictionary.prices();
        var directions = dictionary.directions();
        int best = -1;
        for (int j = 0; j < dictionary.columns(); j++) {
            boolean free = !dictionary.locked(dictionary.nonbasic(j)) && prices.sign(j) == 0 && directions.sign(j) < 0;
            best = free && (best < 0 || dictionary.nonbasic(j) < dictionary.nonbasic(best)) ? j : best;
        }
        return best;
    }
}
