package panade.intake.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/**
 * Changes a JSON text in place: whatever is not changed, comments and layout too, stays as its author wrote it. Places
 * are named by JSON Pointers (RFC 6901).
 */
public final class JsonEdits {
    private static final String INDENT = "     ";

    private record Span(int start, int end) {}

    private record Edit(int at, int end, String text) {}

    private final String text;
    private final Map<String, Span> values = new HashMap<>();
    private final Map<String, Span> lastIn = new HashMap<>();
    private final List<Edit> edits = new ArrayList<>();
    private final Map<String, Integer> appended = new HashMap<>();

    /** Edits of a text that is known to be valid. */
    public JsonEdits(String text) {
        this.text = text;
        try (var parser = Json.MAPPER.createParser(text)) {
            parser.nextToken();
            locate(parser, "");
        }
    }

    private Span locate(JsonParser parser, String pointer) {
        int start = (int) parser.currentTokenLocation().getCharOffset();
        var token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                var child = pointer + "/" + escaped(parser.currentName());
                parser.nextToken();
                lastIn.put(pointer, locate(parser, child));
            }
        } else if (token == JsonToken.START_ARRAY) {
            for (int i = 0; parser.nextToken() != JsonToken.END_ARRAY; i++) {
                lastIn.put(pointer, locate(parser, pointer + "/" + i));
            }
        } else {
            // Read to its end, which the parser would otherwise put off.
            parser.getString();
        }
        var span = new Span(start, (int) parser.currentLocation().getCharOffset());
        values.put(pointer, span);
        return span;
    }

    public static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    /** Puts another value in a value's place. */
    public void replace(String pointer, String json) {
        var span = Objects.requireNonNull(values.get(pointer));
        edits.add(new Edit(span.start(), span.end(), json));
    }

    /**
     * Adds a field or an item at the end of an object or a list.
     *
     * @param indent spaces before it on a line of its own; empty where it may stay on the line of its neighbour
     */
    public void append(String pointer, String json, String indent) {
        var whole = Objects.requireNonNull(values.get(pointer));
        var last = lastIn.get(pointer);
        int from = last == null ? whole.start() + 1 : last.end();
        var rest = text.substring(from, whole.end() - 1);
        int before = appended.merge(pointer, 1, Integer::sum) - 1;
        boolean needsComma = last != null && before == 0 && !hasComma(rest);
        if (needsComma) {
            edits.add(new Edit(from, from, ","));
        }
        boolean broken = !indent.isEmpty() || rest.indexOf('\n') >= 0 || rest.contains("//");
        var first = last == null && before == 0 ? "" : " ";
        var gap = broken ? "\n" + (indent.isEmpty() ? INDENT : indent) : first;
        int at = from + rest.stripTrailing().length();
        edits.add(new Edit(at, at, (before == 0 ? "" : ",") + gap + json));
    }

    /** Whether a comma stands there outside of comments. */
    private static boolean hasComma(String rest) {
        return rest.replaceAll("(?s)/\\*.*?\\*/|//[^\\n]*", "").indexOf(',') >= 0;
    }

    /** The text with all changes made. */
    public String apply() {
        var changed = new StringBuilder();
        int from = 0;
        for (var edit : edits.stream().sorted(Comparator.comparingInt(Edit::at)).toList()) {
            changed.append(text, from, edit.at()).append(edit.text());
            from = edit.end();
        }
        return changed.append(text.substring(from)).toString();
    }
}
