package panade.domain.origin;

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
}
