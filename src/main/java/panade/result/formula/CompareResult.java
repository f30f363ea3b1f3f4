package panade.result.formula;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.RemarkLine;
import panade.result.formula.MadeResult.Cost;
import panade.result.formula.MadeResult.Line;
import panade.result.formula.MadeResult.Property;

/**
 * Formulas and the cheapest blends of briefs side by side.
 *
 * @param status that they were compared
 * @param items in the order in which they were named
 * @param remarks on the documents
 * @param batch of the first, as text: weights and money of all are told for so much
 * @param weights a row for each ingredient in each stage
 * @param bounds a row for each bound that something breaks, or that is not asked alike of all
 * @param holdings a row for each property
 */
public record CompareResult(
        Status status,
        List<Item> items,
        List<RemarkLine> remarks,
        @JsonIgnore String batch,
        @JsonIgnore List<WeightRow> weights,
        @JsonIgnore List<BoundRow> bounds,
        @JsonIgnore List<HoldingRow> holdings) {
    public CompareResult {
        items = List.copyOf(items);
        remarks = List.copyOf(remarks);
        weights = List.copyOf(weights);
        bounds = List.copyOf(bounds);
        holdings = List.copyOf(holdings);
    }

    /** That things were laid side by side. */
    public enum Status {
        COMPARED
    }

    /** What is laid beside others. */
    public enum Kind {
        /** As it is made. */
        FORMULA,
        /** The cheapest blend of a brief. */
        CHEAPEST
    }

    /**
     * One of the things.
     *
     * @param name the letter that stands for it
     * @param title what it is called
     * @param file that names it
     * @param measured what it costs and holds; null where there is no blend
     * @param without why there is no blend
     * @param changePerKg how much more it costs than the first; null where that is not known or is other money
     * @param rulesBroken each rule that it breaks, in words
     * @param label what stands on its label; null where there is no blend
     * @param sameBatchCost money for as much as the first makes; null where that is not known
     * @param asked how many bounds its brief has
     * @param broken how many of them it breaks
     * @param notKnown how many of them could not be measured
     */
    public record Item(
            String name,
            String title,
            Kind kind,
            String file,
            @JsonUnwrapped @Nullable Measured measured,
            @JsonInclude(Include.NON_NULL) @Nullable String without,
            @Nullable BigFraction changePerKg,
            List<String> rulesBroken,
            @Nullable Label label,
            @JsonIgnore @Nullable BigFraction sameBatchCost,
            @JsonIgnore int asked,
            @JsonIgnore int broken,
            @JsonIgnore int notKnown) {
        public Item {
            rulesBroken = List.copyOf(rulesBroken);
        }
    }

    /**
     * What a thing costs and holds, as {@code made} tells it.
     *
     * @param unsold names of what no list sells; what is paid in all is not known where there are any
     */
    public record Measured(
            Cost cost,
            List<Line> blend,
            List<MadeResult.Bound> bounds,
            List<Property> properties,
            List<String> unsold) {
        public Measured {
            blend = List.copyOf(blend);
            bounds = List.copyOf(bounds);
            properties = List.copyOf(properties);
            unsold = List.copyOf(unsold);
        }
    }

    /**
     * What stands on a label.
     *
     * @param names in descending order by weight
     * @param allergens in the ingredient set's words
     * @param allergensNotKnown names of ingredients of which nobody can tell what they carry
     * @param added names that the first has not
     * @param gone names that only the first has
     * @param reordered whether names that both have stand in another order
     */
    public record Label(
            List<String> names,
            List<String> allergens,
            List<String> allergensNotKnown,
            @JsonIgnore List<String> added,
            @JsonIgnore List<String> gone,
            @JsonIgnore boolean reordered) {
        public Label {
            names = List.copyOf(names);
            allergens = List.copyOf(allergens);
            allergensNotKnown = List.copyOf(allergensNotKnown);
            added = List.copyOf(added);
            gone = List.copyOf(gone);
        }
    }

    /** Kilograms of an ingredient in as much of each as the first makes; null where there is no blend. */
    public record WeightRow(String stage, String name, List<@Nullable BigFraction> kilograms) {
        public WeightRow {
            kilograms = Collections.unmodifiableList(new ArrayList<>(kilograms));
        }
    }

    /** A bound as each brief asks it; null where one does not. */
    public record BoundRow(String title, List<@Nullable Asked> of) {
        public BoundRow {
            of = Collections.unmodifiableList(new ArrayList<>(of));
        }
    }

    /**
     * What is asked of one thing, in the bound's unit.
     *
     * @param value null where it is not known, or nothing over nothing
     * @param met null where it is not known
     */
    public record Asked(
            @Nullable BigFraction value,
            @Nullable BigFraction min,
            @Nullable BigFraction max,
            String unit,
            @Nullable Boolean met) {}

    /** What each holds of a property; null where it is not known. */
    public record HoldingRow(String title, String unit, List<@Nullable BigFraction> values) {
        public HoldingRow {
            values = Collections.unmodifiableList(new ArrayList<>(values));
        }
    }
}
