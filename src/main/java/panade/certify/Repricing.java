package panade.certify;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.ExactSimplex;
import panade.certify.simplex.ExactSimplex.Ending;
import panade.certify.simplex.Integers;
import panade.model.Unproved;

/** Solves a model again under other costs, by exact pivots from its optimum. */
public final class Repricing {
    private Repricing() {}

    /** A point of least cost under the costs given. */
    public static List<BigFraction> leastPoint(Verdict.Optimum optimum, List<BigFraction> costs) {
        var tableau = optimum.tableau().copy();
        var scale = Integers.scaleOf(costs);
        tableau.setObjective(Integers.whole(costs, scale));
        boolean ended = new ExactSimplex(tableau).run() == Ending.OPTIMAL;
        var model = optimum.model().withCosts(costs);
        var point = tableau.point();
        if (!ended || !Certificate.provesOptimal(model, point, Certifier.multipliers(model, tableau, scale))) {
            throw new Unproved("the least cost under other prices could not be proved");
        }
        return point;
    }
}
