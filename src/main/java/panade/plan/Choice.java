package panade.plan;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * How good a choice of ingredients is, among all that the rules leave.
 *
 * @param engine what found it
 * @param bound no blend that keeps the rules costs less per kilogram, proved in exact fractions
 * @param closed whether that bound is the blend's own cost
 * @param looked how many sets of choices were looked at for the proof
 * @param claim below which no cost can be according to the search, in binary floating point; null when it said nothing
 */
public record Choice(
        String engine,
        BigFraction bound,
        boolean closed,
        int looked,
        @Nullable BigFraction claim) {

    /** How far a cost may be above the least that any choice allows, as a part of it; zero once that is ruled out. */
    public BigFraction gap(BigFraction costPerKg) {
        return closed ? BigFraction.ZERO : costPerKg.subtract(bound).divide(costPerKg);
    }
}
