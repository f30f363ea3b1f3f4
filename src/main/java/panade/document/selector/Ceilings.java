package panade.document.selector;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Bound;
import panade.domain.LimitKind;
import panade.domain.Measure;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IngredientSet;
import panade.quantity.Unit;

/** Makes bounds of the ceilings on use that an ingredient set states. */
public final class Ceilings {
    private Ceilings() {}

    /** The ceilings on what may be used; one on an ingredient covers its other lots together with it. */
    public static List<Bound> of(IngredientSet set, Set<String> candidates) {
        return all(set).stream()
                .filter(ceiling -> ceiling.lots().stream().anyMatch(candidates::contains))
                .map(Ceiling::bound)
                .toList();
    }

    /** A ceiling and the lots that it covers. */
    record Ceiling(Bound bound, Set<String> lots) {}

    /** Every ceiling that a set states. */
    static List<Ceiling> all(IngredientSet set) {
        var ceilings = new ArrayList<Ceiling>();
        int index = 0;
        for (var ingredient : set.ingredients().values()) {
            if (ingredient.maxUse() != null) {
                var lots = set.withVariants(ingredient.id());
                var bound = ceiling(ingredient, lots, "/ingredients/" + index + "/maxUse");
                ceilings.add(new Ceiling(bound, lots));
            }
            index++;
        }
        return ceilings;
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
