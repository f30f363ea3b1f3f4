package panade.quantity;

import org.apache.commons.numbers.fraction.BigFraction;

/** The smaller and the larger of two fractions. */
public final class Fractions {
    private Fractions() {}

    /** The smaller one. */
    public static BigFraction min(BigFraction a, BigFraction b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    /** The larger one. */
    public static BigFraction max(BigFraction a, BigFraction b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
