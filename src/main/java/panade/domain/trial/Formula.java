package panade.domain.trial;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;

/**
 * What is made of a brief's product.
 *
 * @param title what the document calls it, or else its file
 * @param brief in the batch that is made
 * @param weighed what goes in; more than nothing in all
 */
public record Formula(String title, Brief brief, Weighed weighed) {
    public Formula {
        if (weighed.total().signum() <= 0) {
            throw new IllegalArgumentException("a formula weighs something");
        }
    }

    /** What one kilogram weighed is of the whole. */
    public BigFraction perKg() {
        return BigFraction.ONE.divide(weighed.total());
    }
}
