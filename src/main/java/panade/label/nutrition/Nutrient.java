package panade.label.nutrition;

import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;

/**
 * A line that a regulation asks for or allows.
 *
 * @param id a tagname, or what stands for one
 * @param name as printed
 * @param level how far it is set in under what it is a part of
 * @param unit printed after the amount
 * @param content how it is worked out
 * @param printing the amount as printed, without its unit
 * @param daily a day's worth, in the unit; null when none is printed
 * @param percent how a part of that is rounded
 * @param always whether it is printed even when it is not known; others are left out then, and when there is none
 */
public record Nutrient(
        String id,
        String name,
        int level,
        String unit,
        Content content,
        Function<BigFraction, String> printing,
        @Nullable BigFraction daily,
        RoundingRule percent,
        boolean always) {

    /** The same with a day's worth. */
    Nutrient daily(String worth, RoundingRule rounding) {
        return new Nutrient(id, name, level, unit, content, printing, Decimal.of(worth), rounding, always);
    }

    /** The number that is printed: that of "less than 5" is 5. */
    public BigFraction declared(BigFraction amount) {
        return Decimal.of(printing.apply(amount).replaceAll("[^0-9.]", ""));
    }
}
