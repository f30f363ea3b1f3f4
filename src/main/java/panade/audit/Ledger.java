package panade.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Composition;
import panade.domain.Measure;
import panade.domain.OfferId;

/**
 * What a blend comes to, added up line by line with the ingredients' own values: by place, by ingredient and by offer.
 * All amounts are per kilogram of batch.
 */
final class Ledger {
    private final Composition composition;
    private final List<Blend.Line> lines;
    private final Map<String, BigFraction> byIngredient = new HashMap<>();
    private final Map<OfferId, BigFraction> byOffer = new HashMap<>();

    Ledger(Composition composition, Blend blend) {
        this.composition = composition;
        this.lines = blend.lines();
        for (var line : lines) {
            byIngredient.merge(line.use().ingredient(), line.share(), BigFraction::add);
            byOffer.merge(line.offer().id(), line.share(), BigFraction::add);
        }
    }

    /** All lines together. */
    BigFraction whole() {
        return lines.stream().map(Blend.Line::share).reduce(BigFraction.ZERO, BigFraction::add);
    }

    BigFraction ofIngredient(String id) {
        return byIngredient.getOrDefault(id, BigFraction.ZERO);
    }

    BigFraction ofOffer(OfferId id) {
        return byOffer.getOrDefault(id, BigFraction.ZERO);
    }

    BigFraction at(String ingredient, String stage) {
        return lines.stream()
                .filter(line -> line.use().ingredient().equals(ingredient)
                        && line.use().stage().equals(stage))
                .map(Blend.Line::share)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** How much there is of a measure, in base units. */
    BigFraction of(Measure measure) {
        return measure.parts().stream().map(this::of).reduce(BigFraction.ZERO, BigFraction::add);
    }

    private BigFraction of(Measure.Part part) {
        var total = BigFraction.ZERO;
        for (var line : lines) {
            var weight = part.ingredients().get(line.use().ingredient());
            boolean there =
                    part.stage() == null || part.stage().equals(line.use().stage());
            if (there && weight != null && weight.signum() != 0) {
                total = total.add(weight.multiply(line.share()).multiply(perKg(part, line)));
            }
        }
        return total;
    }

    /** One where plain mass is counted. */
    private BigFraction perKg(Measure.Part part, Blend.Line line) {
        if (part.properties().isEmpty()) {
            return BigFraction.ONE;
        }
        var content = BigFraction.ZERO;
        for (var counted : part.properties().entrySet()) {
            var held =
                    composition.base(line.use().ingredient(), counted.getKey()).orElseThrow();
            content = content.add(counted.getValue().multiply(held));
        }
        return content;
    }
}
