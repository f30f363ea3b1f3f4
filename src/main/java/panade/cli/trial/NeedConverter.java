package panade.cli.trial;

import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.cli.frame.UnreadableOption;
import panade.domain.Side;
import panade.quantity.Decimal;
import picocli.CommandLine.ITypeConverter;

/** Reads what a measured response must come to, such as {@code break min 420 g}. */
final class NeedConverter implements ITypeConverter<NeedConverter.Wish> {
    private static final Pattern FORM = Pattern.compile("\\s*(.+?)\\s+(min|max)\\s+(\\S+?)\\s*(\\p{L}.*|%.*)?");

    /**
     * What is asked.
     *
     * @param unit as written; empty where none is
     */
    record Wish(String response, Side side, BigFraction number, String unit) {}

    @Override
    public Wish convert(String text) {
        var matcher = FORM.matcher(text);
        if (matcher.matches()) {
            var number = Decimal.parse(matcher.group(3));
            if (number.isPresent()) {
                var unit = matcher.group(4) == null ? "" : matcher.group(4).strip();
                var side = matcher.group(2).equals("min") ? Side.MIN : Side.MAX;
                return new Wish(matcher.group(1), side, number.get(), unit);
            }
        }
        throw new UnreadableOption(
                "expected a response, min or max, and a number in its unit, such as \"break min 420 g\".");
    }
}
