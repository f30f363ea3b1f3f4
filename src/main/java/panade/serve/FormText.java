package panade.serve;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads forms as browsers send them (WHATWG URL Standard, "application/x-www-form-urlencoded"). */
final class FormText {
    static final String TYPE = "application/x-www-form-urlencoded";

    private FormText() {}

    /** The fields; empty where the text is no form. */
    static Optional<Map<String, String>> read(byte[] body) {
        var fields = new LinkedHashMap<String, String>();
        var text = new String(body, StandardCharsets.UTF_8);
        try {
            for (var pair : text.split("&", -1)) {
                int sign = pair.indexOf('=');
                if (sign > 0) {
                    fields.put(decoded(pair.substring(0, sign)), decoded(pair.substring(sign + 1)));
                }
            }
            return Optional.of(fields);
        } catch (IllegalArgumentException broken) {
            return Optional.empty(); // a percent sign without two digits behind it
        }
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
