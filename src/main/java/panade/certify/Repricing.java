package panade.certify;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.ExactSimplex.Ending;
import panade.model.Unproved;

/** Solves a model again under other costs, by exact pivots from its optimum. */
final class Repricing {
    private Repricing() {}

    /** A point of least cost under the costs given. */
    static List<BigFraction> leastPoint(Verdict.Optimum optimum, List<BigFraction> costs) {
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
