package panade.domain;

import java.util.List;
import java.util.Set;

/**
 * A sub-mix made on its own and folded in at the end.
 *
 * @param id its name in documents
 * @param title its name in the kitchen
 * @param ingredients ids of what may go into it
 * @param method kitchen steps, in order
 */
public record Stage(String id, String title, Set<String> ingredients, List<String> method) {
    /** The stage that always exists, comes last and takes whatever no other stage names. */
    public static final String MIX = "mix";
}
