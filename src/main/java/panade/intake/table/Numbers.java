package panade.intake.table;

import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.origin.Origin;
import panade.quantity.Decimal;
import panade.sheet.Grid.Entry;
import panade.sheet.Grid.Sort;

/** Takes entries for numbers, all digits kept, or tells what is wrong with them. */
public final class Numbers {
    private static final int MANY = 60;
    private static final String EXPECTED = "Expected a number with a decimal point, or nothing where it is not known.";

    private final Faults faults;

    public Numbers(Faults faults) {
        this.faults = faults;
    }

    /** A number times a factor; empty when there is none. */
    public Optional<BigDecimal> read(Entry entry, Origin origin, BigFraction factor) {
        if (entry.isBlank()) {
            return Optional.empty();
        }
        if (entry.sort() == Sort.DATE) {
            faults.add(
                    origin,
                    "This cell is a date, which is what a spreadsheet makes of 1.2 or 3-4 when it is typed",
                    "Expected a number: format the cell as a number and type it again.");
            return Optional.empty();
        }
        if (entry.sort() == Sort.ERROR) {
            faults.add(origin, "The formula in this cell failed: " + entry.text(), EXPECTED);
            return Optional.empty();
        }
        var number = Decimal.parse(entry.text().strip());
        if (number.isEmpty()) {
            faults.add(origin, "\"" + entry.text().strip() + "\" is not a number", advice(entry.text()));
        }
        return number.map(value -> decimal(value.multiply(factor)));
    }

    private static String advice(String text) {
        return text.contains(",") ? "Expected a decimal point, not a comma, and no commas for thousands." : EXPECTED;
    }

    /** A decimal as it is; factors between our units are powers of ten, so there always is one. */
    public static BigDecimal decimal(BigFraction value) {
        int digits = MANY;
        while (Decimal.of(Decimal.significant(value, digits)).compareTo(value) != 0) {
            digits *= 2;
        }
        return Decimal.significant(value, digits);
    }
}
