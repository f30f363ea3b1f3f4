package panade.cost;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What is told beside a blend because somebody asked.
 *
 * @param ladder the cost at each number of names; null when not asked for
 * @param breakEven null when not asked for
 * @param label what a printed label costs; null when none is kept
 */
public record OptionalSections(
        @Nullable Ladder ladder,
        @Nullable BreakEven breakEven,
        @Nullable LabelPrice label) {
    /** Nothing beside. */
    public static final OptionalSections NONE = new OptionalSections(null, null, null);

    /**
     * The quantity at which fixed costs are paid.
     *
     * @param fixedMonthly money a month
     * @param pricePerKg what the maker is paid
     */
    public record BreakEven(BigFraction fixedMonthly, BigFraction pricePerKg) {}
}
