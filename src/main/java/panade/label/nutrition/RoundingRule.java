package panade.label.nutrition;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;

/**
 * How a regulation prints an amount. The band is chosen by the amount before it is rounded; halves go up, as in the
 * example of 21 CFR 101.9(c)(8), where 235 mg of potassium, exactly 5 % of 4700, are printed as 6 %.
 *
 * @param source where the rule is published
 * @param bands from the smallest amounts up; the last has no end
 * @param keepsZeros whether zeros after the point are printed
 */
public record RoundingRule(String source, List<Band> bands, boolean keepsZeros) {
    public RoundingRule {
        bands = List.copyOf(bands);
    }

    /**
     * Amounts that are printed alike.
     *
     * @param end where the band ends; null when it has no end
     * @param inclusive whether the end belongs to it
     * @param words what is printed whatever the amount; null when it is rounded
     * @param step the multiple it is rounded to; unused with words
     */
    record Band(
            @Nullable BigFraction end,
            boolean inclusive,
            @Nullable String words,
            BigDecimal step) {
        /** Amounts under the end, printed as some words. */
        static Band under(String end, String words) {
            return new Band(Decimal.of(end), false, words, BigDecimal.ONE);
        }

        /** Amounts up to the end with the end itself, printed as some words. */
        static Band upTo(String end, String words) {
            return new Band(Decimal.of(end), true, words, BigDecimal.ONE);
        }

        /** Amounts under the end, rounded to a step. */
        static Band nearUnder(String end, String step) {
            return new Band(Decimal.of(end), false, null, new BigDecimal(step));
        }

        /** Amounts up to the end with the end itself, rounded to a step. */
        static Band nearUpTo(String end, String step) {
            return new Band(Decimal.of(end), true, null, new BigDecimal(step));
        }

        /** All that is left, rounded to a step. */
        static Band rest(String step) {
            return new Band(null, false, null, new BigDecimal(step));
        }

        private boolean holds(BigFraction amount) {
            if (end == null) {
                return true;
            }
            int side = amount.compareTo(end);
            return side < 0 || (inclusive && side == 0);
        }
    }

    /** A rule that drops zeros after the point. */
    static RoundingRule of(String source, Band... bands) {
        return new RoundingRule(source, List.of(bands), false);
    }

    /** A rule that keeps zeros after the point. */
    static RoundingRule keepingZeros(String source, Band... bands) {
        return new RoundingRule(source, List.of(bands), true);
    }

    /** The amount as printed, without its unit; an amount that rounds out of its band is printed as the next one's. */
    public String print(BigFraction amount) {
        var band = band(amount);
        if (band.words() != null) {
            return band.words();
        }
        var rounded = nearest(amount, band.step());
        var landed = band(Decimal.of(rounded));
        var scale = landed.words() == null ? landed.step().scale() : band.step().scale();
        return keepsZeros ? rounded.setScale(scale, RoundingMode.HALF_UP).toPlainString() : plain(rounded);
    }

    private Band band(BigFraction amount) {
        return bands.stream().filter(band -> band.holds(amount)).findFirst().orElseThrow();
    }

    /** The nearest multiple of a step, halves up. */
    static BigDecimal nearest(BigFraction amount, BigDecimal step) {
        return amount.divide(Decimal.of(step))
                .bigDecimalValue(0, RoundingMode.HALF_UP)
                .multiply(step);
    }

    /** A decimal without zeros after the point. */
    public static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
