package panade.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.text.WordUtils;
import panade.report.Block;
import panade.report.Block.Column;

/**
 * A table as lines of text that fit a width. Where it is too wide, columns of words become narrower and their cells go
 * on in the next line; where that is not enough, its last columns follow below, the first repeated beside them. A
 * number is never cut.
 */
final class TextTable {
    private static final String GAP = "  ";
    private static final int NARROW = 16;
    private static final int NARROWEST = 8;

    private final List<Column> columns;
    private final List<List<String>> rows;
    private final int width;

    TextTable(Block.Table table, int width) {
        this.columns = table.columns().stream()
                .map(column -> new Column(PlainText.name(column.heading()), column.number()))
                .toList();
        this.rows = table.rows().stream()
                .map(row -> row.stream().map(PlainText::name).toList())
                .toList();
        this.width = width;
    }

    /** The lines, headings first. */
    List<String> lines() {
        var widths = IntStream.range(0, columns.size()).map(this::widest).toArray();
        shrink(widths, NARROW, false);
        shrink(widths, NARROW, true);
        shrink(widths, NARROWEST, false);
        var lines = new ArrayList<String>();
        for (var part : parts(widths)) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            lines.addAll(laidOut(headings(), part, widths));
            rows.forEach(row -> lines.addAll(laidOut(row, part, widths)));
        }
        return lines;
    }

    private List<String> headings() {
        return columns.stream().map(Column::heading).toList();
    }

    private int widest(int column) {
        return Math.max(widestCell(column), columns.get(column).heading().length());
    }

    private int widestCell(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }

    /** Takes what is too much from the widest columns first. */
    private void shrink(int[] widths, int least, boolean numbers) {
        while (total(widths) > width) {
            int widest = -1;
            for (int i = 0; i < widths.length; i++) {
                if (widths[i] > least(i, least, numbers) && (widest < 0 || widths[i] > widths[widest])) {
                    widest = i;
                }
            }
            if (widest < 0) {
                return;
            }
            widths[widest]--;
        }
    }

    /** What a column must have: one of numbers all of them, and its heading unless that may be broken. */
    private int least(int column, int least, boolean numbers) {
        if (!columns.get(column).number()) {
            return least;
        }
        return numbers ? Math.max(NARROWEST, widestCell(column)) : widest(column);
    }

    private static int total(int[] widths) {
        return Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1);
    }

    /** Columns that fit beside each other; each part after the first begins with the first column. */
    private List<List<Integer>> parts(int[] widths) {
        var parts = new ArrayList<List<Integer>>();
        var part = new ArrayList<Integer>();
        int used = 0;
        for (int i = 0; i < widths.length; i++) {
            boolean full = used + GAP.length() + widths[i] > width;
            if (full && part.size() > (parts.isEmpty() ? 0 : 1)) {
                parts.add(part);
                part = new ArrayList<>(List.of(0));
                used = widths[0];
            }
            used += widths[i] + (part.isEmpty() ? 0 : GAP.length());
            part.add(i);
        }
        parts.add(part);
        return parts;
    }

    private List<String> laidOut(List<String> cells, List<Integer> part, int[] widths) {
        var wrapped = part.stream().map(i -> wrapped(cells.get(i), widths[i])).toList();
        int height = wrapped.stream().mapToInt(List::size).max().orElse(0);
        return IntStream.range(0, height)
                .mapToObj(line -> line(wrapped, line, part, widths))
                .toList();
    }

    private static List<String> wrapped(String cell, int width) {
        return cell.length() <= width
                ? List.of(cell)
                : List.of(WordUtils.wrap(cell, width, "\n", true).split("\n", -1));
    }

    private String line(List<List<String>> cells, int number, List<Integer> part, int[] widths) {
        var line = new StringBuilder();
        for (int i = 0; i < part.size(); i++) {
            int column = part.get(i);
            var cell = number < cells.get(i).size() ? cells.get(i).get(number) : "";
            var padding = " ".repeat(Math.max(0, widths[column] - cell.length()));
            line.append(i == 0 ? "" : GAP);
            line.append(columns.get(column).number() ? padding + cell : cell + padding);
        }
        return line.toString();
    }
}
