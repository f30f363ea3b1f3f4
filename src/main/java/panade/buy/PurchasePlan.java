package panade.buy;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Offer;
import panade.domain.OrderTerms;
import panade.quantity.Decimal;

/**
 * What to order, what it costs and what it leaves.
 *
 * @param lines what is bought
 * @param orders one for each supplier that is ordered from
 * @param store what happens to each ingredient in the store room
 * @param blends of each product, in the order in which they were asked for
 * @param objective what was made least: cash less what leftovers are worth
 * @param bound below which that cannot be according to the search; null when it said nothing
 * @param finished whether the search says that nothing better exists
 */
public record PurchasePlan(
        List<Line> lines,
        List<Order> orders,
        List<Stock> store,
        List<Blend> blends,
        BigFraction objective,
        @Nullable BigDecimal bound,
        boolean finished) {
    public PurchasePlan {
        lines = List.copyOf(lines);
        orders = List.copyOf(orders);
        store = List.copyOf(store);
        blends = List.copyOf(blends);
    }

    /**
     * Goods of one offer.
     *
     * @param packs how many; kilograms where any weight is sold
     */
    public record Line(Offer offer, BigFraction packs, BigFraction kilograms, BigFraction money) {}

    /**
     * An order.
     *
     * @param goods money for goods
     */
    public record Order(OrderTerms terms, BigFraction goods) {}

    /**
     * An ingredient in the store room; weights in kilograms as bought.
     *
     * @param paidPerKg what a kilogram of it cost, or is reckoned at where none was bought
     */
    public record Stock(
            String ingredient,
            BigFraction onHand,
            BigFraction bought,
            BigFraction used,
            BigFraction left,
            BigFraction paidPerKg) {}

    /** How far above the best plan this one may be, as a part of its cash; nothing when the search finished. */
    public BigFraction gap() {
        var cash = cash();
        if (finished || bound == null || cash.signum() == 0) {
            return BigFraction.ZERO;
        }
        var above = objective.subtract(Decimal.of(bound));
        return above.signum() <= 0 ? BigFraction.ZERO : above.divide(cash);
    }

    /** Money paid for goods and delivery. */
    public BigFraction cash() {
        return orders.stream()
                .map(order -> order.goods().add(order.terms().delivery()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** Money for what goes into the bowls. */
    public BigFraction inBowl() {
        return store.stream()
                .map(stock -> stock.used().multiply(stock.paidPerKg()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** Money that is left on the shelf, at what was paid for it. */
    public BigFraction onShelf() {
        return store.stream()
                .map(stock -> stock.left().multiply(stock.paidPerKg()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }
}
