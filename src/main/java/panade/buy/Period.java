package panade.buy;

import java.util.List;

/**
 * A stretch of time in which prices and needs are the same.
 *
 * @param name what the kitchen calls it; empty when there is only one
 * @param products what is made in it, at its prices; the same products in the same order in each period
 */
public record Period(String name, List<Product> products) {
    public Period {
        products = List.copyOf(products);
    }
}
