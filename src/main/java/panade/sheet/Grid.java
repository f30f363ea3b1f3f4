package panade.sheet;

import java.util.List;

/** A sheet, or a CSV file, as somebody else filled it: rows of entries, some shorter than others. */
public record Grid(String name, List<List<Entry>> rows) {
    public Grid {
        rows = rows.stream().map(List::copyOf).toList();
    }

    /**
     * What stands in a cell.
     *
     * @param text as written; a number in plain decimals, no digit lost
     * @param sort what the file says it is
     */
    public record Entry(String text, Sort sort) {
        /** Nothing. */
        public static final Entry BLANK = new Entry("", Sort.TEXT);

        /** Whether nothing stands there. */
        public boolean isBlank() {
            return text.isBlank();
        }
    }

    /** What a file says that a cell is. */
    public enum Sort {
        TEXT,
        NUMBER,
        /** A date, which is what a spreadsheet makes of some numbers when they are typed. */
        DATE,
        /** A formula that failed. */
        ERROR
    }
}
