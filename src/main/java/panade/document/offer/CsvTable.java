package panade.document.offer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import panade.document.kitchen.Workbook;
import panade.document.syntax.CsvText;
import panade.document.syntax.CsvText.Cell;
import panade.document.syntax.Problems;
import panade.document.syntax.TextFile;
import panade.domain.origin.Origin;

/** Reads a CSV file whose first line names columns of a known kind of document. */
public final class CsvTable {
    /**
     * A kind of document.
     *
     * @param name with its article, such as {@code a price list}
     * @param sheet what it is called in a workbook; empty where none holds it
     * @param columns in their usual order
     * @param required those that must be there
     */
    public record Kind(String name, String sheet, List<String> columns, List<String> required) {
        /** One that is kept as a file alone. */
        public Kind(String name, List<String> columns, List<String> required) {
            this(name, "", columns, required);
        }

        private String header() {
            return "Expected a first line such as: " + String.join(",", columns) + ".";
        }
    }

    /** A row's cells by column, and its place. */
    public record Row(Map<String, PriceCell> cells, Origin origin) {}

    private final CsvText csv;
    private final String file;
    private final Kind kind;
    private final Problems problems;

    private CsvTable(CsvText csv, String file, Kind kind, Problems problems) {
        this.csv = csv;
        this.file = file;
        this.kind = kind;
        this.problems = problems;
    }

    /** The rows that can be read; empty when the columns cannot. */
    public static Optional<List<Row>> read(Path file, String shownAs, Kind kind, Problems problems) {
        return Workbook.isNamed(file) && !kind.sheet().isEmpty()
                ? SheetTable.read(file, shownAs, kind, problems)
                : TextFile.read(file, shownAs, problems).flatMap(text -> parse(text, shownAs, kind, problems));
    }

    /** The cells of the rows that can be read, as they are written, by column. */
    public static List<Map<String, String>> written(Optional<List<Row>> read) {
        var rows = new ArrayList<Map<String, String>>();
        for (var row : read.orElse(List.of())) {
            var cells = new TreeMap<String, String>();
            row.cells().forEach((name, cell) -> cells.put(name, cell.content()));
            rows.add(cells);
        }
        return rows;
    }

    /** The same of a text that is not in a file yet. */
    public static Optional<List<Row>> parse(String text, String shownAs, Kind kind, Problems problems) {
        return new CsvTable(new CsvText(text), shownAs, kind, problems).rows();
    }

    private Optional<List<Row>> rows() {
        if (csv.fault().isPresent()) {
            return refuse(csv.fault().get());
        }
        var rows = csv.rows();
        if (rows.isEmpty()) {
            var what = kind.name().replaceFirst("^an? ", "The ") + " is empty";
            problems.add(new Origin(file, 1, 1, "/header"), what, kind.header());
            return Optional.empty();
        }
        var columns = columns(headings(rows.get(0)));
        // A column too many leaves the rows readable, and what is wrong in them is told in the same run.
        return columns.keySet().containsAll(kind.required()) ? Optional.of(rows(rows, columns)) : Optional.empty();
    }

    /** The first row up to its last heading: spreadsheet programs leave separators behind it. */
    private static List<Cell> headings(List<Cell> header) {
        int end = header.size();
        while (end > 1 && header.get(end - 1).content().isBlank()) {
            end--;
        }
        return header.subList(0, end);
    }

    /** A row without the blank cells that lie beyond the headings. */
    private static List<Cell> within(List<Cell> row, int width) {
        boolean blank = row.stream().skip(width).allMatch(cell -> cell.content().isBlank());
        return row.size() > width && blank ? row.subList(0, width) : row;
    }

    private List<Row> rows(List<List<Cell>> rows, Map<String, Integer> columns) {
        int width = headings(rows.get(0)).size();
        var read = new ArrayList<Row>();
        for (int i = 1; i < rows.size(); i++) {
            row(within(rows.get(i), width), i - 1, width, columns).ifPresent(read::add);
        }
        return read;
    }

    private Optional<List<Row>> refuse(CsvText.Fault fault) {
        var pointer = fault.row() < 0 ? "/header" : "/" + fault.row() + columnNamed(fault.cell());
        problems.add(
                origin(fault.offset(), pointer),
                "This quote is not closed before the cell ends",
                "Expected a closing quote, and a quote within the cell written twice: \"5\"\" sieve\".");
        return Optional.empty();
    }

    // Only the first line is read again: behind the fault nothing can be told apart.
    private String columnNamed(int cell) {
        var first = new CsvText(csv.firstLine());
        var header = first.fault().isEmpty() ? first.rows() : List.<List<Cell>>of();
        boolean named = !header.isEmpty() && cell < header.get(0).size();
        return named ? "/" + header.get(0).get(cell).content().strip() : "";
    }

    private Map<String, Integer> columns(List<Cell> header) {
        var columns = new HashMap<String, Integer>();
        var slips = new ArrayList<String>();
        for (int i = 0; i < header.size(); i++) {
            column(header.get(i), i, columns, slips);
        }
        var missing = kind.required().stream()
                .filter(name -> !columns.containsKey(name) && !slips.contains(name))
                .toList();
        if (!missing.isEmpty()) {
            problems.add(
                    new Origin(file, 1, 1, "/header"),
                    (missing.size() == 1 ? "The column \"" : "The columns \"")
                            + String.join("\", \"", missing)
                            + (missing.size() == 1 ? "\" is missing" : "\" are missing"),
                    kind.header());
        }
        return columns;
    }

    private void column(Cell cell, int i, Map<String, Integer> columns, List<String> slips) {
        var name = cell.content().strip();
        var origin = origin(cell.offset(), "/header");
        if (!kind.columns().contains(name)) {
            var what = "\"" + name + "\" is not a column of " + kind.name();
            problems.unknown(origin, what, name, kind.columns(), kind.header());
            Problems.nearest(name, kind.columns()).ifPresent(slips::add);
        } else if (columns.putIfAbsent(name, i) != null) {
            problems.add(origin, "The column \"" + name + "\" is there twice", "Expected each column once.");
        }
    }

    private Optional<Row> row(List<Cell> cells, int row, int width, Map<String, Integer> columns) {
        if (cells.size() != width) {
            problems.add(
                    origin(cells.get(0).offset(), "/" + row),
                    "The row has " + cells.size() + " cells where the header has " + width,
                    "Expected one cell for each column, decimals with a point, and cells that hold a comma in quotes.");
            return Optional.empty();
        }
        var places = new TreeMap<String, PriceCell>();
        columns.forEach((name, i) -> {
            var cell = cells.get(i);
            var place = origin(cell.offset(), "/" + row + "/" + name);
            places.put(name, new PriceCell(cell.content().strip(), place, problems));
        });
        return Optional.of(new Row(places, origin(cells.get(0).offset(), "/" + row)));
    }

    private Origin origin(int offset, String pointer) {
        var place = csv.place(offset);
        return new Origin(file, place.line(), place.column(), pointer);
    }
}
