package panade.explain;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Origin;
import panade.quantity.Unit;

/**
 * Why a blend is as it is.
 *
 * @param limits every bound, ceiling and availability with its value, in the brief's order
 * @param unused candidates that are not in the blend, by id
 * @param properties what the blend holds
 * @param unique whether no other blend costs as little
 */
public record Explanation(List<Limit> limits, List<Unused> unused, List<PropertyValue> properties, boolean unique) {

    /** Which side of a bound the blend touches. */
    public enum Touch {
        NONE,
        MIN,
        MAX,
        FIXED
    }

    /**
     * A bound as the blend meets it; all numbers are in {@code unit}.
     *
     * @param value null when it is nothing over nothing
     * @param price null when the bound is idle
     */
    public record Limit(
            String name,
            String path,
            Unit unit,
            @Nullable BigFraction value,
            @Nullable BigFraction min,
            @Nullable BigFraction max,
            Touch touch,
            @Nullable ShadowPrice price,
            Origin origin) {}

    /**
     * What moving a bound's number by one of its own unit does to the least cost, in money per kilogram of batch. The
     * two rates are one-sided; they differ where the optimum is degenerate.
     *
     * @param whenRaised null when no blend exists on that side
     * @param whenLowered null when no blend exists on that side
     * @param from how far the number may be lowered with that rate; null when unlimited or not known
     * @param to how far the number may be raised with that rate; null when unlimited or not known
     */
    public record ShadowPrice(
            @Nullable BigFraction whenRaised,
            @Nullable BigFraction whenLowered,
            @Nullable BigFraction from,
            @Nullable BigFraction to) {}

    /**
     * An ingredient that could be bought but is not used.
     *
     * @param supplier whose offer is the cheapest
     * @param pricePerKg that offer's price, as bought
     * @param entersAt price per kilogram as bought below which it would come in; null when no price above zero does
     */
    public record Unused(
            String ingredient,
            String supplier,
            BigFraction pricePerKg,
            @Nullable BigFraction entersAt) {}

    /**
     * A property of the blend, in the property's unit.
     *
     * @param value null when some ingredient's value is not known
     */
    public record PropertyValue(
            String property,
            String title,
            Unit unit,
            @Nullable BigFraction value) {}
}
