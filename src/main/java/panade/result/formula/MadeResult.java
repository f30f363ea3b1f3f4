package panade.result.formula;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What is made now, at the prices of the brief.
 *
 * @param blend what goes in, stage by stage, heaviest first
 * @param bounds every bound of the brief
 * @param properties what it holds
 * @param cheapest the least cost of the brief
 * @param unsold names of what no list sells; what is paid in all is not known where there are any
 */
public record MadeResult(
        Status status,
        Cost cost,
        List<Line> blend,
        List<Bound> bounds,
        List<Property> properties,
        @Nullable Cheapest cheapest,
        List<String> unsold) {
    public MadeResult {
        blend = List.copyOf(blend);
        bounds = List.copyOf(bounds);
        properties = List.copyOf(properties);
        unsold = List.copyOf(unsold);
    }

    /** That it is a formula's answer. */
    public enum Status {
        MADE
    }

    /**
     * Money; the amounts are null where something is sold by nobody.
     *
     * @param currency null when no document states one
     * @param soldPerKg what is paid per kilogram of batch for all that is sold
     * @param soldBatch the same for the batch
     */
    public record Cost(
            @Nullable String currency,
            @Nullable BigFraction perKg,
            @Nullable BigFraction perLb,
            @Nullable BigFraction batch,
            @JsonIgnore BigFraction soldPerKg,
            @JsonIgnore BigFraction soldBatch) {}

    /**
     * A line as it is made.
     *
     * @param supplier as the formula names it, or else the cheapest; empty where nobody sells it
     * @param cost money in the batch; null where nobody sells it
     */
    public record Line(
            String ingredient,
            String stage,
            String supplier,
            BigFraction share,
            BigFraction grams,
            @Nullable BigFraction cost) {}

    /**
     * A bound, in its unit.
     *
     * @param value null where it is nothing over nothing, or not known of something in the formula
     * @param met null where it is not known
     */
    public record Bound(
            String name,
            String path,
            String unit,
            @Nullable BigFraction value,
            @Nullable BigFraction min,
            @Nullable BigFraction max,
            @Nullable Boolean met) {}

    /**
     * What is held of a property.
     *
     * @param value null where it is not known
     * @param title as people read it
     */
    public record Property(
            String property,
            @Nullable BigFraction value,
            String unit,
            @JsonIgnore String title) {}

    /** The least cost, and how much more that is than is paid now; null where that is not known. */
    public record Cheapest(BigFraction perKg, @Nullable BigFraction changePerKg) {}
}
