package panade.intake;

import java.util.ArrayList;
import java.util.List;

/** Several words in one cell, with semicolons between them. */
final class Lists {
    private static final String NONE = "none";

    private Lists() {}

    /** The words; a backslash takes the next sign as it is, and {@code none} is a list that is known to be empty. */
    static List<String> read(String text) {
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
