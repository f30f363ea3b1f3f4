package panade.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict.Optimum;
import panade.certify.sensitivity.Sensitivity;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.explain.Explanation.PropertyValue;

/** Reads a proved optimum back in the brief's own words and units. */
public final class Explainer {
    /** How far below its entering price an unused ingredient is imagined when its saving is told. */
    public static final BigFraction SAVING_TEST_DISCOUNT = BigFraction.of(5, 100);

    private final Brief brief;
    private final Blend blend;
    private final Sensitivity sensitivity;

    private Explainer(Brief brief, Blend blend, Optimum optimum) {
        this.brief = brief;
        this.blend = blend;
        this.sensitivity = new Sensitivity(optimum);
    }

    /** The explanation of a blend. */
    public static Explanation explain(Brief brief, CompiledBrief compiled, Blend blend, Optimum optimum) {
        var explainer = new Explainer(brief, blend, optimum);
        boolean unique = explainer.sensitivity.isUnique();
        var limits = new LimitReader(brief, compiled, blend, explainer.sensitivity, unique).limits();
        var prices = new PriceReader(brief, compiled, blend, explainer.sensitivity);
        return new Explanation(limits, prices.used(), prices.unused(), explainer.properties(), unique);
    }

    /** How one number of a bound stands at a blend, without the rest of the explanation. */
    public static Explanation.SideReading number(
            Brief brief, CompiledBrief compiled, Blend blend, Optimum optimum, Bound bound, Side side) {
        var sensitivity = new Sensitivity(optimum);
        return new LimitReader(brief, compiled, blend, sensitivity, sensitivity.isUnique()).number(bound, side);
    }

    private List<PropertyValue> properties() {
        var used = new TreeSet<String>();
        blend.lines().forEach(line -> used.add(line.use().ingredient()));
        var values = new ArrayList<PropertyValue>();
        for (var property : brief.set().properties().values()) {
            if (isWorthTelling(property.id(), used)) {
                values.add(new PropertyValue(property.id(), property.title(), property.unit(), mean(property.id())));
            }
        }
        return values;
    }

    /** Whether a bound counts it, or somebody said something of it for what is in the blend. */
    private boolean isWorthTelling(String property, Set<String> used) {
        return bounded().anyMatch(property::equals)
                || used.stream().anyMatch(id -> brief.composition().isGiven(id, property));
    }

    private Stream<String> bounded() {
        return brief.bounds().stream()
                .flatMap(bound -> Stream.of(Optional.of(bound.of()), Optional.ofNullable(bound.per())))
                .flatMap(Optional::stream)
                .flatMap(measure -> measure.parts().stream())
                .flatMap(part -> part.properties().keySet().stream());
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
