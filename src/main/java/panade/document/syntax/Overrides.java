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
 * @param settings numbers to try as typed, such as {@code protein min 12 %}
 */
public record Overrides(
        List<Path> prices,
        @Nullable String batch,
        List<String> without,
        @Nullable String target,
        List<TypedField> typed,
        List<String> settings) {
    private static final int LONGEST_WORDS = 60;

    /** Changes nothing. */
    public static final Overrides NONE = new Overrides(List.of(), null, List.of(), null);

    /** What is typed in the place of fields, with no number tried. */
    public Overrides(
            List<Path> prices,
            @Nullable String batch,
            List<String> without,
            @Nullable String target,
            List<TypedField> typed) {
        this(prices, batch, without, target, typed, List.of());
    }

    /** What the command line says alone. */
    public Overrides(List<Path> prices, @Nullable String batch, List<String> without, @Nullable String target) {
        this(prices, batch, without, target, List.of());
    }

    /** The same with one price list. */
    public Overrides with(Path list) {
        return new Overrides(List.of(list), batch, without, target, typed, settings);
    }

    /** A title that says what is tried, for whoever reads a page or a workbook later. */
    public String titled(String title) {
        var all = String.join("; ", settings);
        var what = all.length() <= LONGEST_WORDS ? all : settings.size() + " numbers";
        return settings.isEmpty() ? title : title + ", trying " + what;
    }

    /** The same with those numbers to try, or with none. */
    public Overrides trying(List<String> others) {
        return new Overrides(prices, batch, without, target, typed, others);
    }
}
