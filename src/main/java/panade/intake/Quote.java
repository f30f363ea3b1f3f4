package panade.intake;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import panade.document.Problem;

/**
 * Offers as somebody quoted them.
 *
 * @param rows of a price list, in the order of its usual columns
 * @param untaken what is wrong with rows that are not among them
 * @param doubtful suppliers of such rows; blank where the row does not say
 */
record Quote(List<List<String>> rows, List<Problem> untaken, Set<String> doubtful) {
    static final Quote EMPTY = new Quote(List.of(), List.of(), Set.of());

    Quote {
        rows = List.copyOf(rows);
        untaken = List.copyOf(untaken);
        doubtful = Set.copyOf(doubtful);
    }

    /** Those whose offers it has. */
    Set<String> suppliers() {
        int column = PriceTable.COLUMNS.indexOf("supplier");
        return rows.stream().map(row -> row.get(column)).collect(Collectors.toSet());
    }

    /** Whether a row that could not be taken may be one of this supplier's. */
    boolean isDoubtful(String supplier) {
        return doubtful.contains(supplier) || doubtful.contains("");
    }

    /** Both, one after the other. */
    Quote and(Quote other) {
        return new Quote(
                Stream.concat(rows.stream(), other.rows.stream()).toList(),
                Stream.concat(untaken.stream(), other.untaken.stream()).toList(),
                Stream.concat(doubtful.stream(), other.doubtful.stream()).collect(Collectors.toSet()));
    }
}
