package panade.result.trial;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.RemarkLine;

/**
 * How often a blend that is sure of some bounds keeps them when what its ingredients hold is drawn at random.
 *
 * @param seed that gives the same draws again
 * @param values how many values vary
 * @param all draws in which every bound was kept
 * @param bounds those that what ingredients hold can break, in the brief's order
 * @param notDrawn names of bounds on what trials taught: what is not known cannot be drawn
 * @param remarks on the brief
 * @param title the product's
 */
public record HeldResult(
        int draws,
        long seed,
        int values,
        int all,
        List<HeldBound> bounds,
        List<String> notDrawn,
        List<RemarkLine> remarks,
        @JsonIgnore String title) {
    public HeldResult {
        bounds = List.copyOf(bounds);
        notDrawn = List.copyOf(notDrawn);
        remarks = List.copyOf(remarks);
    }

    /**
     * A bound.
     *
     * @param path JSON Pointer into {@code file}
     * @param sure the share of batches in which it is to hold; null where contents are taken as stated
     * @param held draws in which it did
     */
    public record HeldBound(
            String name, String path, String file, @Nullable BigFraction sure, int held) {}
}
