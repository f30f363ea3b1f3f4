package panade.certify;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.Tableau;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.model.Unproved;

/** The exact point of a basis, whatever anything costs. */
public final class BasicPoint {
    private BasicPoint() {}

    /** The point, which meets every row. */
    public static List<BigFraction> of(LinearModel model, Basis basis) {
        var tableau = new Tableau(model);
        tableau.bringIn(basis);
        var point = tableau.point();
        if (!Certificate.isFeasible(model, point)) {
            throw new Unproved("a basis does not give a point that meets every row");
        }
        return point;
    }
}
