package panade.document.syntax;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the command line, or whoever tries numbers, says in place of the brief.
 *
 * @param prices price lists instead of the brief's; empty to keep them
 * @param batch the batch as typed, such as {@code 20 lb}; null to keep the brief's
 * @param without ids to avoid as well
 * @param target the target price as typed; null to keep the brief's
 * @param typed fields of the brief, or of those that it is based on, as typed in their place
 */
public record Overrides(
        List<Path> prices,
        @Nullable String batch,
        List<String> without,
        @Nullable String target,
        List<TypedField> typed) {
    /** Changes nothing. */
    public static final Overrides NONE = new Overrides(List.of(), null, List.of(), null);

    /** What the command line says alone. */
    public Overrides(List<Path> prices, @Nullable String batch, List<String> without, @Nullable String target) {
        this(prices, batch, without, target, List.of());
    }

    /** The same with one price list. */
    public Overrides with(Path list) {
        return new Overrides(List.of(list), batch, without, target, typed);
    }
}
