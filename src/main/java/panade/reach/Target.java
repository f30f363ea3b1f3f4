package panade.reach;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.explain.Room.PropertyRoom;
import panade.explain.conflict.Move;
import panade.label.LabelChange;
import panade.plan.Outcome.Blended;
import panade.quantity.Quantity;

/**
 * Whether a price can be reached, and what must give or what may be had for it.
 *
 * @param best the cheapest blend
 * @param targetPerKg the price hoped for
 * @param shelf how it was worked back from the shelf; null when it was stated
 * @param moves when the target is missed, each bound that holds the cost up, moved alone
 * @param prices when the target is missed, the price of each ingredient in the blend that would do
 * @param pair when the target is missed, the cheapest two moves together; empty when no two do
 * @param batch when the target is missed, the smallest batch that spreads its labour far enough, in whole units; null
 *     when none does or the target was not worked back from the shelf
 * @param labels what moves do to the label, by the move; of those that can do it alone
 * @param atTarget when the target is met, least and most of each property for the money
 * @param open what could not be decided in time, in words
 */
public record Target(
        Blended best,
        BigFraction targetPerKg,
        @Nullable ShelfTarget shelf,
        List<Move> moves,
        List<PriceMove> prices,
        List<Move> pair,
        @Nullable Quantity batch,
        Map<Move, LabelChange> labels,
        List<PropertyRoom> atTarget,
        List<String> open) {

    /**
     * A price that would bring the cost down to the target.
     *
     * @param from the price per kilogram now, as bought
     * @param to the price that is enough; null when not even nothing is
     * @param costPerKg the least cost at that price, or at nothing
     */
    public record PriceMove(
            String ingredient,
            String supplier,
            BigFraction from,
            @Nullable BigFraction to,
            BigFraction costPerKg) {}

    /** Money per kilogram above the target; negative when there is some to spare. */
    public BigFraction gapPerKg() {
        return best.blend().costPerKg().subtract(targetPerKg);
    }

    /** Whether the cheapest blend costs no more than hoped for. */
    public boolean isMet() {
        return gapPerKg().signum() <= 0;
    }
}
