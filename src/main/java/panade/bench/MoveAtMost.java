package panade.bench;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Dimension;
import panade.quantity.Quantity;

/**
 * How far a line of a formula may be weighed from what it asks; the next step of the scale is near enough in any case.
 *
 * @param most a weight, or a share of the line's own; null for no more than the next step
 */
public record MoveAtMost(@Nullable Quantity most) {
    /** The same for a line, in kilograms. */
    BigFraction of(BigFraction kilograms) {
        if (most == null) {
            return BigFraction.ZERO;
        }
        return most.unit().dimension() == Dimension.SHARE ? kilograms.multiply(most.base()) : most.base();
    }
}
