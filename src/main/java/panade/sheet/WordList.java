package panade.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Several words in one cell, with semicolons between them; what is written is read again as it was. */
public final class WordList {
    /** What stands for a list that is known to be empty. */
    public static final String NONE = "none";

    private WordList() {}

    /**
     * The words with semicolons between them; a semicolon or a backslash in a word gets a backslash before it, and so
     * does a word that would be taken for an empty list.
     */
    public static String written(Collection<String> words) {
        var escaped = words.stream()
                .map(word -> word.replace("\\", "\\\\").replace(";", "\\;"))
                .toList();
        var text = String.join("; ", escaped);
        return text.equals(NONE) ? "\\" + text : text;
    }

    /** The words; a backslash takes the next sign as it is, and {@code none} is a list that is known to be empty. */
    public static List<String> read(String text) {
        if (text.strip().equals(NONE)) {
            return List.of();
        }
        var words = new ArrayList<String>();
        var word = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign == '\\' && i + 1 < text.length()) {
                i++;
                word.append(text.charAt(i));
            } else if (sign == ';') {
                add(word, words);
            } else {
                word.append(sign);
            }
        }
        add(word, words);
        return List.copyOf(words);
    }

    private static void add(StringBuilder word, List<String> words) {
        var text = word.toString().strip();
        if (!text.isEmpty()) {
            words.add(text);
        }
        word.setLength(0);
    }
}
