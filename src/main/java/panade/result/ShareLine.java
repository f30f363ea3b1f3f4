package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A line of a blend of which only the share matters.
 *
 * @param ingredient its id
 * @param stage id of the stage it goes into
 * @param supplier whose goods
 * @param share of the batch, kilogram per kilogram
 * @param name of the ingredient
 */
public record ShareLine(
        String ingredient,
        String stage,
        String supplier,
        BigFraction share,
        @JsonIgnore String name) {
    /** The lines of a blend. */
    public static List<ShareLine> of(BlendResult result) {
        return result.blend().stream()
                .map(line -> new ShareLine(line.ingredient(), line.stage(), line.supplier(), line.share(), line.name()))
                .toList();
    }

    /** Share of the batch that an ingredient makes up over all lines. */
    public static BigFraction shareOf(String ingredient, List<ShareLine> lines) {
        return lines.stream()
                .filter(line -> line.ingredient().equals(ingredient))
                .map(ShareLine::share)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }
}
