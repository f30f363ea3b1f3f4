package panade.document.kitchen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.sheet.Grid;
import panade.sheet.Grid.Entry;
import panade.sheet.Grid.Sort;
import panade.sheet.Place;
import panade.sheet.WorkbookTooLarge;
import panade.sheet.poi.PoiSpreadsheets;

/** The sheets of a workbook as rows under the heads of their columns, every cell with its place. */
public final class Workbook {
    /** A cell with something in it. */
    public record Filled(String text, Origin origin) {}

    /** A row of a sheet: what stands under each head, from left to right. */
    public record Row(Map<String, Filled> cells, Origin origin) {
        /** The cell under a head. */
        public Optional<Filled> cell(String head) {
            return Optional.ofNullable(cells.get(head));
        }
    }

    /** A sheet: its heads with their places, and the rows that are not blank. */
    public record Table(Map<String, Origin> heads, List<Row> rows, Origin origin) {}

    private final String file;
    private final List<Grid> grids;
    private final Problems problems;

    private Workbook(String file, List<Grid> grids, Problems problems) {
        this.file = file;
        this.grids = grids;
        this.problems = problems;
    }

    /** Where what is wrong with it is told. */
    Problems problems() {
        return problems;
    }

    /** Whether a file is a workbook by its name. */
    public static boolean isNamed(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
    }

    /** The workbook; what keeps it from being read at all is told. */
    public static Optional<Workbook> open(Path file, String shownAs, Problems problems) {
        problems.opened(shownAs);
        var whole = new Origin(shownAs, 0, 0, "");
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            problems.add(whole, "The workbook is not there or cannot be read", "Expected the path of a file.");
            return Optional.empty();
        }
        try {
            return Optional.of(new Workbook(shownAs, new PoiSpreadsheets().read(file), problems));
        } catch (WorkbookTooLarge e) {
            problems.add(whole, "The workbook is too large: " + e.getMessage(), "Expected a kitchen's own figures.");
        } catch (IOException e) {
            problems.add(
                    whole, "This is no workbook", "Expected a file saved as a workbook (.xlsx), without password.");
        }
        return Optional.empty();
    }

    /** The sheet of that name, in any case; empty where there is none. */
    public Optional<Table> table(String name) {
        return grids.stream()
                .filter(grid -> grid.name().strip().equalsIgnoreCase(name))
                .findFirst()
                .map(this::table);
    }

    /** Tells that a sheet is missing. */
    void tellMissing(String name) {
        var there = grids.stream().map(Grid::name).toList();
        problems.unknown(
                new Origin(file, 0, 0, ""),
                "There is no sheet \"" + name + "\"",
                name,
                there,
                "Expected the sheets that panade new --xlsx writes: " + String.join(", ", Sheets.NAMES) + ".");
    }

    private Table table(Grid grid) {
        var first = grid.rows().isEmpty() ? List.<Entry>of() : grid.rows().get(0);
        var heads = new LinkedHashMap<String, Origin>();
        var columns = new LinkedHashMap<Integer, String>();
        for (int i = 0; i < first.size(); i++) {
            var head = first.get(i).text().strip();
            if (head.isEmpty()) {
                continue;
            }
            if (heads.putIfAbsent(head, origin(grid, 1, i)) == null) {
                columns.put(i, head);
            } else {
                problems.add(
                        origin(grid, 1, i), "The column \"" + head + "\" is there twice", "Expected each column once.");
            }
        }
        return new Table(heads, rows(grid, columns), origin(grid, 1, 0));
    }

    private List<Row> rows(Grid grid, Map<Integer, String> columns) {
        var rows = new ArrayList<Row>();
        for (int i = 1; i < grid.rows().size(); i++) {
            var cells = new LinkedHashMap<String, Filled>();
            var row = grid.rows().get(i);
            for (int j = 0; j < row.size(); j++) {
                var origin = origin(grid, i + 1, j);
                var head = columns.get(j);
                if (row.get(j).isBlank()) {
                    continue;
                }
                if (head == null) {
                    tellNoHead(origin);
                } else if (isSound(row.get(j), origin)) {
                    cells.put(head, new Filled(row.get(j).text().strip(), origin));
                }
            }
            if (!cells.isEmpty()) {
                rows.add(new Row(cells, origin(grid, i + 1, 0)));
            }
        }
        return rows;
    }

    private void tellNoHead(Origin origin) {
        problems.add(
                origin,
                "Nothing stands over this cell in the first row, so it is not known what it means",
                "Expected a head over the column, or an empty cell.");
    }

    private boolean isSound(Entry entry, Origin origin) {
        if (entry.sort() == Sort.ERROR) {
            problems.add(origin, "The formula comes to " + entry.text(), "Expected a formula that comes to a value.");
        } else if (entry.sort() == Sort.DATE) {
            problems.add(
                    origin,
                    "The spreadsheet program took what was typed for a date",
                    "Expected the cell formatted as text, and what was meant typed again.");
        }
        return entry.sort() == Sort.TEXT || entry.sort() == Sort.NUMBER;
    }

    private Origin origin(Grid grid, int row, int column) {
        return new Origin(file, row, column + 1, "", grid.name() + "!" + Place.of(column, row));
    }
}
