package panade.quantity;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What was probably meant by a number that is written as numbers are not written here. */
public final class Spelling {
    private static final int LONGEST = 60;
    private static final Pattern NUMBER = Pattern.compile("\\d[\\d.,'\u2019]*");
    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}(,\\d{3})+|\\d{1,3}(\\.\\d{3}){2,}");

    private Spelling() {}

    /**
     * The sentence that tells how to write it: with a decimal point, without separators of thousands and without a
     * currency's sign. Empty where that is not what is wrong.
     */
    public static Optional<String> advice(String text) {
        var plain = withoutSign(text.strip());
        var match = NUMBER.matcher(plain);
        if (text.length() > LONGEST || !match.find()) {
            return Optional.empty();
        }
        var readings = readings(match.group());
        var before = plain.substring(0, match.start());
        var behind = plain.substring(match.end());
        var first = before + readings.get(0) + behind;
        if (first.equals(text.strip())) {
            return Optional.empty();
        }
        return Optional.of(
                readings.size() == 1
                        ? "Write it as \"" + first + "\"."
                        : "Write it as \"" + first + "\", or as \"" + before + readings.get(1) + behind
                                + "\" if that is meant.");
    }

    private static String withoutSign(String text) {
        int slash = text.indexOf('/');
        var money = slash < 0 ? text : text.substring(0, slash);
        var sign = CurrencySigns.in(money);
        var rest = slash < 0 ? "" : text.substring(slash);
        return sign.isEmpty() ? text : money.strip().replace(sign, "").strip() + rest;
    }

    /** The number in the one way it can be read, or in both. */
    private static List<String> readings(String written) {
        var number = written.replaceAll("['\u2019]", "");
        int comma = number.lastIndexOf(',');
        int point = number.lastIndexOf('.');
        if (comma < 0 && (point < 0 || number.indexOf('.') == point)) {
            return List.of(number);
        }
        if (comma >= 0 && point >= 0) {
            return comma > point
                    ? List.of(number.replace(".", "").replace(',', '.'))
                    : List.of(number.replace(",", ""));
        }
        boolean once = number.indexOf(',') == comma;
        boolean grouped = THOUSANDS.matcher(number).matches();
        if (comma >= 0 && once && grouped) {
            return List.of(number.replace(',', '.'), number.replace(",", ""));
        }
        return grouped || !once ? List.of(number.replaceAll("[.,]", "")) : List.of(number.replace(',', '.'));
    }
}
