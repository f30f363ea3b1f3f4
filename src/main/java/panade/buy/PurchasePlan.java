package panade.buy;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OrderTerms;

/**
 * What to order in one period, what it costs and what it leaves.
 *
 * @param period its name; empty when there is only one
 * @param lines what is bought
 * @param orders one for each supplier that is ordered from
 * @param store what happens to each ingredient in the store room
 * @param blends of each product, in the order in which they were asked for
 * @param storage money for keeping what is left
 */
public record PurchasePlan(
        String period,
        List<Line> lines,
        List<Order> orders,
        List<Stock> store,
        List<Blend> blends,
        BigFraction storage) {
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
     * What comes from one supplier.
     *
     * @param goods money for goods
     * @param placed whether somebody has to order it; false for what is there as it is needed
     */
    public record Order(OrderTerms terms, BigFraction goods, boolean placed) {}

    /**
     * An ingredient in the store room; weights in kilograms as bought.
     *
     * @param before what is there before anything is bought
     * @param wasted what is thrown away because it would not keep
     * @param paidPerKg what a kilogram of it cost, or is reckoned at where none was bought
     */
    public record Stock(
            String ingredient,
            BigFraction before,
            BigFraction bought,
            BigFraction used,
            BigFraction wasted,
            BigFraction left,
            BigFraction paidPerKg) {}

    /** Money paid for goods, delivery and storage. */
    public BigFraction cash() {
        return goods().add(delivery()).add(storage);
    }

    /** How many goods are on the orders that are placed. */
    int goodsToOrder() {
        return (int) lines.stream()
                .filter(line -> orders.stream()
                        .anyMatch(order -> order.placed()
                                && order.terms().supplier().equals(line.offer().supplier())))
                .count();
    }

    /** Money paid for goods. */
    public BigFraction goods() {
        return orders.stream().map(Order::goods).reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** Money paid for delivery. */
    public BigFraction delivery() {
        return orders.stream().map(order -> order.terms().delivery()).reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** What was on the shelf before anything was bought, at what such goods cost. */
    public BigFraction wasOnShelf() {
        return store.stream()
                .map(stock -> stock.before().multiply(stock.paidPerKg()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** What is thrown away, at what was paid for it. */
    public BigFraction wasted() {
        return store.stream()
                .map(stock -> stock.wasted().multiply(stock.paidPerKg()))
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
