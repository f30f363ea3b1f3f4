package panade.domain;

import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is on hand and on what terms more can be ordered.
 *
 * @param terms by supplier; a supplier that is not there asks nothing
 * @param onHand kilograms as bought, by ingredient
 */
public record StoreRoom(Map<String, OrderTerms> terms, Map<String, BigFraction> onHand) {
    public StoreRoom {
        terms = Map.copyOf(terms);
        onHand = Map.copyOf(onHand);
    }

    /** The terms of a supplier. */
    public OrderTerms termsOf(String supplier) {
        return terms.getOrDefault(supplier, OrderTerms.none(supplier));
    }

    /** Kilograms of an ingredient that are on hand. */
    public BigFraction onHand(String ingredient) {
        return onHand.getOrDefault(ingredient, BigFraction.ZERO);
    }
}
