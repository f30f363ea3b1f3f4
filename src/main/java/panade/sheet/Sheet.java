package panade.sheet;

import java.util.List;

/**
 * One sheet.
 *
 * @param widths of the first columns, in characters
 * @param frozen how many rows stay in sight when the rest is scrolled
 * @param help what helps to fill columns under the first row
 */
public record Sheet(String name, List<Integer> widths, int frozen, List<List<Cell>> rows, List<ColumnHelp> help) {
    public Sheet {
        widths = List.copyOf(widths);
        rows = rows.stream().map(List::copyOf).toList();
        help = List.copyOf(help);
    }

    /** A sheet that nobody is helped to fill. */
    public Sheet(String name, List<Integer> widths, int frozen, List<List<Cell>> rows) {
        this(name, widths, frozen, rows, List.of());
    }

    /** The same with help in filling it. */
    public Sheet helped(List<ColumnHelp> columns) {
        return new Sheet(name, widths, frozen, rows, columns);
    }
}
