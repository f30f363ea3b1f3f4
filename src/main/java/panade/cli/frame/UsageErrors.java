package panade.cli.frame;

import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Spelling;
import panade.quantity.UnitPrice;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What is wrong with an option's words, and the reading of words that several commands take. */
public final class UsageErrors {
    private UsageErrors() {}

    /** An error to be told with the command's usage. */
    public static ParameterException in(@Nullable CommandSpec spec, String message) {
        return new ParameterException(Objects.requireNonNull(spec).commandLine(), message);
    }

    /** An error in a number, with how to write it where that can be guessed. */
    public static ParameterException number(@Nullable CommandSpec spec, String option, String text, String expected) {
        return in(
                spec,
                option + " " + text + ": expected " + expected + "."
                        + Spelling.advice(text).map(advice -> " " + advice).orElse(""));
    }

    /** A price per kilogram, not negative; with the sign of its currency where that is clear. */
    public static BigFraction price(@Nullable CommandSpec spec, String option, String text, String currency) {
        return UnitPrice.perKg(text, currency)
                .filter(price -> price.signum() >= 0)
                .orElseThrow(() -> number(spec, option, text, "a price per weight from 0 up, such as 3.70/lb"));
    }
}
