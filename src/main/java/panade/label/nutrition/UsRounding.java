package panade.label.nutrition;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.label.nutrition.RoundingRule.Band;
import panade.quantity.Decimal;

/** How amounts are printed under 21 CFR 101.9 as amended in 2016 (81 FR 33742), and FDA's guide, appendix H. */
public final class UsRounding {
    static final RoundingRule CALORIES =
            RoundingRule.of("21 CFR 101.9(c)(1)", Band.under("5", "0"), Band.nearUpTo("50", "5"), Band.rest("10"));

    static final RoundingRule FAT =
            RoundingRule.of("21 CFR 101.9(c)(2)", Band.under("0.5", "0"), Band.nearUnder("5", "0.5"), Band.rest("1"));

    static final RoundingRule CHOLESTEROL =
            RoundingRule.of("21 CFR 101.9(c)(3)", Band.under("2", "0"), Band.under("5", "less than 5"), Band.rest("5"));

    static final RoundingRule SODIUM =
            RoundingRule.of("21 CFR 101.9(c)(4)", Band.under("5", "0"), Band.nearUpTo("140", "5"), Band.rest("10"));

    /** Carbohydrate, fibre, sugars and protein. */
    static final RoundingRule CARBOHYDRATE = RoundingRule.of(
            "21 CFR 101.9(c)(6) and (7)", Band.under("0.5", "0"), Band.under("1", "less than 1"), Band.rest("1"));

    static final RoundingRule PERCENT = RoundingRule.of("21 CFR 101.9(d)(7)(ii)", Band.rest("1"));

    public static final RoundingRule VITAMIN_PERCENT = RoundingRule.of(
            "21 CFR 101.9(c)(8)(iii)",
            Band.under("2", "0"),
            Band.nearUpTo("10", "2"),
            Band.nearUpTo("50", "5"),
            Band.rest("10"));

    static final RoundingRule SERVING_GRAMS = RoundingRule.of(
            "21 CFR 101.9(b)(7)", Band.nearUnder("2", "0.1"), Band.nearUnder("5", "0.5"), Band.rest("1"));

    private static final RoundingRule SERVINGS =
            RoundingRule.of("21 CFR 101.9(b)(8)", Band.nearUnder("2", "1"), Band.nearUpTo("5", "0.5"), Band.rest("1"));

    private static final BigFraction SMALL = BigFraction.of(25);
    private static final BigFraction LARGE = BigFraction.of(250);

    private UsRounding() {}

    /**
     * Amounts of a vitamin or mineral, by FDA's recommendation: to the tenth, the whole or the ten of its unit.
     *
     * @param dailyValue in the unit it is printed in
     */
    static RoundingRule vitamin(BigFraction dailyValue) {
        var step = dailyValue.compareTo(SMALL) < 0 ? "0.1" : dailyValue.compareTo(LARGE) < 0 ? "1" : "10";
        return RoundingRule.of("81 FR 33742, recommended increments", Band.rest(step));
    }

    /** How many servings a package holds, with "about" when that is rounded. */
    public static String servings(BigFraction exact) {
        var printed = SERVINGS.print(exact);
        boolean whole = Decimal.of(new BigDecimal(printed)).equals(exact);
        return (whole ? "" : "about ") + printed;
    }

    /** A weight in kilograms as the grams of a serving. */
    public static String servingGrams(BigFraction kilograms) {
        return SERVING_GRAMS.print(kilograms.multiply(1000));
    }

    /** A part of the Daily Value, rounded and with its sign. */
    public static String percent(RoundingRule rule, BigFraction amount, BigFraction dailyValue) {
        return rule.print(amount.multiply(100).divide(dailyValue)) + "%";
    }

    /** A plain number for messages, two digits after the point at most, halves up. */
    public static String figure(BigFraction value) {
        return RoundingRule.plain(value.bigDecimalValue(2, RoundingMode.HALF_UP));
    }
}
