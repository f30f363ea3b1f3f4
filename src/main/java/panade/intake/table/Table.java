package panade.intake.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import panade.domain.origin.Origin;
import panade.sheet.Grid;
import panade.sheet.Grid.Entry;
import panade.sheet.Place;

/**
 * A sheet whose columns are named in a row near its top.
 *
 * @param headings in order; empty where a column has none
 * @param head how many rows there are above the first that is to be read
 * @param guesses what some columns were taken for because of their heads
 */
public record Table(String file, Grid grid, List<String> headings, int head, List<Guess> guesses) {
    private static final int NEAR_THE_TOP = 20;

    public Table {
        headings = List.copyOf(headings);
        guesses = List.copyOf(guesses);
    }

    /** A row that has something in it. */
    public record Row(Table table, int number, List<Entry> entries) {
        /** What stands in a column, counted from 0. */
        public Entry at(int column) {
            return column < entries.size() ? entries.get(column) : Entry.BLANK;
        }

        public Origin origin(int column) {
            var place = table.grid().name() + "!" + Place.of(column, number);
            return new Origin(table.file(), number, column + 1, place.startsWith("!") ? place.substring(1) : place);
        }
    }

    /** The table under the first row that has all of those headings, however they are spelt. */
    public static Optional<Table> under(String file, Grid grid, Set<String> wanted, Columns columns) {
        return nearTheTop(file, grid, columns)
                .filter(table -> lower(table.headings()).containsAll(wanted))
                .findFirst();
    }

    /** The table under each row that may be the one with the headings. */
    static Stream<Table> nearTheTop(String file, Grid grid, Columns columns) {
        return IntStream.range(0, Math.min(NEAR_THE_TOP, grid.rows().size()))
                .mapToObj(i -> new Table(
                        file,
                        grid,
                        grid.rows().get(i).stream()
                                .map(entry -> columns.renamed(entry.text().strip()))
                                .toList(),
                        i + 1,
                        List.of()));
    }

    /** A heading as it stands in the table. */
    String original(int column) {
        return grid.rows().get(head - 1).get(column).text().strip();
    }

    private static List<String> lower(List<String> headings) {
        return headings.stream().map(each -> each.toLowerCase(Locale.ROOT)).toList();
    }

    /** Columns by heading in small letters; where a heading comes twice, the first. */
    public Map<String, Integer> byHeading() {
        var found = new HashMap<String, Integer>();
        for (int i = 0; i < headings.size(); i++) {
            found.putIfAbsent(headings.get(i).toLowerCase(Locale.ROOT), i);
        }
        return found;
    }

    public Origin headOrigin(int column) {
        return new Row(this, head, List.of()).origin(column);
    }

    public List<Row> rows() {
        var rows = new ArrayList<Row>();
        for (int i = head; i < grid.rows().size(); i++) {
            var entries = grid.rows().get(i);
            if (!entries.stream().allMatch(Entry::isBlank)) {
                rows.add(new Row(this, i + 1, entries));
            }
        }
        return rows;
    }
}
