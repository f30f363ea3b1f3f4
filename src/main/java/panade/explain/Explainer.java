package panade.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Sensitivity;
import panade.certify.Verdict.Optimum;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Offer;
import panade.explain.Explanation.PropertyValue;
import panade.explain.Explanation.Unused;

/** Reads a proved optimum back in the brief's own words and units. */
public final class Explainer {
    private final Brief brief;
    private final CompiledBrief compiled;
    private final Blend blend;
    private final Sensitivity sensitivity;

    private Explainer(Brief brief, CompiledBrief compiled, Blend blend, Optimum optimum) {
        this.brief = brief;
        this.compiled = compiled;
        this.blend = blend;
        this.sensitivity = new Sensitivity(optimum);
    }

    /** The explanation of a blend. */
    public static Explanation explain(Brief brief, CompiledBrief compiled, Blend blend, Optimum optimum) {
        var explainer = new Explainer(brief, compiled, blend, optimum);
        boolean unique = explainer.sensitivity.isUnique();
        var limits = new LimitReader(brief, compiled, blend, explainer.sensitivity, unique).limits();
        return new Explanation(limits, explainer.unused(), explainer.properties(), unique);
    }

    private List<Unused> unused() {
        return brief.candidates().stream()
                .filter(ingredient -> blend.shareOf(ingredient).signum() == 0)
                .sorted()
                .map(this::unused)
                .toList();
    }

    private Unused unused(String ingredient) {
        var cheapest = brief.offersFor(ingredient).stream()
                .min(Comparator.comparing(Offer::pricePerKg))
                .orElseThrow();
        return new Unused(ingredient, cheapest.supplier(), cheapest.pricePerKg(), entersAt(cheapest));
    }

    private @Nullable BigFraction entersAt(Offer offer) {
        var usable = brief.set().ingredient(offer.ingredient()).usable();
        var weights = new HashMap<Integer, BigFraction>();
        for (int j = 0; j < compiled.columns().size(); j++) {
            if (compiled.columns().get(j).offer().equals(offer)) {
                weights.put(j, usable.reciprocal());
            }
        }
        return sensitivity
                .movingPrice(Map.copyOf(weights), -1)
                .map(turn -> offer.pricePerKg().subtract(turn.by()))
                .filter(price -> price.signum() > 0)
                .orElse(null);
    }

    private List<PropertyValue> properties() {
        var used = new TreeSet<String>();
        blend.lines().forEach(line -> used.add(line.use().ingredient()));
        var values = new ArrayList<PropertyValue>();
        for (var property : brief.set().properties().values()) {
            boolean known = used.stream()
                    .anyMatch(
                            id -> brief.composition().stated(id, property.id()).isPresent());
            if (known) {
                values.add(new PropertyValue(property.id(), property.title(), property.unit(), mean(property.id())));
            }
        }
        return values;
    }

    private @Nullable BigFraction mean(String property) {
        var total = BigFraction.ZERO;
        for (var line : blend.lines()) {
            var stated = brief.composition().stated(line.use().ingredient(), property);
            if (stated.isEmpty()) {
                return null;
            }
            total = total.add(line.share().multiply(stated.get()));
        }
        return total;
    }
}
