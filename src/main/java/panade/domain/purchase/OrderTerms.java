package panade.domain.purchase;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a supplier asks of an order.
 *
 * @param supplier whose terms they are
 * @param minimumOrder money that an order must come to; zero for none
 * @param delivery money for each order
 * @param leadDays days from order to delivery
 */
public record OrderTerms(String supplier, BigFraction minimumOrder, BigFraction delivery, int leadDays) {
    /** The terms of a supplier who asks nothing. */
    public static OrderTerms none(String supplier) {
        return new OrderTerms(supplier, BigFraction.ZERO, BigFraction.ZERO, 0);
    }
}
