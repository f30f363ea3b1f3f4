package panade.document.setting;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.domain.purchase.Offer;

/**
 * A brief read with some numbers tried, beside what it is as written.
 *
 * @param written without what is tried, and with whatever else was asked for in its place
 * @param now with it
 */
public record Tried(Brief written, Brief now, List<Change> changes) {
    public Tried {
        changes = List.copyOf(changes);
    }

    /** What one setting changes. */
    public sealed interface Change {
        /** The setting as it was typed. */
        String setting();

        /**
         * A bound's number.
         *
         * @param bound as written
         * @param number as typed
         */
        record OfBound(String setting, Bound bound, Side side, String number) implements Change {}

        /**
         * Offers, each as written.
         *
         * @param price what is typed as the price; null where it stays
         * @param perKg the same as money per kilogram; likewise
         * @param available what is typed as the amount to be had; null where it stays
         */
        record OfOffers(
                String setting,
                List<Offer> offers,
                @Nullable String price,
                @Nullable BigFraction perKg,
                @Nullable String available)
                implements Change {
            public OfOffers {
                offers = List.copyOf(offers);
            }
        }
    }
}
