package panade.bench;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Use;
import panade.plan.Outcome.Blended;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * What to weigh for one batch.
 *
 * @param brief what was weighed for
 * @param best the proved blend that it is rounded from; null where the blend was made for a purchase plan
 * @param lines in the order in which they are weighed
 * @param weighed the blend that the rounded weights make; without lines where nothing can be weighed
 * @param fails limits that the rounded weights break; empty when they meet them all
 * @param plainFails limits that would be broken if each weight were rounded on its own
 * @param fineEnough the coarsest finer scale tried on which every bound is met; null when this one does or none was
 *     found
 * @param endedEarly whether a search ended before it was done, so that better weights may exist
 */
public record BatchSheet(
        Brief brief,
        @Nullable Blended best,
        List<Line> lines,
        Blend weighed,
        List<Fail> fails,
        List<Fail> plainFails,
        @Nullable Quantity fineEnough,
        boolean endedEarly) {
    public BatchSheet {
        plainFails = List.copyOf(plainFails);
        lines = List.copyOf(lines);
        fails = List.copyOf(fails);
    }

    /**
     * A line of the sheet; weights in kilograms. Whatever this weight alone is between its least and its most, others
     * as written, no limit breaks that the sheet keeps, and none that it breaks is broken further; both ends were
     * weighed in exact fractions.
     *
     * @param step of the scale
     * @param least how low this weight alone may be
     * @param most how high; null when there is no end
     */
    public record Line(
            Use use,
            BigFraction exact,
            BigFraction weight,
            Quantity step,
            BigFraction least,
            @Nullable BigFraction most) {}

    /**
     * A limit that is broken: what it comes to and what it asks, in its own unit.
     *
     * @param reaches null where there is nothing to measure
     * @param fixed whether no other number would do, so that it can only be met by chance or on a fine scale
     */
    public record Fail(
            String path, String name, @Nullable BigFraction reaches, BigFraction needs, Unit unit, boolean fixed) {}

    /** Whether every bound is met. */
    public boolean isMet() {
        return fails.isEmpty();
    }

    /** Kilograms in all. */
    public BigFraction total() {
        return lines.stream().map(Line::weight).reduce(BigFraction.ZERO, BigFraction::add);
    }
}
