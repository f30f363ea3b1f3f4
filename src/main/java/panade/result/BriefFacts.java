package panade.result;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What readers tell of the brief that a result answers.
 *
 * @param title the product's name
 * @param file the brief's path
 * @param priceFiles paths of the price lists, in the order of the offers
 * @param currency empty where none is stated
 * @param batch the weight of the batch as it was written
 * @param batchKg the same in kilograms
 * @param target what a kilogram may cost; null where nothing is stated
 * @param notes what the brief asks to be told
 */
public record BriefFacts(
        String title,
        String file,
        List<String> priceFiles,
        String currency,
        String batch,
        BigFraction batchKg,
        @Nullable Target target,
        List<String> notes) {
    public BriefFacts {
        priceFiles = List.copyOf(priceFiles);
        notes = List.copyOf(notes);
    }

    /**
     * A target cost.
     *
     * @param text as it was written
     * @param perKg money per kilogram, in the basis of the brief
     */
    public record Target(String text, BigFraction perKg) {}
}
