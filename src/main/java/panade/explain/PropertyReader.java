package panade.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.Explanation.PropertyValue;

/** Reads what a blend holds. */
record PropertyReader(Brief brief, Blend blend) {

    List<PropertyValue> properties() {
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
