package panade.result.formula;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.LabelChangeResult;
import panade.result.RemarkLine;
import panade.result.ShareLine;

/**
 * What changing a formula comes to.
 *
 * @param from what is made now
 * @param path the least cost over the weight moved, in rising order; where the formula breaks a bound, it comes first
 *     by itself
 * @param straight whether the cost is proved to run straight between the points that meet every bound
 * @param few the best blends with few ingredients changed
 * @param kept names of what was asked to stay as it is
 * @param homeless names of what must go: nobody sells it, or the brief has no place for it
 * @param title of the formula
 * @param batch what is made at once, as text
 * @param kilograms the same
 * @param broken titles of bounds that the formula breaks
 * @param otherFaults what else is wrong with it, in words that go on from "it"
 * @param remarks on the documents
 * @param boughtCheapest what a kilogram of it costs where every ingredient is bought from the cheapest
 */
public record NudgeResult(
        MadeResult from,
        List<Point> path,
        boolean straight,
        List<Few> few,
        List<RemarkLine> remarks,
        @JsonIgnore List<String> kept,
        @JsonIgnore List<String> homeless,
        @JsonIgnore String title,
        @JsonIgnore String batch,
        @JsonIgnore BigFraction kilograms,
        @JsonIgnore List<String> broken,
        @JsonIgnore List<String> otherFaults,
        @JsonIgnore BigFraction boughtCheapest) {
    public NudgeResult {
        path = List.copyOf(path);
        few = List.copyOf(few);
        remarks = List.copyOf(remarks);
        kept = List.copyOf(kept);
        homeless = List.copyOf(homeless);
        broken = List.copyOf(broken);
        otherFaults = List.copyOf(otherFaults);
    }

    /**
     * A place on the path.
     *
     * @param moved half the sum of the absolute changes of shares
     * @param met whether every bound and rule is kept
     */
    public record Point(BigFraction moved, BigFraction costPerKg, List<ShareLine> blend, boolean met) {
        public Point {
            blend = List.copyOf(blend);
        }
    }

    /**
     * The best blend with at most so many ingredients changed; without one, either none exists or that is not decided.
     *
     * @param changes how many at most
     * @param costPerKg of the blend, changed by whole steps of the scale where that was found; null without a blend
     * @param leastPerKg what no blend with so many changes goes below; null without a blend
     * @param changed ids of what weighs something else
     * @param proved whether the cheapest at any weights is known, or that there is none
     * @param weighed whether all changes are whole steps of the scale
     * @param undecided why nothing is known; null where something is
     * @param label what changes on the label; null without a blend
     * @param amounts what weighs something else, by the size of the change
     * @param mended titles of bounds that the formula breaks and the blend keeps
     * @param binding titles of bounds at a limit with the blend, or within half a per cent of it, and not before
     */
    public record Few(
            int changes,
            @Nullable BigFraction costPerKg,
            @Nullable BigFraction leastPerKg,
            List<String> changed,
            List<ShareLine> blend,
            boolean proved,
            boolean weighed,
            @JsonInclude(Include.NON_NULL) @Nullable String undecided,
            @JsonInclude(Include.NON_NULL) @Nullable LabelChangeResult label,
            @JsonIgnore List<Amount> amounts,
            @JsonIgnore List<String> mended,
            @JsonIgnore List<String> binding) {
        public Few {
            changed = List.copyOf(changed);
            blend = List.copyOf(blend);
            amounts = List.copyOf(amounts);
            mended = List.copyOf(mended);
            binding = List.copyOf(binding);
        }
    }

    /** Kilograms in the batch that a line weighs more or less: the ingredient by name, the stage by title. */
    public record Amount(String name, String stage, BigFraction change) {}
}
