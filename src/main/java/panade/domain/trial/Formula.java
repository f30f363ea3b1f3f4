package panade.domain.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.domain.Use;

/**
 * What is made of a brief's product.
 *
 * @param title what the document calls it, or else its file
 * @param brief in the batch that is made
 * @param weighed what goes in; more than nothing in all
 * @param suppliers what part of each line is whose goods, together one; no name stands for whoever is cheapest
 */
public record Formula(String title, Brief brief, Weighed weighed, Map<Use, Map<String, BigFraction>> suppliers) {
    public Formula {
        suppliers = Map.copyOf(suppliers);
        if (weighed.total().signum() <= 0) {
            throw new IllegalArgumentException("a formula weighs something");
        }
    }

    /** What one kilogram weighed is of the whole. */
    public BigFraction perKg() {
        return BigFraction.ONE.divide(weighed.total());
    }

    /** The share of each line that weighs anything; they sum to one. */
    public Map<Use, BigFraction> shares() {
        var shares = new LinkedHashMap<Use, BigFraction>();
        weighed.kilograms().forEach((use, kilograms) -> {
            if (kilograms.signum() > 0) {
                shares.put(use, kilograms.multiply(perKg()));
            }
        });
        return shares;
    }
}
