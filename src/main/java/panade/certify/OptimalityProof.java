package panade.certify;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel;

/**
 * What was checked of a point that is said to cost least: only the certifier makes one, from the model, the point and
 * the multipliers, so that nothing can be told as proved that was not.
 */
public final class OptimalityProof {
    private final boolean feasible;
    private final boolean bounded;
    private final BigFraction gap;
    private final String engine;

    private OptimalityProof(boolean feasible, boolean bounded, BigFraction gap, String engine) {
        this.feasible = feasible;
        this.bounded = bounded;
        this.gap = gap;
        this.engine = engine;
    }

    static OptimalityProof check(
            LinearModel model, List<BigFraction> point, List<BigFraction> multipliers, String engine) {
        return new OptimalityProof(
                Certificate.isFeasible(model, point),
                Certificate.provesBound(model, multipliers),
                model.costAt(point).subtract(Certificate.rightSides(model, multipliers)),
                engine);
    }

    /** Whether the point was found to meet every row, in exact fractions. */
    public boolean isFeasible() {
        return feasible;
    }

    /** Whether the multipliers were found to prove, in exact fractions, that nothing costs less than they add up to. */
    public boolean isBounded() {
        return bounded;
    }

    /** How much more the point costs than is proved that all must, per unit of the model; zero for a least cost. */
    public BigFraction gap() {
        return gap;
    }

    /** What found the point. */
    public String engine() {
        return engine;
    }

    /** Whether the point is proved to cost least. */
    public boolean isComplete() {
        return feasible && bounded && gap.signum() == 0;
    }
}
