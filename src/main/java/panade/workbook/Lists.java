package panade.workbook;

import java.util.Collection;

/** Several words in one cell. */
final class Lists {
    /** What stands for a list that is known to be empty. */
    static final String NONE = "none";

    private Lists() {}

    /**
     * The words with semicolons between them; a semicolon or a backslash in a word gets a backslash before it, and so
     * does a word that would be taken for an empty list.
     */
    static String written(Collection<String> words) {
        var escaped = words.stream()
                .map(word -> word.replace("\\", "\\\\").replace(";", "\\;"))
                .toList();
        var text = String.join("; ", escaped);
        return text.equals(NONE) ? "\\" + text : text;
    }
}
