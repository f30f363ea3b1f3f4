package panade.design;

import org.apache.commons.numbers.fraction.BigFraction;

/** What a design is to be best at. */
public sealed interface Criterion {
    /** The larger, the better a design. */
    BigFraction merit(Information information);

    /** The coefficients together are known best: the determinant of the information is largest (D-optimal). */
    record Determinant() implements Criterion {
        @Override
        public BigFraction merit(Information information) {
            return information.determinant();
        }
    }

    /**
     * Predictions are best on the average over a region (I-optimal).
     *
     * @param region the moments of the model's terms over it
     */
    record MeanVariance(Moments region) implements Criterion {
        @Override
        public BigFraction merit(Information information) {
            return information.meanVariance(region).negate();
        }
    }
}
