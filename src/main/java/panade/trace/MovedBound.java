package panade.trace;

import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.explain.Explanation.ShadowPrice;
import panade.explain.Explanation.SideReading;
import panade.plan.Planner;
import panade.plan.ProvedBlend;
import panade.quantity.Quantity;

/** A bound whose number moves: each place is solved afresh. */
record MovedBound(Planner planner, Brief brief, Bound bound, Side side) {

    Quantity limit() {
        return Objects.requireNonNull(side == Side.MIN ? bound.min() : bound.max());
    }

    /** Whether the number multiplies an amount, so that the cost bends between places where it turns. */
    boolean isBent() {
        return bound.per() != null && !Bound.isAmount(limit());
    }

    /** What is proved with another number; empty when no blend is left. */
    Optional<Stop> at(BigFraction number) {
        var moved = Quantity.of(number, limit().unit(), "moved");
        var changed = bound.withNumber(side, moved);
        return planner.proved(brief.replacing(bound, changed))
                .orUndecided()
                .map(proved -> stop(number, proved, changed));
    }

    private Stop stop(BigFraction number, ProvedBlend proved, Bound changed) {
        return new Stop(number, proved.blend(), proved.number(changed, side), side);
    }

    /** A proved place of the curve. */
    record Stop(BigFraction at, Blend blend, SideReading reading, Side side) {

        BigFraction cost() {
            return blend.costPerKg();
        }

        /** The rate upwards or downwards; null where the cost jumps or no blend is left. */
        @Nullable
        BigFraction rate(boolean up) {
            var price = reading.price();
            return price == null ? BigFraction.ZERO : up ? price.whenRaised() : price.whenLowered();
        }

        @Nullable
        BigFraction jump(boolean up) {
            var price = reading.price();
            return price == null ? null : up ? price.jumpRaised() : price.jumpLowered();
        }

        /** The cost just beyond: the same, or what it jumps to. */
        BigFraction costBeyond(boolean up) {
            var jump = jump(up);
            return jump == null ? cost() : cost().add(jump);
        }

        boolean isBlocked(boolean up) {
            var price = reading.price();
            return price != null && (up ? price.blockedAbove() : price.blockedBelow());
        }

        /** How far the rate is known to hold; null where there is no end, or none is known. */
        @Nullable
        BigFraction reach(boolean up) {
            ShadowPrice price = reading.price();
            if (price != null) {
                return up ? price.to() : price.from();
            }
            // idle: nothing changes until the number meets the blend
            return (side == Side.MIN) == up ? reading.value() : null;
        }
    }
}
