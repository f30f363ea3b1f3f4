package panade.domain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Origin;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * Keeps a blend true to a printed label by linear bounds: no name outweighs the one before it, the last is there, and
 * nothing else is.
 */
public final class LabelOrder {
    private static final String FIELD = "/sameLabel";
    private static final Quantity NOTHING = Quantity.of(BigFraction.ZERO, Unit.PERCENT, "0 %");
    private static final Quantity A_TRACE = Quantity.parse(Rule.LEAST_USE).orElseThrow();

    private final Brief brief;
    private final List<String> names;
    private final Origin origin;

    private LabelOrder(Brief brief, List<String> names, Origin origin) {
        this.brief = brief;
        this.names = names;
        this.origin = origin;
    }

    /** The brief with bounds that keep the names in their order. */
    public static Brief keep(Brief brief, List<String> names, Origin origin) {
        var order = new LabelOrder(brief, List.copyOf(names), origin);
        var kept = new ArrayList<>(free(brief).bounds());
        kept.addAll(order.bounds());
        var label = new SameLabel(names, null, origin);
        return brief.withBounds(kept).keeping(label);
    }

    /** The brief without bounds that keep a label. */
    public static Brief free(Brief brief) {
        return brief.withBounds(brief.bounds().stream()
                        .filter(bound -> bound.kind() != LimitKind.LABEL)
                        .toList())
                .keeping(null);
    }

    private List<Bound> bounds() {
        var bounds = new ArrayList<Bound>();
        for (int i = 0; i + 1 < names.size(); i++) {
            var name = "label: " + names.get(i) + " over " + names.get(i + 1);
            bounds.add(bound(name, i + 1, weights(Map.of(names.get(i), 1, names.get(i + 1), -1)), NOTHING, null));
        }
        var last = names.get(names.size() - 1);
        bounds.add(bound("label: " + last + " is in it", 0, weights(Map.of(last, 1)), A_TRACE, null));
        var others = others();
        if (!others.isEmpty()) {
            bounds.add(bound("label: nothing else is in it", names.size(), others, null, NOTHING));
        }
        return bounds;
    }

    private Bound bound(
            String name, int place, Map<String, BigFraction> weights, @Nullable Quantity min, @Nullable Quantity max) {
        var part = new Measure.Part(Map.of(), weights, null);
        var measure = new Measure(name, Unit.PERCENT, List.of(part));
        return new Bound(LimitKind.LABEL, name, FIELD + "/" + place, measure, null, min, max, "raw", origin);
    }

    private Map<String, BigFraction> weights(Map<String, Integer> byLabel) {
        var weights = new LinkedHashMap<String, BigFraction>();
        brief.set().ingredients().values().forEach(ingredient -> {
            var weight = byLabel.get(ingredient.label());
            if (weight != null) {
                weights.put(ingredient.id(), BigFraction.of(weight));
            }
        });
        return Map.copyOf(weights);
    }

    private Map<String, BigFraction> others() {
        var weights = new LinkedHashMap<String, BigFraction>();
        var printed = Set.copyOf(names);
        brief.set().ingredients().values().stream()
                .filter(ingredient -> !printed.contains(ingredient.label()))
                .forEach(ingredient -> weights.put(ingredient.id(), BigFraction.ONE));
        return Map.copyOf(weights);
    }
}
