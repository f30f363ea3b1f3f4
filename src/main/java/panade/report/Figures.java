package panade.report;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;
import panade.quantity.Unit;

/** Numbers as a cook reads them, each rounded once, here. */
public final class Figures {
    private static final int MOST_DIGITS = 15;

    private Figures() {}

    /** Money with four digits after the point, as prices per weight need. */
    public static String money(BigFraction value) {
        return Decimal.round(value, 4).toPlainString();
    }

    /** Money as {@link #money}, never more than it is: a price that is to be paid at most. */
    public static String moneyAtMost(BigFraction value) {
        return value.bigDecimalValue(4, RoundingMode.FLOOR).toPlainString();
    }

    /** Money with two digits after the point. */
    public static String cash(BigFraction value) {
        return Decimal.round(value, 2).toPlainString();
    }

    /** Per cent with two digits after the point; small shares keep three significant digits. */
    public static String percent(BigFraction share) {
        var percent = share.multiply(100);
        return percent.abs().compareTo(BigFraction.of(1, 10)) < 0
                ? significant(percent, 2)
                : Decimal.round(percent, 2).toPlainString();
    }

    /** Per cent of some draws; what is not quite all or nothing is not told as all or nothing. */
    public static String percentOf(long some, long all) {
        if (some == all || some == 0) {
            return some == 0 ? "0" : "100";
        }
        var text = tenth(BigFraction.of(BigInteger.valueOf(some), BigInteger.valueOf(all))
                .multiply(100));
        return text.equals("0.0") ? "<0.1" : text.equals("100.0") ? ">99.9" : text;
    }

    /** A number to a tenth. */
    public static String tenth(BigFraction value) {
        return Decimal.round(value, 1).toPlainString();
    }

    /** Kilograms to a hundredth. */
    public static String kilograms(BigFraction value) {
        return Decimal.round(value, 2).toPlainString();
    }

    /** The next whole number up. */
    public static String wholeUp(BigFraction value) {
        return new BigDecimal(value.getNumerator())
                .divide(new BigDecimal(value.getDenominator()), 0, RoundingMode.CEILING)
                .toPlainString();
    }

    /** A number with that many significant digits, plainly written; whole numbers keep all theirs. */
    public static String significant(BigFraction value, int digits) {
        return significant(value, digits, RoundingMode.HALF_EVEN);
    }

    /** The same rounded another way. */
    public static String significant(BigFraction value, int digits, RoundingMode mode) {
        var rounded = Decimal.significant(value, digits, mode);
        return rounded.compareTo(BigDecimal.ZERO) == 0 ? "0" : rounded.toPlainString();
    }

    /**
     * How many significant digits tell two numbers apart, so that what breaks a bound by a hair is not printed as if it
     * met it.
     *
     * @param usual how many are printed unless more are needed
     */
    public static int digitsApart(BigFraction one, BigFraction other, int usual) {
        int digits = usual;
        while (digits < MOST_DIGITS && significant(one, digits).equals(significant(other, digits))) {
            digits++;
        }
        return digits;
    }

    /** A decimal with that many significant digits, plainly written. */
    public static String decimal(BigDecimal value, int digits) {
        return significant(Decimal.of(value), digits);
    }

    /** Grams: tenths below a hundred, hundredths below ten, whole above. */
    public static String grams(BigFraction kilograms) {
        var grams = kilograms.multiply(1000);
        int places = grams.compareTo(BigFraction.of(100)) >= 0 ? 0 : grams.compareTo(BigFraction.of(10)) >= 0 ? 1 : 2;
        return Decimal.round(grams, places).toPlainString();
    }

    /** A number with its unit. */
    public static String with(BigFraction number, Unit unit) {
        return with(number, unit.symbol());
    }

    /** A number with the symbol of its unit; empty where it has none. */
    public static String with(BigFraction number, String unit) {
        var digits = significant(number, 4);
        return unit.isEmpty() ? digits : digits + " " + unit;
    }

    /** A number that is to be typed again, six digits of it, with its unit. */
    public static String exactly(BigFraction number, Unit unit) {
        return exactly(number, unit.symbol());
    }

    /** The same with the unit's symbol, which may be empty. */
    public static String exactly(BigFraction number, String unit) {
        var digits = significant(number, 6);
        return unit.isEmpty() ? digits : digits + " " + unit;
    }

    /**
     * The number to write in place of one, or the two of a fixed bound that is opened.
     *
     * @param kept the bound's other side, which stays; null where there is none
     * @param keptUnit its unit; null likewise
     */
    public static String moved(
            BigFraction from, BigFraction to, String unit, @Nullable BigFraction kept, @Nullable String keptUnit) {
        var fresh = exactly(to, unit);
        if (kept == null || keptUnit == null) {
            return fresh;
        }
        var old = exactly(kept, keptUnit);
        return to.compareTo(from) < 0 ? fresh + " to " + old : old + " to " + fresh;
    }

    /** A price per kilogram as a price per pound. */
    public static BigFraction perPound(BigFraction perKg) {
        return perKg.multiply(Unit.POUND.factor());
    }
}
