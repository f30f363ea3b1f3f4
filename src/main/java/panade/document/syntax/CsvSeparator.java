package panade.document.syntax;

import java.util.regex.Pattern;

/**
 * What separates the cells of a table that is kept as text: a comma (RFC 4180), or a semicolon or a tab as spreadsheet
 * programs write where the comma is a decimal's; whichever stands most often between the headings.
 *
 * @param sign the separator
 * @param start offset at which the table begins, behind a line such as {@code sep=;}
 */
public record CsvSeparator(char sign, int start) {
    private static final String SIGNS = ",;\t";
    private static final Pattern STATED = Pattern.compile("\\A\"?sep=([,;\t])\"?\\R");

    /** The separator of a text. */
    public static CsvSeparator of(String text) {
        var stated = STATED.matcher(text);
        if (stated.find()) {
            return new CsvSeparator(stated.group(1).charAt(0), stated.end());
        }
        var counts = new int[SIGNS.length()];
        boolean quoted = false;
        boolean named = false;
        for (int i = 0; i < text.length() && !(named && !quoted && isLineEnd(text.charAt(i))); i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            int sign = quoted ? -1 : SIGNS.indexOf(c);
            if (sign >= 0) {
                counts[sign]++;
            } else {
                named |= !Character.isWhitespace(c);
            }
        }
        int most = 0;
        for (int sign = 1; sign < counts.length; sign++) {
            most = counts[sign] > counts[most] ? sign : most;
        }
        return new CsvSeparator(SIGNS.charAt(most), 0);
    }

    private static boolean isLineEnd(char c) {
        return c == '\n' || c == '\r';
    }
}
