package panade.result.formula;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.BatchResult;
import panade.result.RemarkLine;

/**
 * What to weigh for a batch of a formula.
 *
 * @param sheet the bench sheet
 * @param moveAtMost how far a line may move, as written; null for no more than to the next step of the scale
 * @param moved lines that are not weighed in the step nearest to what the formula asks
 * @param brokenAsMade paths of what the sheet breaks and the formula does as well, whatever it is weighed on
 * @param rulesBroken each rule that the weights break, in words
 * @param unsold names of what no list sells; its cost is not counted
 * @param trial what is filled in where the batch is one of trials; null where it is not
 * @param remarks on the documents
 * @param title what the formula is called
 */
public record MadeBatchResult(
        @JsonUnwrapped BatchResult.Sheet sheet,
        @Nullable String moveAtMost,
        List<Moved> moved,
        List<String> brokenAsMade,
        List<String> rulesBroken,
        List<String> unsold,
        @JsonInclude(Include.NON_NULL) BatchResult.@Nullable Trial trial,
        List<RemarkLine> remarks,
        @JsonIgnore String title) {
    public MadeBatchResult {
        moved = List.copyOf(moved);
        brokenAsMade = List.copyOf(brokenAsMade);
        rulesBroken = List.copyOf(rulesBroken);
        unsold = List.copyOf(unsold);
        remarks = List.copyOf(remarks);
    }

    /** The same batch as one of trials. */
    public MadeBatchResult as(BatchResult.@Nullable Trial other) {
        return new MadeBatchResult(sheet, moveAtMost, moved, brokenAsMade, rulesBroken, unsold, other, remarks, title);
    }

    /** What the weights break and the formula keeps. */
    public List<BatchResult.Fail> broken() {
        return sheet.fails().stream()
                .filter(fail -> !brokenAsMade.contains(fail.path()))
                .toList();
    }

    /**
     * A line that is weighed further off than rounding it alone would, in grams.
     *
     * @param exact what the formula asks
     * @param plain the nearest step of the scale
     * @param name of the ingredient
     * @param place title of the stage
     */
    public record Moved(
            String stage,
            String ingredient,
            BigFraction exact,
            BigFraction plain,
            BigFraction grams,
            @JsonIgnore String name,
            @JsonIgnore String place) {}
}
