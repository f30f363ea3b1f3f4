package panade.result.formula;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.FullCostResult;
import panade.result.RemarkLine;

/**
 * What a formula costs, holds and breaks, and where its distance from the cheapest blend comes from.
 *
 * @param made the formula
 * @param fullCost null when the brief states nothing beside the ingredients, or what they cost is not known
 * @param rulesBroken each rule that it breaks, in words
 * @param noCheapest why there is no cheapest blend to compare with; null where there is one
 * @param differences what is weighed more or less in the cheapest blend, what makes most of the difference first
 * @param remarks on the documents
 * @param title what the formula is called
 * @param batch what it weighs
 * @param lines what goes in, stage by stage
 * @param broken every bound that it breaks
 * @param kept how many bounds it keeps
 * @param unknown titles of the bounds of which that is not known
 */
public record MadeNow(
        @JsonUnwrapped MadeResult made,
        @JsonInclude(Include.NON_NULL) @Nullable FullCostResult fullCost,
        List<String> rulesBroken,
        @JsonInclude(Include.NON_NULL) @Nullable String noCheapest,
        List<Difference> differences,
        List<RemarkLine> remarks,
        @JsonIgnore String title,
        @JsonIgnore String batch,
        @JsonIgnore List<Named> lines,
        @JsonIgnore List<Broken> broken,
        @JsonIgnore int kept,
        @JsonIgnore List<String> unknown) {
    public MadeNow {
        rulesBroken = List.copyOf(rulesBroken);
        differences = List.copyOf(differences);
        remarks = List.copyOf(remarks);
        lines = List.copyOf(lines);
        broken = List.copyOf(broken);
        unknown = List.copyOf(unknown);
    }

    /**
     * An ingredient of which the cheapest blend takes more or less, over all stages.
     *
     * @param grams in the batch as it is made
     * @param cheapestGrams in as much of the cheapest blend
     * @param costPerKg how much more is paid for it in the cheapest blend, in money per kilogram of batch; null where
     *     nobody sells it
     */
    public record Difference(
            String ingredient,
            BigFraction grams,
            BigFraction cheapestGrams,
            @Nullable BigFraction costPerKg,
            @JsonIgnore String name) {}

    /** A line as people read it; {@code costShare} of all that is paid, null where that is not known. */
    public record Named(
            String stage,
            String name,
            String supplier,
            BigFraction kilograms,
            BigFraction share,
            @Nullable BigFraction costShare) {}

    /**
     * A bound that is broken, in its unit.
     *
     * @param limit the number that is not kept
     * @param least whether that is its least
     */
    public record Broken(String title, BigFraction value, BigFraction limit, boolean least, String unit) {}
}
