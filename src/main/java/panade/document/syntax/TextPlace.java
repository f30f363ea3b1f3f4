package panade.document.syntax;

/** A line and a column, both from 1, as an editor shows them. */
public record TextPlace(int line, int column) {
    /** The place of the character at an offset. */
    static TextPlace at(String text, int offset) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < offset; i++) {
            boolean ends = text.charAt(i) == '\n' || (text.charAt(i) == '\r' && !followedByLineFeed(text, i));
            if (ends) {
                line++;
                start = i + 1;
            }
        }
        return new TextPlace(line, offset - start + 1);
    }

    private static boolean followedByLineFeed(String text, int i) {
        return i + 1 < text.length() && text.charAt(i + 1) == '\n';
    }
}
