package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.LimitKind;
import panade.domain.Side;

/**
 * A bound, a ceiling on use or an availability as the blend meets it; all numbers are in {@code unit}.
 *
 * @param name as documents and commands know it
 * @param kind who asks for it
 * @param path JSON Pointer into {@code file}
 * @param unit empty where the numbers have none
 * @param value null when it is nothing over nothing
 * @param min null when there is none
 * @param max null when there is none
 * @param binding the side that binds; null when the bound is idle
 * @param shadowPrice all zero when nothing comes of moving it
 * @param title as people read it
 * @param priced whether a price was worked out at all
 * @param stepCost money per kilogram that a round step of its number moves the cost by, going by the rate
 * @param holdsCostUp whether a small move of its number is worth telling
 * @param sure how sure it is to hold although contents vary; null where they are taken as stated
 * @param moves what round steps of the number do; null where they were not asked for, or it is not touched
 */
public record BoundResult(
        String name,
        LimitKind kind,
        String path,
        String file,
        String unit,
        @Nullable BigFraction value,
        @Nullable BigFraction min,
        @Nullable BigFraction max,
        @Nullable Side binding,
        ShadowPrice shadowPrice,
        @JsonInclude(Include.NON_NULL) @Nullable Sure sure,
        @JsonIgnore String title,
        @JsonIgnore boolean priced,
        @JsonIgnore BigFraction stepCost,
        @JsonIgnore boolean holdsCostUp,
        @JsonIgnore @Nullable Moves moves) {

    /**
     * How sure a bound is to hold; the value is then a mean, and batches are above and below it.
     *
     * @param share of batches in which it holds
     * @param of what it holds for: the next batch, or the mean of many
     * @param trials how many stand behind it; null where it varies with the spreads of the ingredient set
     * @param standardDeviation of the value from batch to batch, or of the mean as far as it is known
     * @param least in that share of batches there is at least so much; null where there is no floor
     * @param most in that share of batches there is at most so much; null where there is no ceiling
     */
    public record Sure(
            BigFraction share,
            Of of,
            @JsonInclude(Include.NON_NULL) @Nullable Integer trials,
            BigFraction standardDeviation,
            @Nullable BigFraction least,
            @Nullable BigFraction most) {}

    /** What is to hold. */
    public enum Of {
        BATCH,
        MEAN
    }

    /**
     * What moving the number by one of its unit does to the least cost, in money per kilogram of batch.
     *
     * @param whenRaised null when no blend exists on that side, or the cost jumps there
     * @param whenLowered null when no blend exists on that side, or the cost jumps there
     * @param from how far the number may be lowered with that rate; null when unlimited or not known
     * @param to how far the number may be raised with that rate; null when unlimited or not known
     * @param jumpWhenRaised by how much the least cost jumps as soon as the number is raised; null when it does not
     * @param jumpWhenLowered the same as soon as it is lowered
     */
    public record ShadowPrice(
            @Nullable BigFraction whenRaised,
            @Nullable BigFraction whenLowered,
            @Nullable BigFraction from,
            @Nullable BigFraction to,
            @JsonInclude(Include.NON_NULL) @Nullable BigFraction jumpWhenRaised,
            @JsonInclude(Include.NON_NULL) @Nullable BigFraction jumpWhenLowered) {}

    /**
     * Round steps of the number, each solved with.
     *
     * @param loosened towards more blends; null where nothing could be proved
     * @param tightened towards fewer; null where nothing could be proved, or where it is the opposite of the other
     * @param dropped money per kilogram that a place on the label costs, which is no number to move; else null
     */
    public record Moves(
            @Nullable Step loosened,
            @Nullable Step tightened,
            @Nullable BigFraction dropped) {}

    /**
     * A step of the number.
     *
     * @param size how far, in the bound's unit; zero where any step does it
     * @param change of the least cost, in money per kilogram; zero where no blend is left
     */
    public record Step(Effect effect, BigFraction size, BigFraction change) {}

    /** What a step does. */
    public enum Effect {
        /** The cost changes by as much with each further step. */
        STEADY,
        /** The cost changes by that much with this step. */
        ONCE,
        /** The cost jumps however small the step. */
        JUMP,
        /** No blend is left. */
        NO_BLEND
    }
}
