package panade.buy;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Three ways to buy for the same products.
 *
 * @param periods what is made when
 * @param exact money if any weight could be bought, delivery, minimum orders and storage aside
 * @param frozen the cheapest blends by weight, rounded up to packs; empty when no such plan was found
 * @param adapted blends that may change to suit packs, leftovers counted at what they are worth
 * @param leastCash the same, leftovers counted as nothing
 */
public record PurchaseAnswers(
        List<Period> periods,
        BigFraction exact,
        Optional<Campaign> frozen,
        Optional<Campaign> adapted,
        Optional<Campaign> leastCash) {
    public PurchaseAnswers {
        periods = List.copyOf(periods);
    }

    /** The products of the first period, which are those of every period. */
    public List<Product> products() {
        return periods.get(0).products();
    }
}
