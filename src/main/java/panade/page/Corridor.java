package panade.page;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;
import panade.quantity.Fractions;
import panade.result.BoundResult;

/**
 * A bound drawn as a corridor from its floor to its ceiling, in per cent of the drawing's width. Floors stand under
 * each other and so do ceilings, whatever their units, so that a column of corridors is read at a glance.
 *
 * @param floor where the left wall is; null when that side is open
 * @param ceiling where the right wall is; null when that side is open
 * @param from where the corridor begins
 * @param width how wide it is
 * @param mark where the value is; null when there is none
 * @param touching whether the value is at a wall
 */
public record Corridor(
        @Nullable String floor,
        @Nullable String ceiling,
        String from,
        String width,
        @Nullable String mark,
        boolean touching) {
    private static final BigFraction FLOOR = BigFraction.of(20);
    private static final BigFraction CEILING = BigFraction.of(80);
    private static final BigFraction SPAN = CEILING.subtract(FLOOR);
    private static final BigFraction MIDDLE = BigFraction.of(50);
    private static final BigFraction END = BigFraction.of(100);

    /** The corridor of a bound. */
    public static Corridor of(BoundResult limit) {
        var min = limit.min();
        var max = limit.max();
        boolean touching = limit.binding() != null;
        if (min != null && min.equals(max)) {
            return new Corridor(text(MIDDLE), text(MIDDLE), text(MIDDLE), "0", text(MIDDLE), touching);
        }
        var left = min == null ? BigFraction.ZERO : FLOOR;
        var right = max == null ? END : CEILING;
        var value = limit.value();
        return new Corridor(
                min == null ? null : text(FLOOR),
                max == null ? null : text(CEILING),
                text(left),
                text(right.subtract(left)),
                value == null ? null : text(mark(value, min, max)),
                touching);
    }

    private static BigFraction mark(BigFraction value, @Nullable BigFraction min, @Nullable BigFraction max) {
        if (min != null && max != null) {
            return FLOOR.add(SPAN.multiply(value.subtract(min)).divide(max.subtract(min)));
        }
        if (min != null) {
            var above = value.subtract(min);
            return FLOOR.add(SPAN.multiply(above).divide(scale(min, above)));
        }
        return max == null ? MIDDLE : below(value, max);
    }

    /** Under a ceiling alone: from nothing at the left edge where nothing is the least there can be. */
    private static BigFraction below(BigFraction value, BigFraction max) {
        if (value.signum() >= 0 && max.signum() > 0) {
            return CEILING.multiply(value).divide(max);
        }
        var under = max.subtract(value);
        return CEILING.subtract(CEILING.multiply(under).divide(scale(max, under)));
    }

    /**
     * What is drawn as wide as a corridor with two walls: the limit itself, or the distance to it when that is more.
     */
    private static BigFraction scale(BigFraction limit, BigFraction distance) {
        var size = Fractions.max(limit.abs(), distance);
        return size.signum() == 0 ? BigFraction.ONE : size;
    }

    private static String text(BigFraction percent) {
        return Decimal.round(percent, 2).toPlainString();
    }
}
