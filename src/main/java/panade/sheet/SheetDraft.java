package panade.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A sheet as it is filled from the top; tells where each row came to stand, so that formulas can name it. */
public final class SheetDraft {
    private final String name;
    private final List<Integer> widths;
    private final List<List<Cell>> rows = new ArrayList<>();
    private int frozen;

    /** A sheet with nothing on it. */
    public SheetDraft(String name, Integer... widths) {
        this.name = name;
        this.widths = List.of(widths);
    }

    /** Adds a row; gives its number, counted from 1. */
    public int add(Cell... cells) {
        return add(List.of(cells));
    }

    /** Adds a row; gives its number, counted from 1. */
    public int add(List<Cell> cells) {
        rows.add(List.copyOf(cells));
        return rows.size();
    }

    /** Adds a row of plain words. */
    public int say(String words) {
        return add(Cell.text(words));
    }

    /** Adds the sheet's title. */
    public int title(String words) {
        return add(new Cell.Text(words, Cell.Look.TITLE));
    }

    /** Adds the words over the columns, which stay in sight. */
    public int head(String... words) {
        return head(Stream.of(words).toList());
    }

    /** Adds the words over the columns, which stay in sight. */
    public int head(List<String> words) {
        frozen = add(words.stream().map(Cell::heading).toList());
        return frozen;
    }

    /** The number of the row that is added next. */
    public int next() {
        return rows.size() + 1;
    }

    /** The sheet. */
    public Sheet finish() {
        return new Sheet(name, widths, frozen, rows);
    }
}
