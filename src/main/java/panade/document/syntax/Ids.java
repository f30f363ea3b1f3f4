package panade.document.syntax;

import java.util.regex.Pattern;
import panade.domain.origin.Origin;

/** Checks that an id can be written and recognised: not empty, no line breaks, no outer spaces. */
public record Ids(Problems problems) {
    private static final Pattern LINE_BREAK = Pattern.compile("\\R");

    /** Whether the text can be an id; told when it cannot. */
    public boolean check(Origin origin, String id, String sort) {
        var fault = fault(id);
        if (!fault.isEmpty()) {
            problems.add(
                    origin,
                    "The name of this " + sort + " " + fault,
                    "Expected a name without line breaks or outer spaces, such as \"pea-protein\".");
        }
        return fault.isEmpty();
    }

    private static String fault(String id) {
        if (id.isBlank()) {
            return "is empty";
        }
        if (LINE_BREAK.matcher(id).find()) {
            return "has a line break in it: \"" + LINE_BREAK.matcher(id).replaceAll(" ") + "\"";
        }
        return id.equals(id.strip()) ? "" : "begins or ends with a space: \"" + id + "\"";
    }
}
