package panade.explain.conflict;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.BoundId;
import panade.domain.Side;
import panade.domain.origin.Origin;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * How far one bound's number must move to bring the least cost down to a ceiling.
 *
 * @param bound whose number it is; null for what can be had of an offer
 * @param side which of its numbers moves
 * @param path of the number
 * @param origin where the number is written
 * @param name of the bound
 * @param unit the numbers' unit
 * @param from the number as it stands
 * @param to the number that is enough; null when not even dropping the bound is
 * @param kept the other side of a fixed bound of which only one side moves; null elsewhere
 * @param costPerKg the least cost with that number, or with the bound dropped
 */
public record Move(
        @Nullable BoundId bound,
        Side side,
        String path,
        Origin origin,
        String name,
        Unit unit,
        BigFraction from,
        @Nullable BigFraction to,
        @Nullable Quantity kept,
        BigFraction costPerKg) {}
