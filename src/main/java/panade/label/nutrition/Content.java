package panade.label.nutrition;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Composition;
import panade.domain.pantry.Ingredient;
import panade.quantity.Decimal;

/** How a line of the panel is worked out from an ingredient's components: as a weighted sum of their numbers. */
public interface Content {
    /** Weights by tagname for an ingredient; empty when a component that is needed is unknown. */
    Optional<Map<String, BigFraction>> form(Ingredient ingredient, Composition composition);

    /** What has to be known, for messages. */
    String needs();

    /** One component as it is. */
    static Content of(String tagname) {
        return of(Map.of(tagname, BigFraction.ONE));
    }

    /** One sum or, where that is not known, another. */
    static Content firstOf(Map<String, BigFraction> sum, Map<String, BigFraction> other) {
        return new FirstOf(List.of(sum, other));
    }

    /** One sum. */
    static Content of(Map<String, BigFraction> sum) {
        return new FirstOf(List.of(sum));
    }

    /** Weights by tagname, written in pairs. */
    static Map<String, BigFraction> sum(String... tagnamesAndWeights) {
        var weights = new HashMap<String, BigFraction>();
        for (int i = 0; i < tagnamesAndWeights.length; i += 2) {
            weights.put(tagnamesAndWeights[i], Decimal.of(tagnamesAndWeights[i + 1]));
        }
        return Map.copyOf(weights);
    }

    /** The value per 100 g of a form whose components are known. */
    static BigFraction value(Map<String, BigFraction> form, Ingredient ingredient, Composition composition) {
        return form.entrySet().stream()
                .map(term -> composition
                        .stated(ingredient.id(), term.getKey())
                        .orElseThrow()
                        .multiply(term.getValue()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** The first of several sums that can be worked out. */
    record FirstOf(List<Map<String, BigFraction>> sums) implements Content {
        @Override
        public Optional<Map<String, BigFraction>> form(Ingredient ingredient, Composition composition) {
            Predicate<String> known =
                    tagname -> composition.stated(ingredient.id(), tagname).isPresent();
            return sums.stream()
                    .filter(sum -> sum.keySet().stream().allMatch(known))
                    .findFirst()
                    .map(sum -> inStated(sum, ingredient, composition));
        }

        /** The same with what follows from other components in their terms, so that each counts, and varies, once. */
        private static Map<String, BigFraction> inStated(
                Map<String, BigFraction> sum, Ingredient ingredient, Composition composition) {
            var terms = new HashMap<String, BigFraction>();
            sum.forEach((tagname, weight) -> composition
                    .definition(ingredient.id(), tagname)
                    .orElse(Map.of(tagname, BigFraction.ONE))
                    .forEach((part, share) -> terms.merge(part, share.multiply(weight), BigFraction::add)));
            terms.values().removeIf(weight -> weight.signum() == 0);
            return Map.copyOf(terms);
        }

        @Override
        public String needs() {
            return String.join(" and ", sums.get(0).keySet().stream().sorted().toList());
        }
    }
}
