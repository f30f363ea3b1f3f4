package panade.buy;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.plan.Outcome.Blended;

/**
 * A product and how much of it is to be made.
 *
 * @param best its cheapest blend when any weight could be bought
 * @param kilograms of it
 */
public record Product(Blended best, BigFraction kilograms) {
    /** Kilograms of an ingredient, before trimming, that a share of the product takes. */
    public BigFraction asBought(String ingredient, BigFraction share) {
        return best.asked().asBought(ingredient, share.multiply(kilograms));
    }
}
