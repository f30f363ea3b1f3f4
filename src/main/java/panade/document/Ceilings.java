package panade.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Bound;
import panade.domain.Ingredient;
import panade.domain.IngredientSet;
import panade.domain.LimitKind;
import panade.domain.Measure;
import panade.quantity.Unit;

/** Makes bounds of the ceilings on use that an ingredient set states. */
final class Ceilings {
    private Ceilings() {}

    /** The ceilings on what may be used; one on an ingredient covers its other lots together with it. */
    static List<Bound> of(IngredientSet set, Set<String> candidates) {
        var bounds = new ArrayList<Bound>();
        int index = 0;
        for (var ingredient : set.ingredients().values()) {
            var lots = set.withVariants(ingredient.id());
            if (ingredient.maxUse() != null && lots.stream().anyMatch(candidates::contains)) {
                bounds.add(ceiling(ingredient, lots, "/ingredients/" + index + "/maxUse"));
            }
            index++;
        }
        return bounds;
    }

    private static Bound ceiling(Ingredient ingredient, Set<String> lots, String path) {
        Map<String, BigFraction> weights = new LinkedHashMap<>();
        lots.forEach(id -> weights.put(id, BigFraction.ONE));
        var part = new Measure.Part(Map.of(), Map.copyOf(weights), null);
        var of = new Measure(ingredient.name(), Unit.PERCENT, List.of(part));
        var name = ingredient.id() + " maxUse";
        return new Bound(
                LimitKind.CEILING, name, path, of, null, null, ingredient.maxUse(), "raw", ingredient.origin());
    }
}
