package panade.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Spelling;
import panade.quantity.UnitPrice;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What is wrong with an option's words, and the reading of words that several commands take. */
final class UsageErrors {
    private UsageErrors() {}

    /** A slip to be told with the command's usage. */
    static ParameterException in(@Nullable CommandSpec spec, String message) {
        return new ParameterException(Objects.requireNonNull(spec).commandLine(), message);
    }

    /** A slip in a number, with how to write it where that can be guessed. */
    static ParameterException number(@Nullable CommandSpec spec, String option, String text, String expected) {
        return in(
                spec,
                option + " " + text + ": expected " + expected + "."
                        + Spelling.advice(text).map(advice -> " " + advice).orElse(""));
    }

    /** A price per kilogram, not negative; with the sign of its currency where that is clear. */
    static BigFraction price(@Nullable CommandSpec spec, String option, String text, String currency) {
        return UnitPrice.perKg(text, currency)
                .filter(price -> price.signum() >= 0)
                .orElseThrow(() -> number(spec, option, text, "a price per weight from 0 up, such as 3.70/lb"));
    }

    /** A weight above zero. */
    static Quantity weight(@Nullable CommandSpec spec, String option, String text, String example) {
        return Quantity.parse(text)
                .filter(weight -> weight.unit().dimension() == Dimension.MASS
                        && weight.base().signum() > 0)
                .orElseThrow(() -> number(spec, option, text, "a weight above zero, such as " + example));
    }

    /** One of the names of an enumeration, in small letters or large. */
    static <E extends Enum<E>> E choice(@Nullable CommandSpec spec, Class<E> type, String option, String text) {
        var all = Objects.requireNonNull(type.getEnumConstants());
        for (var each : all) {
            if (each.name().equalsIgnoreCase(text)) {
                return each;
            }
        }
        var names = Arrays.stream(all)
                .map(each -> each.name().toLowerCase(Locale.ROOT))
                .toList();
        throw in(spec, option + " " + text + ": expected one of " + String.join(", ", names) + ".");
    }
}
