package panade.plan;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.model.Unproved;
import panade.quantity.Fractions;

/** The cost per cooked kilogram to try next where no blend found so far weighs anything once it is cooked. */
final class CookedRate {
    /** By how much the cost per cooked weight is raised in search of a blend that keeps some, and up to where. */
    private static final BigFraction HEAVIER = BigFraction.of(1000);

    private static final BigFraction HEAVIEST = HEAVIER.pow(8);

    private CookedRate() {}

    /**
     * A cost per cooked kilogram high enough that blends which keep some weight may win over those that lose all of it.
     *
     * @param weighed whether a blend that keeps some was found already, so that one which keeps none ties with it
     */
    static BigFraction heavier(Brief brief, BigFraction rate, boolean weighed) {
        var dearest = brief.offers().stream().map(Offer::pricePerKg).reduce(BigFraction.ONE, Fractions::max);
        if (weighed || rate.divide(dearest).compareTo(HEAVIEST) > 0) {
            throw new Unproved(
                    weighed
                            ? "a blend that loses all its weight in cooking and costs nothing ties with the cheapest"
                            : "no blend was found that weighs anything once it is cooked, so there is no cost per cooked"
                                    + " weight");
        }
        return rate.signum() == 0 ? dearest : rate.multiply(HEAVIER);
    }
}
