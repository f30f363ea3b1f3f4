package panade.sheet;

/** Names of cells, such as {@code C5}. */
public final class Place {
    private static final int LETTERS = 26;

    private Place() {}

    /** The cell in a column, counted from 0, and a row, counted from 1. */
    public static String of(int column, int row) {
        return column(column) + row;
    }

    /** A column, counted from 0, by its letters. */
    public static String column(int column) {
        var letters = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
        }
        return letters.toString();
    }

    /** The cells of a column from one row to another. */
    public static String range(int column, int from, int to) {
        return of(column, from) + ":" + of(column, to);
    }

    /** The sum of a column from one row to another. */
    public static String sum(int column, int from, int to) {
        return "SUM(" + range(column, from, to) + ")";
    }
}
