package panade.audit;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Composition;
import panade.domain.pantry.IngredientSet;

/**
 * What is left of a kilogram of an ingredient after cooking, worked out from the losses themselves.
 *
 * @param lose fraction of each component that is lost
 */
record CookedValues(IngredientSet set, Composition composition, Map<String, BigFraction> lose) {
    /** Components whose loss is a loss of weight; the others are parts of one of them. */
    private static final List<String> WEIGHTS =
            List.of("WATER", "PROCNT", "FAT", "CHOCDF", "CHOAVL", "FIBTG", "ASH", "ALC");

    /** Kilograms left. */
    BigFraction weight(String ingredient) {
        var left = BigFraction.ONE;
        for (var component : WEIGHTS) {
            var lost = lose.get(component);
            if (lost != null) {
                left = left.subtract(
                        composition.base(ingredient, component).orElseThrow().multiply(lost));
            }
        }
        return left;
    }

    /** What is left of a property, in base units. */
    BigFraction held(String ingredient, String property) {
        var left = stated(ingredient, property).subtract(lost(ingredient, property));
        return left.multiply(set.property(property).unit().factor());
    }

    /** What is lost of a property, in its own unit: a part of it, or of what it is a sum of. */
    private BigFraction lost(String ingredient, String property) {
        var fraction = lose.getOrDefault(property, BigFraction.ZERO);
        if (fraction.signum() != 0) {
            return stated(ingredient, property).multiply(fraction);
        }
        var total = BigFraction.ZERO;
        for (var part : set.property(property).sum().entrySet()) {
            total = total.add(part.getValue().multiply(lost(ingredient, part.getKey())));
        }
        return total;
    }

    private BigFraction stated(String ingredient, String property) {
        return composition.stated(ingredient, property).orElseThrow();
    }
}
