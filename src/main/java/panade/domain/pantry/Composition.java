package panade.domain.pantry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What each ingredient holds of each property, with the set's and the brief's assumptions applied. A stated value wins,
 * then a sum that the set declares, then what follows from stated values by definition ({@link Derivation}), then what
 * the trait says of what does not state it, then {@code "others": 0}, which speaks of this ingredient, and last what
 * the brief or the set says to assume of any. {@code "others": 0} covers traits too, but no component that cannot be
 * nothing because of what is stated: fat where saturated fat is, energy where there is protein.
 */
public final class Composition {
    private final IngredientSet set;
    private final Map<String, BigFraction> assume;

    // Sums of sums share their parts, which would be added up once for every way that leads to them.
    private final Map<Place, Optional<BigFraction>> sums = new ConcurrentHashMap<>();
    private final Map<Place, Boolean> given = new ConcurrentHashMap<>();
    // Every bound asks again, in every model made of the brief.
    private final Map<String, Map<String, Optional<BigFraction>>> bases = new ConcurrentHashMap<>();

    private record Place(String ingredient, String property) {}

    /** The composition of a set under the brief's own assumptions, which go before the set's. */
    public Composition(IngredientSet set, Map<String, BigFraction> assumedByBrief) {
        this.set = set;
        var merged = new HashMap<>(set.assume());
        merged.putAll(assumedByBrief);
        this.assume = Map.copyOf(merged);
    }

    /** The composition of another set under the same assumptions. */
    public Composition in(IngredientSet other) {
        return new Composition(other, assume);
    }

    /** The property's number in its own unit; empty when it is unknown. */
    public Optional<BigFraction> stated(String ingredientId, String propertyId) {
        var ingredient = set.ingredient(ingredientId);
        var stated = ingredient.values().get(propertyId);
        if (stated != null) {
            return Optional.of(stated);
        }
        var property = set.property(propertyId);
        var summed = property.sum().isEmpty() ? Optional.<BigFraction>empty() : knownSum(ingredientId, property);
        return summed.or(() -> derived(ingredient, property)).or(() -> unstated(ingredient, property));
    }

    /** What an unstated property counts as: none, or what is assumed. */
    private Optional<BigFraction> unstated(Ingredient ingredient, Property property) {
        return Optional.ofNullable(property.absent())
                .or(() -> coveredByOthers(ingredient, property))
                .or(() -> Optional.ofNullable(assume.get(property.id())));
    }

    /**
     * Whether somebody said something of the property, or of what it is a sum of, for the ingredient or for all, and it
     * is not zero only because every component that the ingredient does not name is.
     */
    public boolean isGiven(String ingredientId, String propertyId) {
        var place = new Place(ingredientId, propertyId);
        var known = given.get(place);
        if (known != null) {
            return known;
        }
        var property = set.property(propertyId);
        var ingredient = set.ingredient(ingredientId);
        boolean isGiven = ingredient.values().containsKey(propertyId)
                || property.absent() != null
                || (assume.containsKey(propertyId) && !ingredient.othersAreZero())
                || definition(ingredientId, propertyId).isPresent()
                || property.sum().keySet().stream().anyMatch(part -> isGiven(ingredientId, part));
        given.put(place, isGiven);
        return isGiven;
    }

    private Optional<BigFraction> derived(Ingredient ingredient, Property property) {
        return property.sum().isEmpty()
                ? terms(ingredient, property.id())
                        .map(terms -> Derivation.value(terms, part -> given(ingredient, part)))
                : Optional.empty();
    }

    private Optional<Map<String, BigFraction>> terms(Ingredient ingredient, String propertyId) {
        return Derivation.of(propertyId).stream()
                .flatMap(each -> each.terms(ingredient.values(), part -> given(ingredient, part)).stream())
                .findFirst();
    }

    /** A number that is not worked out from others. */
    private Optional<BigFraction> given(Ingredient ingredient, String propertyId) {
        return Optional.ofNullable(ingredient.values().get(propertyId))
                .or(() -> unstated(ingredient, set.property(propertyId)));
    }

    /**
     * The stated or assumed components that an unstated one follows from by its definition, each with its weight; empty
     * when it is stated, summed by the set, assumed or not known.
     */
    public Optional<Map<String, BigFraction>> definition(String ingredientId, String propertyId) {
        var ingredient = set.ingredient(ingredientId);
        boolean open = !ingredient.values().containsKey(propertyId)
                && set.property(propertyId).sum().isEmpty();
        return open ? terms(ingredient, propertyId) : Optional.empty();
    }

    /** The property per kilogram of ingredient, in the base unit of its dimension; empty when it is unknown. */
    public Optional<BigFraction> base(String ingredientId, String propertyId) {
        var known = bases.computeIfAbsent(propertyId, id -> new ConcurrentHashMap<>());
        var base = known.get(ingredientId);
        if (base == null) {
            var unit = set.property(propertyId).unit();
            base = stated(ingredientId, propertyId).map(number -> number.multiply(unit.factor()));
            known.put(ingredientId, base);
        }
        return base;
    }

    private Optional<BigFraction> knownSum(String ingredientId, Property property) {
        var place = new Place(ingredientId, property.id());
        var known = sums.get(place);
        if (known != null) {
            return known;
        }
        var sum = sum(ingredientId, property);
        sums.put(place, sum);
        return sum;
    }

    private Optional<BigFraction> sum(String ingredientId, Property property) {
        var total = BigFraction.ZERO;
        for (var part : property.sum().entrySet()) {
            var number = stated(ingredientId, part.getKey());
            if (number.isEmpty()) {
                return Optional.empty();
            }
            total = total.add(number.get().multiply(part.getValue()));
        }
        return Optional.of(total);
    }

    private static Optional<BigFraction> coveredByOthers(Ingredient ingredient, Property property) {
        boolean covered = ingredient.othersAreZero()
                && property.sum().isEmpty()
                && !Derivation.isContradicted(property.id(), ingredient.values());
        return covered ? Optional.of(BigFraction.ZERO) : Optional.empty();
    }
}
