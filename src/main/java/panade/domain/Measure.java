package panade.domain;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.pantry.Composition;
import panade.quantity.Unit;

/**
 * Something that can be read off a batch and grows with the amounts in it: the mass of some ingredients, or what they
 * bring of some properties.
 *
 * @param name what an unnamed bound on it is called, such as {@code NA+K}
 * @param unit the unit it is naturally told in; its dimension says how it is measured
 * @param parts added up
 */
public record Measure(String name, Unit unit, List<Part> parts) {
    /**
     * A weighted sum over ingredients within one stage or all of them.
     *
     * @param properties weight of each property counted; empty when plain mass is counted
     * @param ingredients weight of each ingredient counted; others count nothing
     * @param stage the only stage looked at; null for all
     */
    public record Part(
            Map<String, BigFraction> properties,
            Map<String, BigFraction> ingredients,
            @Nullable String stage) {
        /** Whether all that is needed of the ingredient in that stage is known. */
        boolean isKnown(Use use, Composition composition) {
            return !reaches(use)
                    || properties.keySet().stream()
                            .allMatch(
                                    id -> composition.base(use.ingredient(), id).isPresent());
        }

        private boolean reaches(Use use) {
            var weight = ingredients.get(use.ingredient());
            return weight != null && weight.signum() != 0 && (stage == null || stage.equals(use.stage()));
        }

        /** The product; mostly the weight is one, and multiplying fractions takes a while. */
        private static BigFraction times(BigFraction weight, BigFraction value) {
            return weight.equals(BigFraction.ONE) ? value : weight.multiply(value);
        }

        /** What a kilogram of the ingredient in that stage adds, in base units. */
        BigFraction perKg(Use use, Composition composition) {
            var weight = ingredients.getOrDefault(use.ingredient(), BigFraction.ZERO);
            boolean seen = stage == null || stage.equals(use.stage());
            if (!seen || weight.signum() == 0 || properties.isEmpty()) {
                return seen ? weight : BigFraction.ZERO;
            }
            BigFraction content = null;
            for (var property : properties.entrySet()) {
                var value =
                        composition.base(use.ingredient(), property.getKey()).orElseThrow();
                var part = times(property.getValue(), value);
                content = content == null ? part : content.add(part);
            }
            return times(weight, Objects.requireNonNull(content));
        }
    }

    /** What a kilogram of the ingredient in that stage adds, in base units; every value needed must be known. */
    public BigFraction perKg(Use use, Composition composition) {
        var total = BigFraction.ZERO;
        for (var part : parts) {
            var own = part.perKg(use, composition);
            total = total.signum() == 0 ? own : total.add(own);
        }
        return total;
    }

    /** Whether all that is needed of the ingredient in that stage is known. */
    public boolean isKnown(Use use, Composition composition) {
        return parts.stream().allMatch(part -> part.isKnown(use, composition));
    }
}
