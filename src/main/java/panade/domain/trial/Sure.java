package panade.domain.trial;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Sureness;
import panade.domain.Sureness.Estimated;
import panade.learn.Distributions;
import panade.quantity.Decimal;
import panade.quantity.Quantity;

/**
 * How far from the mean a bound must keep for a probability: the quantiles of the normal and Student's distribution.
 */
public final class Sure {
    private Sure() {}

    /**
     * Sureness of so much.
     *
     * @param both whether there are two numbers: half of what may be missed is for either, so that both are as sure
     * @param estimated how well trials know what is bounded; null where it varies with the spreads of the set
     */
    public static Sureness of(Quantity share, boolean both, @Nullable Estimated estimated) {
        var side = both ? BigFraction.ONE.add(share.base()).divide(2) : share.base();
        var quantile =
                estimated == null ? Distributions.normal(side) : Distributions.student(estimated.degrees(), side);
        return new Sureness(share, Decimal.of(quantile), estimated);
    }

    /** A bound that is more or less sure than it was, or sure at all. */
    public static Bound with(Bound bound, Quantity share) {
        var was = bound.sure();
        boolean both = bound.min() != null && bound.max() != null;
        return bound.withSureness(of(share, both, was == null ? null : was.estimated()));
    }
}
