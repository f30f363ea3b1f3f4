package panade.certify;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.ExactSimplex;
import panade.certify.simplex.ExactSimplex.Ending;
import panade.certify.simplex.Tableau;
import panade.model.MixedModel;
import panade.model.Unproved;

/**
 * A model with some of its switches set, solved by a few exact pivots from the one with a switch less, and proved by
 * multipliers of its own.
 */
final class Branch {
    private final Switches switches;
    private final Tableau tableau;
    private final Map<Integer, BigInteger> set;
    private final Ending ending;

    private Branch(Switches switches, Tableau tableau, Map<Integer, BigInteger> set) {
        this.switches = switches;
        this.tableau = tableau;
        this.set = new TreeMap<>(set);
        var simplex = new ExactSimplex(tableau);
        this.ending = simplex.run();
        boolean proved = ending == Ending.OPTIMAL ? provesOptimal() : provesImpossible(simplex.stuckLine());
        if (!proved) {
            throw new Unproved("a branch could not be proved");
        }
    }

    /** The model with no switch set. */
    static Branch root(MixedModel model, Tableau optimal) {
        return new Branch(new Switches(model), optimal.copy(), Map.of());
    }

    /** This branch with one switch more set to nought or one. */
    Branch with(int column, BigInteger value) {
        var child = tableau.copy();
        // a switch at nought stays out; one at one leaves no slack in the row that keeps it from being more
        child.lock(value.signum() == 0 ? column : tableau.columns() + switches.ceiling(column));
        var more = new TreeMap<>(set);
        more.put(column, value);
        return new Branch(switches, child, more);
    }

    boolean isPossible() {
        return ending == Ending.OPTIMAL;
    }

    List<BigFraction> point() {
        return tableau.point();
    }

    BigFraction cost() {
        return tableau.money(tableau.constant(tableau.objective()));
    }

    private boolean provesOptimal() {
        var held = switches.model().holding(set);
        var rows = Certifier.multipliers(switches.model().relaxed(), tableau, tableau.costScale());
        return Certificate.provesOptimal(held, point(), all(rows, tableau.objective(), tableau.costScale()));
    }

    private boolean provesImpossible(int line) {
        var held = switches.model().holding(set);
        var rows = Certifier.contradiction(switches.model().relaxed(), tableau, line);
        var multipliers = all(rows, line, BigFraction.ONE);
        boolean rises = tableau.constant(line).signum() > 0;
        return Certificate.provesImpossible(
                held,
                multipliers.stream()
                        .map(value -> rises ? value : value.negate())
                        .toList());
    }

    /** The multipliers of the model's rows, then those of the switches that are set, which may have any sign. */
    private List<BigFraction> all(List<BigFraction> ofRows, int line, BigFraction scale) {
        var rows = new ArrayList<>(ofRows);
        var ofSwitches = new ArrayList<BigFraction>();
        for (Map.Entry<Integer, BigInteger> each : set.entrySet()) {
            if (each.getValue().signum() == 0) {
                ofSwitches.add(multiplier(line, each.getKey()).divide(scale));
            } else {
                ofSwitches.add(rows.set(switches.ceiling(each.getKey()), BigFraction.ZERO));
            }
        }
        rows.addAll(ofSwitches);
        return rows;
    }

    private BigFraction multiplier(int line, int column) {
        int place = tableau.placeOf(column);
        if (place >= 0) {
            return tableau.value(tableau.at(line, place));
        }
        boolean isLine = line < tableau.rows() && tableau.basic(line) == column;
        return isLine ? BigFraction.ONE.negate() : BigFraction.ZERO;
    }
}
