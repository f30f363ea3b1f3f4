package panade.domain;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Quantity;

/**
 * How sure a bound is to hold although what ingredients hold varies from lot to lot, or although what it bounds is
 * known from trials only.
 *
 * @param share the probability that was asked for, as written: a half or more, and less than all
 * @param quantile standard deviations that each number keeps away from the mean, rounded up. A bound with a floor and a
 *     ceiling misses either in at most half of what may be missed, so that both hold as surely as was asked.
 * @param estimated how well trials know what is bounded; null where it varies with the spreads of the ingredient set
 */
public record Sureness(
        Quantity share, BigFraction quantile, @Nullable Estimated estimated) {
    /**
     * What trials know of a response that is linear in measures of the batch.
     *
     * @param terms the measures that its coefficients stand at
     * @param covariance of the coefficients, in the response's unit squared
     * @param error variance of a single batch about the mean; null where the bound is on the mean itself
     * @param degrees of freedom of the error
     * @param trials how many stand behind it
     */
    public record Estimated(
            List<Measure> terms,
            List<List<BigFraction>> covariance,
            @Nullable BigFraction error,
            int degrees,
            int trials) {
        public Estimated {
            terms = List.copyOf(terms);
            covariance = covariance.stream().map(List::copyOf).toList();
        }
    }
}
