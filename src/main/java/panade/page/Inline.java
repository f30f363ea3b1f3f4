package panade.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Objects;

/**
 * Style and scripts that are written into the page, and the policy that lets nothing else run (W3C, "Content Security
 * Policy Level 3"): each is allowed by the hash of its text, and nothing may be fetched.
 *
 * @param style for the page and the charts
 * @param library draws charts
 * @param script hands the page's tables to the library
 */
public record Inline(String style, String library, String script) {
    /** What every page of ours forbids; what it allows is added. */
    static final String NOTHING_ELSE = "default-src 'none'; base-uri 'none'; form-action 'none'";

    private static final String UPLOT = "/META-INF/resources/webjars/uplot/1.6.30/";

    static Inline load() {
        var licence = "/*!\n" + read(UPLOT + "LICENSE") + "*/\n";
        return new Inline(
                licence + read(UPLOT + "dist/uPlot.min.css") + read("/panade/page/page.css"),
                licence + read(UPLOT + "dist/uPlot.iife.min.js"),
                read("/panade/page/page.js"));
    }

    /** What a browser may do with the page. */
    public String policy() {
        return NOTHING_ELSE + "; style-src " + source(style) + "; script-src " + source(library) + " " + source(script);
    }

    /** What a policy calls a text that may be used. */
    static String source(String text) {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** A text that the program brings along, with plain line ends. */
    public static String read(String resource) {
        try (InputStream stream = Inline.class.getResourceAsStream(resource)) {
            var text = new String(Objects.requireNonNull(stream, resource).readAllBytes(), StandardCharsets.UTF_8);
            return text.replace("\r\n", "\n");
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
