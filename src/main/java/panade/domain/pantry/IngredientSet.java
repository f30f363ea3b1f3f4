package panade.domain.pantry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A pantry: ingredients by id, the properties they may have by id, and what to assume of unstated components.
 *
 * @param title the pantry's name
 * @param source where its values come from
 * @param assume value of a component that an ingredient leaves out, in the component's unit
 * @param properties all INFOODS components and the set's own traits
 * @param ingredients in the order of the document
 */
public record IngredientSet(
        String title,
        String source,
        Map<String, BigFraction> assume,
        Map<String, Property> properties,
        Map<String, Ingredient> ingredients) {

    /**
     * By how much a value of an ingredient differs from lot to lot.
     *
     * @param width its standard deviation, in the property's unit, above zero
     */
    public record Spread(String ingredient, String property, BigFraction width) {}

    /** What varies of some ingredients, by id and property. */
    public List<Spread> spreads(Collection<String> ids) {
        return ids.stream()
                .sorted()
                .flatMap(id -> new TreeMap<>(ingredient(id).spread())
                        .entrySet().stream()
                                .map(spread -> new Spread(id, spread.getKey(), spread.getValue()))
                                .filter(spread -> spread.width().signum() > 0))
                .toList();
    }

    /** The pantry with some values, by ingredient and property, in the place of its own. */
    public IngredientSet holding(Map<String, Map<String, BigFraction>> others) {
        var all = new LinkedHashMap<>(ingredients);
        others.forEach((id, values) -> all.put(id, ingredient(id).holding(values)));
        return new IngredientSet(title, source, assume, properties, all);
    }

    /** The ingredient and every other lot of it, however many steps away. */
    public Set<String> withVariants(String id) {
        var lots = new HashMap<String, List<String>>();
        for (var ingredient : ingredients.values()) {
            if (ingredient.variantOf() != null) {
                lots.computeIfAbsent(ingredient.variantOf(), parent -> new ArrayList<>())
                        .add(ingredient.id());
            }
        }
        var named = new LinkedHashSet<String>();
        var open = new ArrayDeque<>(List.of(id));
        while (!open.isEmpty()) {
            var next = open.remove();
            if (named.add(next)) {
                open.addAll(lots.getOrDefault(next, List.of()));
            }
        }
        return named;
    }

    /**
     * The id of the ingredient that is meant by an id or by a name that only one ingredient has, in any case of its
     * letters; empty where there is none, or several.
     */
    public Optional<String> idOf(String idOrName) {
        var called = called(idOrName);
        return called.size() == 1 ? Optional.of(called.get(0)) : Optional.empty();
    }

    /**
     * The one ingredient with that id, or else all with that name, in any case of its letters; ids are compared
     * exactly.
     */
    public List<String> called(String idOrName) {
        if (ingredients.containsKey(idOrName)) {
            return List.of(idOrName);
        }
        var name = idOrName.strip();
        return ingredients.values().stream()
                .filter(ingredient -> !ingredient.name().equals(ingredient.id())
                        && ingredient.name().equalsIgnoreCase(name))
                .map(Ingredient::id)
                .toList();
    }

    /** Ids of all ingredients that are of that kind. */
    public Set<String> ofKind(String kind) {
        var ids = new LinkedHashSet<String>();
        ingredients.values().stream()
                .filter(ingredient -> ingredient.kinds().contains(kind))
                .forEach(ingredient -> ids.add(ingredient.id()));
        return ids;
    }

    /** The ingredient with that id, which must exist. */
    public Ingredient ingredient(String id) {
        return known(ingredients.get(id), id);
    }

    /** The property with that id, which must exist. */
    public Property property(String id) {
        return known(properties.get(id), id);
    }

    private static <T> T known(@Nullable T found, String id) {
        if (found == null) {
            throw new IllegalArgumentException("not in the ingredient set: " + id);
        }
        return found;
    }
}
