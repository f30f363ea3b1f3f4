package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.BlendResult.Allergens;

/**
 * What to weigh for one batch.
 *
 * @param trial what is filled in where the batch is one of trials; null where it is not
 * @param remarks on the brief
 */
public record BatchResult(
        @JsonUnwrapped Sheet sheet,
        @JsonInclude(Include.NON_NULL) @Nullable Trial trial,
        List<RemarkLine> remarks) {
    public BatchResult {
        remarks = List.copyOf(remarks);
    }

    /** The same batch as one of trials. */
    public BatchResult as(@Nullable Trial other) {
        return new BatchResult(sheet, other, remarks);
    }

    /**
     * A trial to be made.
     *
     * @param code three digits that tell a taster nothing
     * @param blanks figures to be taken
     * @param settings of the process that trials differ in, to be noted
     */
    public record Trial(String id, int code, List<Blank> blanks, List<String> settings) {
        public Trial {
            blanks = List.copyOf(blanks);
            settings = List.copyOf(settings);
        }
    }

    /**
     * A figure to be taken.
     *
     * @param response what is measured
     * @param unit empty for scores
     * @param scale from where to where, such as {@code 1 to 9}; empty where it has no ends
     * @param by the taster; empty for what is measured with something that has no taste
     */
    public record Blank(String response, String unit, String scale, String by) {}

    /**
     * A bench sheet; weights in grams.
     *
     * @param lines in the order in which they are weighed, those that come to nothing on this scale among them
     * @param met whether every bound is met
     * @param fails limits that the rounded weights break
     * @param plainFails limits that would be broken if each weight were rounded on its own
     * @param fineEnough the coarsest finer scale tried on which every bound is met; null when this one does or none was
     *     found
     * @param endedEarly whether a search ended before it was done, so that better weights may exist
     * @param costPerKg money per kilogram as weighed in
     * @param best the proved blend that the weights are rounded from; null where a plan made the blend, or where it was
     *     not asked for
     * @param title the product's
     * @param batch its weight as it was written
     * @param currency empty where none is stated
     * @param stages those in which something is weighed, in the brief's order
     * @param allergens what the weighed blend carries
     */
    public record Sheet(
            List<Line> lines,
            BigFraction total,
            boolean met,
            List<Fail> fails,
            List<Fail> plainFails,
            @Nullable String fineEnough,
            boolean endedEarly,
            BigFraction costPerKg,
            @JsonInclude(Include.NON_NULL) @Nullable BlendResult best,
            @JsonIgnore String title,
            @JsonIgnore String batch,
            @JsonIgnore String currency,
            @JsonIgnore List<Stage> stages,
            @JsonIgnore Allergens allergens) {
        public Sheet {
            lines = List.copyOf(lines);
            fails = List.copyOf(fails);
            plainFails = List.copyOf(plainFails);
            stages = List.copyOf(stages);
        }

        /** Whether only fixed numbers are missed, if any. */
        public boolean isNear() {
            return fails.stream().allMatch(Fail::fixed);
        }
    }

    /**
     * A line of the sheet; weights in grams. While this weight alone is between its least and its most, no bound breaks
     * that the sheet keeps.
     *
     * @param ingredient its id
     * @param stage id of the stage
     * @param least how low this weight may be, rounded up
     * @param most how high, rounded down; null when there is no end
     * @param exact before it was rounded to the scale
     * @param step of the scale, as it was written
     * @param name of the ingredient
     * @param lowest as {@code least}, exact
     * @param highest as {@code most}, exact
     * @param stepGrams the step's weight
     * @param inOunces whether the scale shows ounces or pounds
     */
    public record Line(
            String stage,
            String ingredient,
            BigFraction grams,
            BigFraction least,
            @Nullable BigFraction most,
            BigFraction exact,
            String step,
            @JsonIgnore String name,
            @JsonIgnore BigFraction lowest,
            @JsonIgnore @Nullable BigFraction highest,
            @JsonIgnore BigFraction stepGrams,
            @JsonIgnore boolean inOunces) {
        /** How far the weight is from the exact one, as a part of that. */
        public BigFraction off() {
            return grams.subtract(exact).divide(exact);
        }

        /** Whether no other weight will do. */
        public boolean isTight() {
            return lowest.equals(grams) && grams.equals(highest);
        }
    }

    /**
     * What is weighed in a stage.
     *
     * @param total grams
     * @param lines those that come to something
     * @param method what to do, step by step
     */
    public record Stage(String title, BigFraction total, List<Line> lines, List<String> method) {
        public Stage {
            lines = List.copyOf(lines);
            method = List.copyOf(method);
        }
    }

    /**
     * A limit that is broken, in its own unit.
     *
     * @param reaches what it comes to; null where there is nothing to measure
     * @param needs what it asks
     * @param unit empty where the numbers have none
     * @param fixed whether no other number would do, so that it can only be met by chance or on a fine scale
     */
    public record Fail(
            String path, String name, @Nullable BigFraction reaches, BigFraction needs, String unit, boolean fixed) {}

    /**
     * The bench sheet of a product in a purchase plan.
     *
     * @param period when it is made; empty when there is only one
     * @param product its title
     * @param batch the sheet's weight as it was written
     * @param batches of the sheet that the plan makes
     * @param amount that the plan makes, as it was asked for
     * @param remarks on the brief
     */
    public record Planned(
            String period,
            String product,
            String batch,
            BigFraction batches,
            @JsonUnwrapped Sheet sheet,
            @JsonIgnore String amount,
            @JsonIgnore List<RemarkLine> remarks) {
        public Planned {
            remarks = List.copyOf(remarks);
        }
    }
}
