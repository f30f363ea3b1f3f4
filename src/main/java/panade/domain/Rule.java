package panade.domain;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Origin;
import panade.quantity.Quantity;

/**
 * A rule about which ingredients are used, however much of the rest. An option is an ingredient with its other lots; it
 * is used when more than nothing of them is in the batch, over all stages.
 */
public sealed interface Rule {
    /** What somebody asked to be used without saying how much must make up of the batch at least, in hundredths. */
    String LEAST_USE = "0.01 %";

    /** Where a result points to: a JSON Pointer into the brief. */
    String path();

    /** Where it was written. */
    Origin origin();

    /** Each of these, every lot on its own: none, or at least that share of the batch. */
    record WhenUsed(Set<String> ingredients, Quantity min, String path, Origin origin) implements Rule {}

    /**
     * How many of these may be used.
     *
     * @param min how many at least; null when there is no floor
     * @param max how many at most; null when there is no ceiling
     */
    record Choose(
            List<Set<String>> options,
            @Nullable Integer min,
            @Nullable Integer max,
            String path,
            Origin origin) implements Rule {}

    /** If any of the first is used, so is one of the second. */
    record IfThen(List<Set<String>> when, List<Set<String>> then, String path, Origin origin) implements Rule {}

    /** At most one of these. */
    record NeverTogether(List<Set<String>> options, String path, Origin origin) implements Rule {}

    /** How many names the label may show at most. */
    record MostNames(int max, String path, Origin origin) implements Rule {}
}
