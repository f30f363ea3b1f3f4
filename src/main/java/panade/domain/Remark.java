package panade.domain;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Something in a document that is no fault, and that may still not be what its cook meant.
 *
 * @param origin where it is written
 * @param text what it is, what it does to the answer and what to write instead; whole sentences
 */
public record Remark(Origin origin, String text) {
    /** The document, as the user would type it. */
    public String file() {
        return origin.file();
    }

    /**
     * JSON Pointer into the document; for a table, {@code /ROW} or {@code /ROW/COLUMN}, rows from 0 below the header.
     */
    public String path() {
        return origin.pointer();
    }

    /** The remark as printed, its place first. */
    public String line() {
        return origin.place() + ": " + text;
    }

    /** The remarks on several briefs, each once, in the order of the briefs. */
    public static List<Remark> on(List<Brief> briefs) {
        Set<Remark> remarks = new LinkedHashSet<>();
        briefs.forEach(brief -> remarks.addAll(brief.remarks()));
        return List.copyOf(remarks);
    }
}
