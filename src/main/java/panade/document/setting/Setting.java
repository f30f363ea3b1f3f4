package panade.document.setting;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;

/** What is to be tried instead of what the documents say, as it was typed. */
public sealed interface Setting {
    /** What can be typed. */
    String FORMS = "\"NAME min 4 %\", \"NAME max 300 mg/100g\", \"NAME = 2 %\", \"price ID 3.10/lb\","
            + " \"available ID 5 lb\" or \"out ID\"; a price and what is available also \"from SUPPLIER\"";

    /** All of it. */
    String text();

    /** Another number on one side of a bound, or on both. */
    record OfBound(String text, String name, Side side, String number) implements Setting {}

    /**
     * Another price of an ingredient.
     *
     * @param supplier whose price it is; null for everybody's
     */
    record OfPrice(String text, String ingredient, @Nullable String supplier, String price) implements Setting {}

    /**
     * Another amount of an ingredient to be had.
     *
     * @param supplier whose goods these are; null for the only one's who sells it
     */
    record OfAvailable(
            String text, String ingredient, @Nullable String supplier, String amount) implements Setting {}

    /** An ingredient that is not to be had from anybody, nor are its other lots. */
    record Out(String text, String ingredient) implements Setting {}

    /** What a text asks for; empty where it is none of the forms. */
    static Optional<Setting> of(String typed) {
        var text = typed.strip();
        return price(text).or(() -> bound(text)).or(() -> available(text)).or(() -> out(text));
    }

    private static Optional<Setting> price(String text) {
        return match("price\\s+(.+?)(?:\\s+from\\s+(.+?))?\\s+(\\S*\\d\\S*\\s*/\\s*(?:[\\d.]+\\s*)?\\S+)", text)
                .map(found -> new OfPrice(text, found.group(1), found.group(2), found.group(3)));
    }

    private static Optional<Setting> bound(String text) {
        return match("(.+)(?:\\s+(min|max)\\s|\\s*=)\\s*(\\S.*)", text)
                .map(found -> new OfBound(text, found.group(1).strip(), side(found.group(2)), found.group(3)));
    }

    private static Side side(@Nullable String word) {
        if (word == null) {
            return Side.FIXED;
        }
        return word.toLowerCase(Locale.ROOT).equals("min") ? Side.MIN : Side.MAX;
    }

    private static Optional<Setting> available(String text) {
        return match("available\\s+(.+?)(?:\\s+from\\s+(.+?))?\\s+(-?[\\d.,]+\\s*[^\\s\\d]\\S*)", text)
                .map(found -> new OfAvailable(text, found.group(1), found.group(2), found.group(3)));
    }

    private static Optional<Setting> out(String text) {
        return match("out\\s+(.+)", text).map(found -> new Out(text, found.group(1)));
    }

    private static Optional<Matcher> match(String form, String text) {
        var matcher = Pattern.compile(form, Pattern.CASE_INSENSITIVE).matcher(text);
        return matcher.matches() ? Optional.of(matcher) : Optional.empty();
    }
}
