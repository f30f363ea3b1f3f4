package panade.intake.price;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import panade.document.syntax.Problem;

/**
 * Offers as somebody quoted them.
 *
 * @param rows of a price list, in the order of its usual columns
 * @param untaken what is wrong with rows that are not among them
 * @param doubtful suppliers of such rows; blank where the row does not say
 */
public record Quote(List<List<String>> rows, List<Problem> untaken, Set<String> doubtful) {
    public static final Quote EMPTY = new Quote(List.of(), List.of(), Set.of());

    public Quote {
        rows = List.copyOf(rows);
        untaken = List.copyOf(untaken);
        doubtful = Set.copyOf(doubtful);
    }

    /** Those whose offers it has. */
    public Set<String> suppliers() {
        int column = PriceTable.COLUMNS.indexOf("supplier");
        return rows.stream().map(row -> row.get(column)).collect(Collectors.toSet());
    }

    /** Whether a row that could not be taken may be one of this supplier's. */
    public boolean isDoubtful(String supplier) {
        return doubtful.contains(supplier) || doubtful.contains("");
    }

    /** Both, one after the other. */
    public Quote and(Quote other) {
        return new Quote(
                Stream.concat(rows.stream(), other.rows.stream()).toList(),
                Stream.concat(untaken.stream(), other.untaken.stream()).toList(),
                Stream.concat(doubtful.stream(), other.doubtful.stream()).collect(Collectors.toSet()));
    }
}
