package panade.domain.purchase;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What is on hand and on what terms more can be ordered.
 *
 * @param terms by supplier; a supplier that is not there asks nothing
 * @param stock what is on hand
 */
public record StoreRoom(Map<String, OrderTerms> terms, List<Stock> stock) {
    public StoreRoom {
        terms = Map.copyOf(terms);
        stock = List.copyOf(stock);
    }

    /**
     * Some of an ingredient that is on hand.
     *
     * @param kilograms as bought
     * @param bestBefore its date; null where none is told
     * @param isPast whether that date was past when the stock list was read: such goods are not counted on
     */
    public record Stock(
            String ingredient,
            BigFraction kilograms,
            @Nullable LocalDate bestBefore,
            boolean isPast) {}

    /** A store room with kilograms on hand, by ingredient, that bear no date. */
    public static StoreRoom holding(Map<String, OrderTerms> terms, Map<String, BigFraction> onHand) {
        return new StoreRoom(
                terms,
                onHand.entrySet().stream()
                        .map(entry -> new Stock(entry.getKey(), entry.getValue(), null, false))
                        .toList());
    }

    /** The terms of a supplier. */
    public OrderTerms termsOf(String supplier) {
        return terms.getOrDefault(supplier, OrderTerms.none(supplier));
    }

    /**
     * Whether nothing need be ordered from a supplier, such as whoever meters the water: stated terms that ask for no
     * minimum, no delivery charge and no time. Of a supplier without stated terms that is not known.
     */
    public boolean needsNoOrder(String supplier) {
        var stated = terms.get(supplier);
        return stated != null
                && stated.minimumOrder().signum() == 0
                && stated.delivery().signum() == 0
                && stated.leadDays() == 0;
    }

    /** Kilograms of an ingredient that are on hand and may be counted on. */
    public BigFraction onHand(String ingredient) {
        return stock.stream()
                .filter(goods -> goods.ingredient().equals(ingredient) && !goods.isPast())
                .map(Stock::kilograms)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }
}
