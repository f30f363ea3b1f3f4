package panade.result.setting;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;
import panade.result.BriefResult.Status;

/**
 * What numbers that are tried move against the documents as written.
 *
 * @param tried each setting with what it stands in the place of
 * @param moved of each brief that is answered, or of one under each price list
 */
public record SetResult(List<Line> tried, List<Moved> moved) {
    public SetResult {
        tried = List.copyOf(tried);
        moved = List.copyOf(moved);
    }

    /**
     * One number that is tried.
     *
     * @param setting as it was typed
     * @param what people call it: a bound, or an ingredient with its supplier
     * @param of which number of that
     * @param path where it is written
     * @param from what is written there; null where nothing is, or a price
     * @param to what is typed in its place
     * @param fromPerKg the price as written; null where it is none
     * @param perKg the price that is tried; likewise
     */
    public record Line(
            String setting,
            String what,
            Kind of,
            String path,
            @Nullable String from,
            String to,
            @JsonInclude(Include.NON_NULL) @Nullable BigFraction fromPerKg,
            @JsonInclude(Include.NON_NULL) @Nullable BigFraction perKg) {}

    /** Which number is tried. */
    public enum Kind {
        MIN,
        MAX,
        FIXED,
        PRICE,
        AVAILABLE
    }

    /**
     * What moves of the cheapest blend.
     *
     * @param what of which brief, or under which list
     * @param written what the documents come to
     * @param now what they come to with the numbers
     * @param changePerKg of the least cost; null unless there is a blend both ways
     * @param changePerLb the same for a pound
     * @param unique whether no other blend costs as little, both ways; null likewise
     * @param amounts of ingredients that change, the largest change first; null likewise
     * @param starts bounds that bind now and did not; null likewise
     * @param stops bounds that no longer bind; null likewise
     * @param made what moves of a formula; null where none was given
     * @param currency empty where none is stated
     * @param batch as it was written
     * @param cooked whether costs are per cooked weight
     */
    public record Moved(
            String what,
            Least written,
            Least now,
            @Nullable BigFraction changePerKg,
            @Nullable BigFraction changePerLb,
            @Nullable Boolean unique,
            @Nullable List<Amount> amounts,
            @Nullable List<Touched> starts,
            @Nullable List<Touched> stops,
            @JsonInclude(Include.NON_NULL) @Nullable Made made,
            @JsonIgnore String currency,
            @JsonIgnore String batch,
            @JsonIgnore boolean cooked) {}

    /**
     * The least cost of a brief.
     *
     * @param perKg null unless there is a blend
     * @param perLb likewise
     * @param reason why nothing is proved; null unless so
     */
    public record Least(
            Status status,
            @Nullable BigFraction perKg,
            @Nullable BigFraction perLb,
            @JsonInclude(Include.NON_NULL) @Nullable String reason) {}

    /**
     * An ingredient of which the cheapest blend holds more or less, over all stages.
     *
     * @param from share as written
     * @param to share now
     * @param name of it
     * @param kilograms of the batch as written, and now
     */
    public record Amount(
            String ingredient,
            BigFraction from,
            BigFraction to,
            BigFraction change,
            @JsonIgnore String name,
            @JsonIgnore List<BigFraction> kilograms) {}

    /**
     * A bound that begins or ends to bind.
     *
     * @param name as people read it
     * @param side which of its numbers
     */
    public record Touched(String name, String path, Side side) {}

    /**
     * What moves of a formula, whose amounts stay.
     *
     * @param fromPerKg what it costs as written; null where that is not known
     * @param perKg what it costs now; likewise
     * @param breaks names of bounds that it breaks now and did not
     * @param mends names of bounds that it no longer breaks
     */
    public record Made(
            @Nullable BigFraction fromPerKg, @Nullable BigFraction perKg, List<String> breaks, List<String> mends) {}
}
