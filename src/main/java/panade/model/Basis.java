package panade.model;

import java.util.Set;

/**
 * Which variables are basic: columns by index, rows by index (a basic row is one whose slack is basic).
 *
 * @param columns indices of basic columns
 * @param rows indices of rows with a basic slack
 */
public record Basis(Set<Integer> columns, Set<Integer> rows) {
    public Basis {
        columns = Set.copyOf(columns);
        rows = Set.copyOf(rows);
    }
}
