package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What a kilogram costs with all that the brief states beside the ingredients, in money.
 *
 * @param ingredientsPerKg per kilogram weighed in
 * @param packedIngredientsPerKg the same per kilogram that gets packed
 * @param labourPerKg per packed kilogram, as the others below
 * @param packedPerKg all in
 * @param yield cooked kilograms per raw kilogram; null when not known
 * @param cookedPerKg all in, per cooked kilogram; null when not known
 * @param perServing all in; null when no serving is stated
 * @param sizes what a packed kilogram costs by size of the batch, at the same blend
 * @param breakEven null when not asked for
 * @param lostPerKg what is lost in making adds to a packed kilogram
 * @param servingKg weight of a serving; null when not stated
 * @param making how a batch is made; null when the brief states no costs
 */
public record FullCostResult(
        BigFraction ingredientsPerKg,
        BigFraction packedIngredientsPerKg,
        BigFraction labourPerKg,
        BigFraction packagingPerKg,
        BigFraction overheadPerKg,
        BigFraction packedPerKg,
        @Nullable BigFraction yield,
        @Nullable BigFraction cookedPerKg,
        @Nullable BigFraction perServing,
        List<Size> sizes,
        @JsonUnwrapped @Nullable BreakEven breakEven,
        @JsonIgnore BigFraction lostPerKg,
        @JsonIgnore @Nullable BigFraction servingKg,
        @JsonIgnore @Nullable Making making) {
    public FullCostResult {
        sizes = List.copyOf(sizes);
    }

    /** What a packed kilogram costs when that much is made at once; the batch as it is written. */
    public record Size(String batch, BigFraction packedPerKg) {}

    /**
     * The quantity at which fixed costs are paid.
     *
     * @param breakEvenKgMonthly kilograms to sell a month; null when each kilogram sold loses money
     * @param fixedMonthly money a month
     * @param pricePerKg what the maker is paid
     */
    public record BreakEven(
            @Nullable BigFraction breakEvenKgMonthly,
            @JsonIgnore BigFraction fixedMonthly,
            @JsonIgnore BigFraction pricePerKg) {}

    /**
     * How a batch is made.
     *
     * @param processLoss share of what is weighed in that is not packed
     * @param minutes of work a batch
     * @param minutesPerLb of work a pound made
     * @param perHour money for an hour of work
     */
    public record Making(BigFraction processLoss, BigFraction minutes, BigFraction minutesPerLb, BigFraction perHour) {}
}
