package panade.whatif;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;
import panade.quantity.Unit;

/** Prices as they can be typed. */
public final class PriceText {
    private static final int PLACES = 6;

    private PriceText() {}

    /** A price a pound or a kilogram, exact where one of them is a short decimal; else rounded, a kilogram. */
    public static String of(BigFraction perKg) {
        return exact(perKg.multiply(Unit.POUND.factor()))
                .map(number -> number + "/lb")
                .or(() -> exact(perKg).map(number -> number + "/kg"))
                .orElseGet(() -> plain(Decimal.round(perKg, PLACES)) + "/kg");
    }

    private static Optional<String> exact(BigFraction price) {
        var rounded = price.bigDecimalValue(PLACES, RoundingMode.HALF_EVEN);
        return Decimal.of(rounded).equals(price) ? Optional.of(plain(rounded)) : Optional.empty();
    }

    /** Cents are always written out. */
    private static String plain(BigDecimal price) {
        var stripped = price.stripTrailingZeros();
        return (stripped.scale() < 2 ? stripped.setScale(2, RoundingMode.UNNECESSARY) : stripped).toPlainString();
    }
}
