package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Whether a price can be reached, and what must give or what may be had for it.
 *
 * @param met whether the cheapest blend costs no more than hoped for
 * @param gapPerKg money per kilogram above the target; below zero when there is some to spare
 * @param best the cheapest blend
 * @param shelf how the target was worked back from the shelf; null when it was stated
 * @param moves when the target is missed, each bound that holds the cost up, moved alone
 * @param pair when the target is missed, the cheapest two moves together; empty when no two do
 * @param batchKg when the target is missed, the smallest batch that spreads its labour far enough; null when none does
 *     or the target was not worked back from the shelf
 * @param prices when the target is missed, the price of each ingredient in the blend that would do
 * @param atTarget when the target is met, least and most of each property for the money
 * @param undecided what could not be decided in time, in words
 * @param remarks on the documents
 * @param batch {@code batchKg} in whole units of the brief's own
 * @param ranges least and most of the properties that are to be told
 */
public record ReachResult(
        Goal target,
        boolean met,
        BigFraction gapPerKg,
        BlendResult best,
        @JsonInclude(Include.NON_NULL) @Nullable List<ShelfLine> shelf,
        List<Move> moves,
        List<Move> pair,
        @Nullable BigFraction batchKg,
        List<PriceMove> prices,
        List<PropertyEnd> atTarget,
        List<String> undecided,
        List<RemarkLine> remarks,
        @JsonIgnore @Nullable String batch,
        @JsonIgnore List<PropertyRange> ranges) {
    public ReachResult {
        moves = List.copyOf(moves);
        pair = List.copyOf(pair);
        prices = List.copyOf(prices);
        atTarget = List.copyOf(atTarget);
        undecided = List.copyOf(undecided);
        remarks = List.copyOf(remarks);
        ranges = List.copyOf(ranges);
    }

    /** The price hoped for, in money per kilogram. */
    public record Goal(BigFraction perKg) {}

    /**
     * A line of the reckoning from the shelf back to the ingredients.
     *
     * @param part the fraction of the price or of the weight taken; null when money is taken
     * @param takenPerKg money taken off
     * @param leftPerKg money left after it
     */
    public record ShelfLine(
            ShelfStep line, @Nullable BigFraction part, BigFraction takenPerKg, BigFraction leftPerKg) {}

    /** What is taken off. */
    public enum ShelfStep {
        SHELF_PRICE,
        MARGIN,
        LABOUR,
        PACKAGING,
        OVERHEAD,
        PROCESS_LOSS
    }

    /**
     * How far one bound's number must move.
     *
     * @param path JSON Pointer of the number into {@code file}
     * @param name of the bound
     * @param from the number as it stands
     * @param to the number that is enough; null when not even dropping the bound is
     * @param kept the other side of a fixed bound of which only one side moves, in {@code keptUnit}; null elsewhere
     * @param costPerKg the least cost with that number, or with the bound dropped
     * @param label what the move does to the label; null where it cannot do it alone, and in a pair
     */
    public record Move(
            String path,
            String file,
            String name,
            BigFraction from,
            @Nullable BigFraction to,
            String unit,
            @JsonInclude(Include.NON_NULL) @Nullable BigFraction kept,
            @JsonInclude(Include.NON_NULL) @Nullable String keptUnit,
            BigFraction costPerKg,
            @JsonInclude(Include.NON_NULL) @Nullable LabelChangeResult label) {}

    /**
     * A price that would bring the cost down to the target.
     *
     * @param from the price per kilogram now, as bought
     * @param to the price that is enough; null when not even nothing is
     * @param costPerKg the least cost at that price, or at nothing
     * @param name of the ingredient
     */
    public record PriceMove(
            String ingredient,
            String supplier,
            BigFraction from,
            @Nullable BigFraction to,
            BigFraction costPerKg,
            @JsonIgnore String name) {}

    /** How low or how high a property may be had for the money. */
    public record PropertyEnd(String property, Sense sense, BigFraction value, String unit) {}

    /** Which end. */
    public enum Sense {
        MAX,
        MIN
    }

    /**
     * What may be had of a property for the money, in its unit.
     *
     * @param title as people read it
     * @param now what the cheapest blend holds; null where it is not known
     */
    public record PropertyRange(
            String title, @Nullable BigFraction now, BigFraction least, BigFraction most, String unit) {}
}
