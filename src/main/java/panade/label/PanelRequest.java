package panade.label;

import org.jspecify.annotations.Nullable;
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
    /** A label by some rules, all else as usual. */
    public static PanelRequest of(Format format) {
        return new PanelRequest(format, EnergyMethod.GENERAL, null, null, null);
    }
}
