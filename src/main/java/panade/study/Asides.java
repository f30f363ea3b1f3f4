package panade.study;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What is told beside a blend because somebody asked.
 *
 * @param ladder the cost at each number of names; null when not asked for
 * @param breakEven null when not asked for
 */
public record Asides(@Nullable Ladder ladder, @Nullable BreakEven breakEven) {
    /** Nothing beside. */
    public static final Asides NONE = new Asides(null, null);

    /**
     * The quantity at which fixed costs are paid.
     *
     * @param fixedMonthly money a month
     * @param pricePerKg what the maker is paid
     */
    public record BreakEven(BigFraction fixedMonthly, BigFraction pricePerKg) {}
}
