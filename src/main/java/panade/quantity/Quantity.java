package panade.quantity;

import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A number with its unit, as somebody wrote it.
 *
 * @param base the exact value in the base unit of the unit's dimension
 * @param unit the unit it was written in
 * @param text the words of the document, for names and messages
 */
public record Quantity(BigFraction base, Unit unit, String text) {
    /** The longest text that is looked at; whatever is longer is no quantity that somebody wrote. */
    private static final int LONGEST = 1_100;

    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9.]++(?:[eE][+-]?\\d++)?+");

    /** A number and the symbol after it, split but not yet understood; the symbol may be empty. */
    public record Written(String number, String symbol) {}

    /** Splits {@code "420 mg/100g"} into number and symbol; empty when the text does not start with a number. */
    public static Optional<Written> split(String text) {
        var written = text.length() > LONGEST ? "" : text.strip();
        var number = NUMBER.matcher(written);
        return number.lookingAt() && written.indexOf('\n') < 0
                ? Optional.of(new Written(
                        number.group(), written.substring(number.end()).strip()))
                : Optional.empty();
    }

    /** The quantity of a number in a unit. */
    public static Quantity of(BigFraction number, Unit unit, String text) {
        return new Quantity(number.multiply(unit.factor()), unit, text);
    }

    /** A quantity written in a unit that is known, such as {@code "20 lb"}; empty otherwise. */
    public static Optional<Quantity> parse(String text) {
        return split(text)
                .flatMap(written -> Decimal.parse(written.number())
                        .flatMap(number -> (written.symbol().isEmpty()
                                        ? Optional.of(Unit.NUMBER)
                                        : Unit.find(written.symbol()))
                                .map(unit -> of(number, unit, text))));
    }

    /** The value in the unit it was written in. */
    public BigFraction number() {
        return unit.fromBase(base);
    }
}
