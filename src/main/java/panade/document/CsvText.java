package panade.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** A CSV text (RFC 4180) whose cells know their place. */
final class CsvText {
    /** A cell's content and the offset of its first character. */
    record Cell(String content, int offset) {}

    /** Where the text stops being CSV: an opening quote that is never closed, or closed too early. */
    record Fault(int row, int cell, int offset) {}

    private final String text;
    private final List<List<Integer>> offsets = new ArrayList<>();
    private Optional<Fault> fault = Optional.empty();

    CsvText(String text) {
        this.text = text;
        locate();
    }

    Optional<Fault> fault() {
        return fault;
    }

    TextPlace place(int offset) {
        return TextPlace.at(text, offset);
    }

    /** The first line, which names the columns. */
    String firstLine() {
        return text.lines().findFirst().orElse("");
    }

    /** All rows, the header first; lines with nothing on them are left out. */
    List<List<Cell>> rows() {
        var rows = new ArrayList<List<Cell>>();
        try (var parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
            int row = 0;
            for (var csv : parser) {
                var cells = new ArrayList<Cell>();
                for (int i = 0; i < csv.size(); i++) {
                    cells.add(new Cell(csv.get(i), offsets.get(row).get(i)));
                }
                row++;
                if (cells.size() > 1 || !cells.get(0).content().isBlank()) {
                    rows.add(List.copyOf(cells));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    private void locate() {
        int i = 0;
        while (i < text.length() && fault.isEmpty()) {
            var row = new ArrayList<Integer>();
            offsets.add(row);
            i = locateRow(i, row);
        }
    }

    private int locateRow(int start, List<Integer> row) {
        int i = start;
        while (fault.isEmpty()) {
            row.add(i);
            i = endOfCell(i, row.size() - 1);
            if (i >= text.length() || text.charAt(i) != ',') {
                break;
            }
            i++;
        }
        return afterLineEnd(i);
    }

    private int endOfCell(int start, int cell) {
        boolean quoted = start < text.length() && text.charAt(start) == '"';
        int end = quoted ? afterQuotes(start) : start;
        if (quoted && (end < 0 || !endsCell(end))) {
            fault = Optional.of(new Fault(offsets.size() - 2, cell, start));
            return text.length();
        }
        while (!endsCell(end)) {
            end++;
        }
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
        return i >= text.length() || ",\r\n".indexOf(text.charAt(i)) >= 0;
    }

    private int afterLineEnd(int i) {
        return text.startsWith("\r\n", i) ? i + 2 : i + 1;
    }
}
