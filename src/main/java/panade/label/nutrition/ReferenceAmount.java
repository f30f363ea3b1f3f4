package panade.label.nutrition;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;
import panade.quantity.Quantity;

/**
 * Amounts customarily eaten at one time, by which a serving in the United States goes: 21 CFR 101.12(b), meat
 * substitutes (from memory).
 *
 * @param name of the category
 * @param grams as it is sold
 */
public record ReferenceAmount(String name, BigFraction grams) {
    private static final List<ReferenceAmount> RAW = List.of(
            new ReferenceAmount("entrees without sauce, uncooked", BigFraction.of(110)),
            new ReferenceAmount("sausages", BigFraction.of(55)));

    private static final BigFraction MIN_SHARE = Decimal.of("0.67");
    private static final BigFraction MAX_SHARE = BigFraction.of(2);

    /** How a serving stands against the amounts, and what that makes of one piece: 21 CFR 101.9(b)(2)(i). */
    public static String note(@Nullable Quantity serving) {
        var rule = "one piece of 67 % to under 200 % of the amount is one serving, 101.9(b)(2)(i).";
        if (serving == null) {
            return "A serving goes by the reference amount: for meat substitutes without sauce 85 g cooked, 110 g uncooked, 55"
                    + " g as sausage, 21 CFR 101.12(b) (from memory); " + rule;
        }
        var words = RAW.stream().map(amount -> amount.against(serving)).toList();
        return "The serving against the reference amount of meat substitutes, 21 CFR 101.12(b) (from memory): "
                + String.join("; ", words) + "; " + rule;
    }

    private String against(Quantity serving) {
        var part = serving.base().multiply(1000).divide(grams);
        boolean one = part.compareTo(MIN_SHARE) >= 0 && part.compareTo(MAX_SHARE) < 0;
        return name + ", " + RoundingRule.plain(Decimal.round(grams, 0)) + " g: "
                + RoundingRule.plain(Decimal.round(part.multiply(100), 0)) + " %"
                + (one ? ", one serving" : ", not one serving");
    }
}
