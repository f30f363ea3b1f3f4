package panade.domain;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import panade.quantity.Quantity;

/**
 * A sub-mix made on its own and folded in at the end.
 *
 * @param id its name in documents
 * @param title its name in the kitchen
 * @param ingredients ids of what may go into it
 * @param method kitchen steps, in order
 * @param weighing the resolution of the scale that it is weighed on; null for the brief's own
 */
public record Stage(
        String id,
        String title,
        Set<String> ingredients,
        List<String> method,
        @Nullable Quantity weighing) {
    /** The stage that always exists, comes last and takes whatever no other stage names. */
    public static final String MIX = "mix";
}
