package panade.result.formula;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.QuotesResult;

/**
 * What keeping a formula costs under several price lists, beside the best blend of each.
 *
 * @param made the formula under each list
 * @param madePooled the formula when every list may be bought from
 * @param broken titles of bounds that it breaks, whatever it costs
 * @param title what the formula is called
 */
public record MadeQuotesResult(
        @JsonUnwrapped QuotesResult quotes,
        List<Kept> made,
        Kept madePooled,
        List<String> broken,
        @JsonIgnore String title) {
    public MadeQuotesResult {
        made = List.copyOf(made);
        broken = List.copyOf(broken);
    }

    /**
     * The formula under one list.
     *
     * @param list its name; empty for all of them together
     * @param perKg what it costs; null where something in it is not sold there
     * @param abovePerKg how much more that is than the best blend costs; null where either is not known
     * @param unsold names of what is not sold there
     * @param best what the best blend costs; null where there is none
     */
    public record Kept(
            String list,
            @Nullable BigFraction perKg,
            @Nullable BigFraction abovePerKg,
            List<String> unsold,
            @JsonIgnore @Nullable BigFraction best) {
        public Kept {
            unsold = List.copyOf(unsold);
        }
    }
}
