package panade.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.pantry.Composition;
import panade.domain.purchase.OfferId;

/**
 * What a blend comes to, added up line by line with the ingredients' own values: by place, by ingredient and by offer.
 * All amounts are per kilogram of batch.
 */
final class Ledger {
    private final Composition composition;
    private final CookedValues cooking;
    private final List<Blend.Line> lines;
    private final Map<String, BigFraction> byIngredient = new HashMap<>();
    private final Map<OfferId, BigFraction> byOffer = new HashMap<>();

    Ledger(Brief brief, Blend blend) {
        this.composition = brief.composition();
        this.cooking =
                new CookedValues(brief.set(), composition, brief.practice().cookingLoss());
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
        return total(measure, this::raw);
    }

    /** How much of a measure of the raw batch is left after cooking, in base units. */
    BigFraction cooked(Measure measure) {
        return total(measure, this::cooked);
    }

    /** What the whole batch weighs after cooking. */
    BigFraction cookedWhole() {
        return lines.stream()
                .map(line -> line.share().multiply(cooking.weight(line.use().ingredient())))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    private BigFraction total(Measure measure, BiFunction<Measure.Part, String, BigFraction> perKg) {
        var total = BigFraction.ZERO;
        for (var part : measure.parts()) {
            for (var line : lines) {
                var id = line.use().ingredient();
                var weight = part.ingredients().getOrDefault(id, BigFraction.ZERO);
                boolean there =
                        part.stage() == null || part.stage().equals(line.use().stage());
                if (there && weight.signum() != 0) {
                    total = total.add(weight.multiply(line.share()).multiply(perKg.apply(part, id)));
                }
            }
        }
        return total;
    }

    /** One where plain mass is counted. */
    private BigFraction raw(Measure.Part part, String id) {
        return part.properties().isEmpty()
                ? BigFraction.ONE
                : counted(part, property -> composition.base(id, property).orElseThrow());
    }

    private BigFraction cooked(Measure.Part part, String id) {
        return part.properties().isEmpty() ? cooking.weight(id) : counted(part, property -> cooking.held(id, property));
    }

    private static BigFraction counted(Measure.Part part, Function<String, BigFraction> held) {
        var content = BigFraction.ZERO;
        for (var property : part.properties().entrySet()) {
            content = content.add(property.getValue().multiply(held.apply(property.getKey())));
        }
        return content;
    }
}
