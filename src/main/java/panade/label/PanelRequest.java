package panade.label;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.label.nutrition.EnergyMethod;
import panade.label.nutrition.Format;
import panade.quantity.Decimal;
import panade.quantity.Quantity;

/**
 * What kind of label is wanted.
 *
 * @param format whose rules
 * @param energy how calories are counted in the United States; the Union leaves no choice
 * @param serving the weight of a serving; null for the brief's
 * @param pack the weight in a package, for the number of servings; null when it is not told
 * @param tail names at this share or less are gathered at the end of the statement; null to gather none
 */
public record PanelRequest(
        Format format,
        EnergyMethod energy,
        @Nullable Quantity serving,
        @Nullable Quantity pack,
        @Nullable Quantity tail) {
    /** Shares that 21 CFR 101.4(a)(2) lets a statement gather: 2, 1.5, 1 and 0.5 %. */
    public static final List<BigFraction> TAILS =
            List.of(Decimal.of("0.02"), Decimal.of("0.015"), Decimal.of("0.01"), Decimal.of("0.005"));

    /** A label by some rules, all else as usual. */
    public static PanelRequest of(Format format) {
        return new PanelRequest(format, EnergyMethod.GENERAL, null, null, null);
    }
}
