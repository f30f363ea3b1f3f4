package panade.domain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Composition;

/**
 * A value of an ingredient that varies from lot to lot, on its own, and with it what is worked out from it, such as
 * energy.
 *
 * @param higher what the ingredients hold where it is one standard deviation higher
 */
public record VaryingValue(String ingredient, String property, Composition higher) {
    /** The values that state a spread, of what a brief may use; where the number itself is unknown, none varies. */
    public static List<VaryingValue> of(Brief brief) {
        var values = new ArrayList<VaryingValue>();
        for (var spread : brief.set().spreads(brief.candidates())) {
            var id = spread.ingredient();
            var property = spread.property();
            brief.composition()
                    .stated(id, property)
                    .map(mean -> brief.set().holding(Map.of(id, Map.of(property, mean.add(spread.width())))))
                    .ifPresent(set -> values.add(
                            new VaryingValue(id, property, brief.composition().in(set))));
        }
        return List.copyOf(values);
    }

    /** What a kilogram of an ingredient in a stage adds to a measure where the value is a standard deviation higher. */
    public BigFraction gain(Measure measure, Use use, Composition stated) {
        return use.ingredient().equals(ingredient)
                ? measure.perKg(use, higher).subtract(measure.perKg(use, stated))
                : BigFraction.ZERO;
    }
}
