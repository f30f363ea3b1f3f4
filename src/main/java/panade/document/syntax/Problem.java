package panade.document.syntax;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import panade.domain.origin.Origin;

/**
 * One thing wrong with a document.
 *
 * @param origin where
 * @param what what is wrong, with the offending words; no final full stop
 * @param advice lines below it: what was expected and what to write instead
 */
public record Problem(Origin origin, String what, List<String> advice) {
    public Problem {
        advice = List.copyOf(advice);
    }

    /** A problem with an unknown name, with the nearest valid one where it looks like a slip. */
    public static Problem unknown(Origin origin, String what, String name, Collection<String> valid, String expected) {
        var advice = new ArrayList<>(List.of(expected));
        Problems.nearest(name, valid).ifPresent(near -> advice.add("Did you mean \"" + near + "\"?"));
        return new Problem(origin, what, advice);
    }

    /** The message as printed: place, pointer and fault on the first line, advice indented below. */
    public String text() {
        var first = origin.place() + ": " + what + ".";
        return advice.isEmpty() ? first : first + "\n    " + String.join("\n    ", advice);
    }
}
