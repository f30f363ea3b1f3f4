package panade.certify;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** Eases one row, pivot by pivot, until the least cost has come down to a level or falls no further. */
final class Descent {
    private final Tableau tableau;
    private final BigFraction level;

    private Descent(Tableau tableau, BigFraction level) {
        this.tableau = tableau;
        this.level = level;
    }

    /**
     * How a descent ended.
     *
     * @param cost the least cost then
     * @param point a point of that cost
     * @param arrived whether the level was reached
     */
    record Landing(BigFraction cost, List<BigFraction> point, boolean arrived) {}

    /** Moves a row's scaled slack the way of the sign until the least cost is at the level. */
    static Landing along(Tableau optimal, int row, int sign, BigFraction level) {
        var tableau = optimal.copy();
        tableau.moveSlack(row, sign);
        return new Descent(tableau, level).land();
    }

    private Landing land() {
        var moved = BigFraction.ZERO;
        boolean open = Walk.settles(tableau);
        while (open && falls()) {
            var enough = enough();
            int line = Walk.limitingLine(tableau);
            var limit = limit(line);
            if (limit == null || enough.subtract(limit).signum() <= 0) {
                return landing(enough, true);
            }
            moved = limit;
            open = Walk.turns(tableau, line);
        }
        return landing(moved, false);
    }

    private boolean falls() {
        return tableau.parameter(tableau.objective()).signum() < 0;
    }

    /** How far the slack has to move in all for the level, were this dictionary to hold that long. */
    private BigFraction enough() {
        var wanted = level.multiply(tableau.costScale()).subtract(constant(tableau.objective()));
        return wanted.divide(tableau.value(tableau.parameter(tableau.objective())));
    }

    private @Nullable BigFraction limit(int line) {
        return line < 0
                ? null
                : BigFraction.of(tableau.constant(line), tableau.parameter(line).negate());
    }

    private BigFraction constant(int line) {
        return tableau.value(tableau.constant(line));
    }

    private Landing landing(BigFraction moved, boolean arrived) {
        var point = new ArrayList<BigFraction>();
        for (int j = 0; j < tableau.columns(); j++) {
            int line = tableau.lineOf(j);
            point.add(line < 0 ? BigFraction.ZERO : at(line, moved));
        }
        return new Landing(at(tableau.objective(), moved).divide(tableau.costScale()), List.copyOf(point), arrived);
    }

    private BigFraction at(int line, BigFraction moved) {
        return constant(line).add(tableau.value(tableau.parameter(line)).multiply(moved));
    }
}
