package panade.domain.purchase;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Origin;
import panade.quantity.Quantity;

/**
 * A supplier's price for an ingredient as bought, before trimming.
 *
 * @param id which offer it is; the same whatever its price
 * @param ingredient id of what is offered
 * @param supplier whose offer it is
 * @param pricePerKg money per kilogram as bought
 * @param pack the smallest quantity sold; null when any quantity is
 * @param minimum the smallest order; null when there is none
 * @param available the most that can be had; null when there is no end to it
 * @param note free text
 * @param origin the row it was read from
 */
public record Offer(
        OfferId id,
        String ingredient,
        String supplier,
        BigFraction pricePerKg,
        @Nullable Quantity pack,
        @Nullable Quantity minimum,
        @Nullable Quantity available,
        String note,
        Origin origin) {

    /**
     * Money per kilogram as weighed in.
     *
     * @param yield what is left after trimming, as a fraction of the weight bought
     */
    public BigFraction costPerKg(BigFraction yield) {
        return pricePerKg.divide(yield);
    }

    /** The same goods from nobody in particular, free and without end: what goes in is then all that matters. */
    public Offer unlisted() {
        return new Offer(
                OfferId.unlisted(ingredient), ingredient, "any", BigFraction.ZERO, null, null, null, "", origin);
    }

    /** The same offer at another price per kilogram. */
    public Offer withPrice(BigFraction other) {
        return new Offer(id, ingredient, supplier, other, pack, minimum, available, note, origin);
    }

    /** The same offer with more or less to be had. */
    public Offer withAvailable(@Nullable Quantity other) {
        return new Offer(id, ingredient, supplier, pricePerKg, pack, minimum, other, note, origin);
    }
}
