package panade.sheet;

import java.util.List;

/**
 * One sheet.
 *
 * @param widths of the first columns, in characters
 * @param frozen how many rows stay in sight when the rest is scrolled
 */
public record Sheet(String name, List<Integer> widths, int frozen, List<List<Cell>> rows) {
    public Sheet {
        widths = List.copyOf(widths);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
