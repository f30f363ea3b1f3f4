package panade.certify.sensitivity;

import java.util.ArrayList;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.Integers;
import panade.certify.simplex.ParametricSimplex;
import panade.certify.simplex.Tableau;

/** A price on the move: a copy of an optimal dictionary whose second objective is what one unit of the price adds. */
final class MovingPrice {
    private final Tableau tableau;
    private final BigFraction scale;

    MovingPrice(Tableau optimal, Map<Integer, BigFraction> weights, int sign) {
        tableau = optimal.copy();
        var line = new ArrayList<BigFraction>();
        for (int j = 0; j < tableau.columns(); j++) {
            var weight = weights.getOrDefault(j, BigFraction.ZERO);
            line.add(sign < 0 ? weight.negate() : weight);
        }
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
