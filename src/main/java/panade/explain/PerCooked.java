package panade.explain;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.model.LinearForm;

/**
 * What turns rates on the raw batch into rates on a cost per cooked weight: at the optimum the model's costs are raw
 * costs less that cost for each cooked kilogram, and what the optimum gains or loses is shared by its cooked weight.
 *
 * @param form cooked weight by column
 * @param cost money per cooked kilogram at the optimum
 * @param weight cooked kilograms of the optimum per kilogram of batch
 */
record PerCooked(LinearForm form, BigFraction cost, BigFraction weight) {
    /** Empty when cost is counted per raw weight. */
    static Optional<PerCooked> of(Brief brief, CompiledBrief compiled, Blend blend) {
        var cooked = brief.practice().cookedWeight();
        return !brief.practice().perCooked() || cooked == null
                ? Optional.empty()
                : Optional.of(
                        new PerCooked(compiled.formOf(cooked, brief.composition()), blend.costPerKg(), blend.weight()));
    }

    /** The cooked weight at a point. */
    BigFraction weightAt(List<BigFraction> point) {
        return form.dot(point);
    }
}
