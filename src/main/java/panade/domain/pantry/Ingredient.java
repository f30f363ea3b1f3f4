package panade.domain.pantry;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Origin;
import panade.quantity.Quantity;

/**
 * One thing a kitchen can weigh.
 *
 * @param id its name in documents
 * @param name its name in the kitchen
 * @param label its name on a label
 * @param kinds what it is, in the kitchen's own classes
 * @param values composition and traits as stated, each in its property's own unit, per 100 g for tagnames
 * @param othersAreZero whether every component it does not state is zero
 * @param spread standard deviation of values, same units
 * @param allergens null when unknown, which is not the same as none
 * @param maxUse the supplier's or a regulation's ceiling on its share, null when there is none
 * @param usable what is left after trimming, as a fraction of the weight bought
 * @param variantOf the ingredient whose other lot this is, null when it stands alone
 * @param note free text
 * @param labelling what a label needs to know of it beside
 * @param origin where it was written
 */
public record Ingredient(
        String id,
        String name,
        String label,
        Set<String> kinds,
        Map<String, BigFraction> values,
        boolean othersAreZero,
        Map<String, BigFraction> spread,
        @Nullable Set<String> allergens,
        @Nullable Quantity maxUse,
        BigFraction usable,
        @Nullable String variantOf,
        String note,
        Labelling labelling,
        Origin origin) {

    /** The same thing with some values in the place of its own. */
    public Ingredient holding(Map<String, BigFraction> others) {
        var all = new HashMap<>(values);
        all.putAll(others);
        return new Ingredient(
                id,
                name,
                label,
                kinds,
                Map.copyOf(all),
                othersAreZero,
                spread,
                allergens,
                maxUse,
                usable,
                variantOf,
                note,
                labelling,
                origin);
    }
}
