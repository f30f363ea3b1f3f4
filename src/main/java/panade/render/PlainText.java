package panade.render;

import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text as it may go to a terminal. Names, titles and paths are other people's words; characters in them that would move
 * the cursor, start an escape sequence (ECMA-48) or turn the direction of what follows (Unicode Standard Annex 9) are
 * shown as JSON writes them (U+001B as a backslash and {@code u001b}), so that what is printed inside a JSON string
 * still means the same.
 */
public final class PlainText {
    private static final String ELLIPSIS = "\u2026";
    private static final HexFormat HEX = HexFormat.of();
    private static final int LAST_C1 = 0x9F;
    private static final int DELETE = 0x7F;

    private static final int LONGEST_MESSAGE = 4_000;
    private static final int LONGEST_NAME = 200;
    private static final Pattern LONG_QUOTE = Pattern.compile("\"([^\"]{101,})\"");

    private PlainText() {}

    /** A message on one line that quotes no more of other people's words than a reader takes in. */
    public static String message(String text) {
        var quotes = LONG_QUOTE.matcher(text);
        var quoted = quotes.replaceAll(found -> Matcher.quoteReplacement(
                "\"" + cut(found.group(1), 80) + "\" (" + found.group(1).length() + " characters)"));
        return cut(line(quoted), LONGEST_MESSAGE);
    }

    /** A name or a title on one line, and not endlessly long. */
    static String name(String text) {
        return cut(line(cut(text, LONGEST_NAME)), LONGEST_NAME);
    }

    /** The beginning and the end of a text that is longer than so many characters. */
    private static String cut(String text, int most) {
        int end = most / 4;
        return text.length() <= most
                ? text
                : text.substring(0, most - end - 1) + ELLIPSIS + text.substring(text.length() - end);
    }

    /** A text that stays on one line, whatever it says. */
    public static String line(String text) {
        var plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            switch (each) {
                case '\n' -> plain.append("\\n");
                case '\r' -> plain.append("\\r");
                case '\t' -> plain.append("\\t");
                default -> append(plain, each);
            }
        }
        return plain.toString();
    }

    /** Adds a character, or what is shown in its place. */
    public static void append(StringBuilder plain, char character) {
        if (isCommand(character)) {
            plain.append("\\" + "u").append(HEX.toHexDigits(character));
        } else {
            plain.append(character);
        }
    }

    /** Whether a terminal may do something else with a character than show it. */
    private static boolean isCommand(char character) {
        return character < ' '
                || (character >= DELETE && character <= LAST_C1)
                || isBidirectional(character)
                || character == 0x2028
                || character == 0x2029;
    }

    /** Unicode's property Bidi_Control. */
    private static boolean isBidirectional(char character) {
        return character == 0x061C
                || character == 0x200E
                || character == 0x200F
                || (character >= 0x202A && character <= 0x202E)
                || (character >= 0x2066 && character <= 0x2069);
    }
}
