package panade.buy;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Three ways to buy for the same products.
 *
 * @param products what is made
 * @param exact money if any weight could be bought, delivery and minimum orders aside
 * @param frozen the cheapest blends by weight, rounded up to packs; empty when no such plan was found
 * @param adapted blends that may change to suit packs, leftovers counted at what they are worth
 * @param leastCash the same, leftovers counted as nothing
 */
public record PurchaseAnswers(
        List<Product> products,
        BigFraction exact,
        Optional<PurchasePlan> frozen,
        Optional<PurchasePlan> adapted,
        Optional<PurchasePlan> leastCash) {
    public PurchaseAnswers {
        products = List.copyOf(products);
    }
}
