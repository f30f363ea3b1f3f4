package panade.intake;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import panade.intake.table.Columns;

/**
 * What is to be taken in.
 *
 * @param file a workbook, a CSV file or a JSON download
 * @param set the folder of the ingredient set
 * @param columns what the table's columns are
 * @param sheet the one sheet that is wanted; null for all that can be read
 * @param traits headings of columns that are scores or measures of one's own
 * @param only which foods of a download
 * @param usual what prices mean that have no such column: {@code supplier}, {@code per}, {@code currency}
 * @param name of the price list, without {@code prices-}
 * @param differing what becomes of what is there and differs
 */
public record Request(
        Path file,
        Path set,
        Columns columns,
        @Nullable String sheet,
        List<String> traits,
        List<String> only,
        Map<String, String> usual,
        String name,
        Differing differing) {
    public Request {
        traits = List.copyOf(traits);
        only = List.copyOf(only);
        usual = Map.copyOf(usual);
    }

    /** What becomes of values that are already in the set and differ from what is taken in. */
    public enum Differing {
        /** Nothing is taken in, and the differences are told. */
        REFUSED,
        /** The new values are taken. */
        UPDATED,
        /** The old values stay. */
        KEPT
    }
}
