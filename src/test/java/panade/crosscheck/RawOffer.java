package panade.crosscheck;

import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A row of the price list.
 *
 * @param price for {@code perKg} kilograms as bought
 * @param available kilograms as bought
 */
record RawOffer(String ingredient, String supplier, BigDecimal price, int perKg, Optional<BigDecimal> available) {

    /** Money for a kilogram as bought. */
    BigFraction pricePerKg() {
        return Exact.of(price).divide(perKg);
    }

    RawOffer dearer(int times) {
        return new RawOffer(ingredient, supplier, price.multiply(BigDecimal.valueOf(times)), perKg, available);
    }
}
