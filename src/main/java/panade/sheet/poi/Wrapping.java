package panade.sheet.poi;

import java.util.List;
import java.util.stream.IntStream;
import panade.sheet.Cell;
import panade.sheet.Cell.Look;
import panade.sheet.Cell.Text;

/** How many lines a row needs; not every program makes room for wrapped words by itself when it opens a file. */
final class Wrapping {
    /** What a column without a stated width holds (ECMA-376, part 1, 18.3.1.81). */
    private static final int USUAL = 8;

    private Wrapping() {}

    /** Lines of the row's longest cell among those that wrap. */
    static int lines(List<Cell> cells, List<Integer> widths) {
        return IntStream.range(0, cells.size())
                .map(column -> lines(cells.get(column), column < widths.size() ? widths.get(column) : USUAL))
                .max()
                .orElse(1);
    }

    private static int lines(Cell cell, int width) {
        return cell instanceof Text text && (text.look() == Look.PROSE || text.look() == Look.HEADING)
                ? lines(text.text(), width)
                : 1;
    }

    /** Words fill a line as long as they fit; one that is longer than a line is broken. */
    private static int lines(String text, int width) {
        int lines = 1;
        int used = 0;
        for (var word : text.split(" ", -1)) {
            int needed = used == 0 ? word.length() : used + 1 + word.length();
            if (needed > width && used > 0) {
                lines++;
                needed = word.length();
            }
            lines += Math.max(0, needed - 1) / width;
            used = needed > width ? (needed - 1) % width + 1 : needed;
        }
        return lines;
    }
}
