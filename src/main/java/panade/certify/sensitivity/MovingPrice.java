package panade.certify.sensitivity;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.Integers;
import panade.certify.simplex.ParametricSimplex;
import panade.certify.simplex.Tableau;
import panade.model.LinearForm;

/** A price on the move: a copy of an optimal dictionary whose second objective is what one unit of the price adds. */
final class MovingPrice {
    private final Tableau tableau;
    private final BigFraction scale;

    MovingPrice(Tableau optimal, LinearForm weights, int sign) {
        tableau = optimal.copy();
        var line = (sign < 0 ? weights.negated() : weights).dense(tableau.columns());
        scale = Integers.scaleOf(line);
        tableau.setDirection(Integers.whole(line, scale));
    }

    /** The dictionary to walk on. */
    Tableau tableau() {
        return tableau;
    }

    /** A turn of the walk in units of the price. */
    Sensitivity.Breakpoint turn(ParametricSimplex.Breakpoint turn) {
        var by = turn.at().multiply(scale).divide(tableau.costScale());
        return new Sensitivity.Breakpoint(by, turn.after().point());
    }
}
