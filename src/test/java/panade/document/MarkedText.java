package panade.document;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * Text with marks for what cannot be seen in it: {@code «EF BB BF»} stands for those bytes, {@code «3000×[»} for a text
 * so many times, and {@code «»} at the end of the last line for there being no line end behind it.
 */
final class MarkedText {
    private static final Pattern MARK = Pattern.compile("«(?:(\\d+)×([^»]*)|([0-9A-F ]*))»");

    private MarkedText() {}

    static byte[] bytes(String text) {
        var whole = text.endsWith("«»\n") ? text.substring(0, text.length() - 1) : text;
        var bytes = new ByteArrayOutputStream();
        var marks = MARK.matcher(whole);
        int done = 0;
        while (marks.find()) {
            bytes.writeBytes(plain(whole.substring(done, marks.start())));
            bytes.writeBytes(
                    marks.group(1) == null
                            ? HexFormat.ofDelimiter(" ").parseHex(marks.group(3))
                            : plain(marks.group(2).repeat(Integer.parseInt(marks.group(1)))));
            done = marks.end();
        }
        bytes.writeBytes(plain(whole.substring(done)));
        return bytes.toByteArray();
    }

    private static byte[] plain(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
