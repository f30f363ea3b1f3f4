package panade.document.syntax;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A CSV text (RFC 4180, or with what spreadsheet programs put between cells) whose cells know their place. */
public final class CsvText {
    /** A cell's content and the offset of its first character. */
    public record Cell(String content, int offset) {}

    /** Where the text stops being CSV: an opening quote that is never closed, or closed too early. */
    public record Fault(int row, int cell, int offset) {}

    private final String text;
    private final CsvSeparator separator;
    private final int[] lineStarts;
    private final List<List<Cell>> rows = new ArrayList<>();
    private Optional<Fault> fault = Optional.empty();

    public CsvText(String text) {
        this.text = text;
        this.separator = CsvSeparator.of(text);
        this.lineStarts = lineStarts(text);
        read();
    }

    public Optional<Fault> fault() {
        return fault;
    }

    /** Line and column of a character, both from 1. */
    public TextPlace place(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        int line = found >= 0 ? found : -found - 2;
        return new TextPlace(line + 1, offset - lineStarts[line] + 1);
    }

    /** The first line, which names the columns. */
    public String firstLine() {
        return text.substring(separator.start()).lines().findFirst().orElse("");
    }

    /** All rows, the header first; rows with nothing in any cell are left out. */
    public List<List<Cell>> rows() {
        return rows.stream()
                .filter(row -> row.stream().anyMatch(cell -> !cell.content().isBlank()))
                .toList();
    }

    private void read() {
        int i = separator.start();
        while (i < text.length() && fault.isEmpty()) {
            var row = new ArrayList<Cell>();
            rows.add(row);
            i = readRow(i, row);
        }
    }

    private int readRow(int start, List<Cell> row) {
        int i = start;
        while (fault.isEmpty()) {
            i = readCell(i, row);
            if (i >= text.length() || text.charAt(i) != separator.sign()) {
                break;
            }
            i++;
        }
        return text.startsWith("\r\n", i) ? i + 2 : i + 1;
    }

    /** Adds a cell and returns the offset behind it. */
    private int readCell(int start, List<Cell> row) {
        boolean quoted = start < text.length() && text.charAt(start) == '"';
        int end = quoted ? afterQuotes(start) : start;
        if (quoted && (end < 0 || !endsCell(end))) {
            fault = Optional.of(new Fault(rows.size() - 2, row.size(), start));
            return text.length();
        }
        while (!endsCell(end)) {
            end++;
        }
        var written = text.substring(start, end);
        var content = quoted ? written.substring(1, written.length() - 1).replace("\"\"", "\"") : written;
        row.add(new Cell(content, start));
        return end;
    }

    /** The offset behind the closing quote, or -1. */
    private int afterQuotes(int start) {
        int i = text.indexOf('"', start + 1);
        while (i >= 0 && i + 1 < text.length() && text.charAt(i + 1) == '"') {
            i = text.indexOf('"', i + 2);
        }
        return i < 0 ? -1 : i + 1;
    }

    private boolean endsCell(int i) {
        return i >= text.length()
                || text.charAt(i) == separator.sign()
                || text.charAt(i) == '\r'
                || text.charAt(i) == '\n';
    }

    /** Offsets at which lines begin; a line ends with a line feed, a carriage return or both. */
    private static int[] lineStarts(String text) {
        var starts = new ArrayList<Integer>();
        starts.add(0);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (c == '\n' || (c == '\r' && !pair)) {
                starts.add(i + 1);
            }
        }
        return starts.stream().mapToInt(Integer::intValue).toArray();
    }
}
