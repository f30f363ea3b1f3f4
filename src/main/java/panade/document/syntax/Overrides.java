package panade.document.syntax;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the command line says in place of the brief.
 *
 * @param prices price lists instead of the brief's; empty to keep them
 * @param batch the batch as typed, such as {@code 20 lb}; null to keep the brief's
 * @param without ids to avoid as well
 * @param target the target price as typed; null to keep the brief's
 */
public record Overrides(
        List<Path> prices,
        @Nullable String batch,
        List<String> without,
        @Nullable String target) {
    /** Changes nothing. */
    public static final Overrides NONE = new Overrides(List.of(), null, List.of(), null);

    /** The same with one price list. */
    public Overrides with(Path list) {
        return new Overrides(List.of(list), batch, without, target);
    }
}
