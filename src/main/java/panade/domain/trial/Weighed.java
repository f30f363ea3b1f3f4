package panade.domain.trial;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Measure;
import panade.domain.Use;
import panade.domain.pantry.Composition;

/**
 * What was weighed into one mixing.
 *
 * @param kilograms of each ingredient in each stage
 */
public record Weighed(Map<Use, BigFraction> kilograms) {
    public Weighed {
        kilograms = Collections.unmodifiableMap(new LinkedHashMap<>(kilograms));
    }

    /** Its weight in kilograms. */
    public BigFraction total() {
        return kilograms.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** How much there is of what is measured, in base units; every value needed must be known. */
    public BigFraction amount(Measure measure, Composition composition) {
        var sum = BigFraction.ZERO;
        for (var each : kilograms.entrySet()) {
            sum = sum.add(each.getValue().multiply(measure.perKg(each.getKey(), composition)));
        }
        return sum;
    }
}
