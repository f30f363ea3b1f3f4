package panade.workbook;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.quantity.Unit;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;

/** What the sheets say alike. */
final class Words {
    /** Kilograms in a pound, as formulas write it (NIST SP 811, appendix B.8). */
    static final String POUND = "0.45359237";

    static final String SHADED = "Shaded cells are yours to change; sums and products follow.";

    private Words() {}

    static BigFraction perPound(BigFraction perKg) {
        return perKg.multiply(Unit.POUND.factor());
    }

    /** A number, or nothing where there is none. */
    static Cell figure(@Nullable BigFraction value, Form form) {
        return value == null ? Cell.BLANK : Cell.figure(value, form);
    }

    static String stage(Brief brief, String id) {
        return brief.stages().stream()
                .filter(stage -> stage.id().equals(id))
                .map(Stage::title)
                .findFirst()
                .orElse(id);
    }

    static String name(Brief brief, String id) {
        return brief.set().ingredient(id).name();
    }

    static String currency(Brief brief) {
        return currency(brief.currency());
    }

    static String currency(String currency) {
        return currency.isEmpty() ? "money" : currency;
    }

    static BigFraction ratio(BigFraction part, BigFraction whole) {
        return whole.signum() == 0 ? BigFraction.ZERO : part.divide(whole);
    }
}
