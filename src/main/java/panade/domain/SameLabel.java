package panade.domain;

import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Origin;

/**
 * A label that is printed already and must stay true.
 *
 * @param names on the label, in its order; empty where they are those of the brief as it is written
 * @param written that brief, before anything on the command line changed it; null when the names are stated
 * @param origin where the brief asks for it
 */
public record SameLabel(List<String> names, @Nullable Brief written, Origin origin) {
    public SameLabel {
        names = List.copyOf(names);
    }

    /** Whether the names are known, so that the brief's bounds keep them. */
    public boolean isSettled() {
        return !names.isEmpty();
    }
}
