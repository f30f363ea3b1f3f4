package panade.document.offer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import panade.document.kitchen.Workbook;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.sheet.Place;

/** A sheet of a workbook in the place of a CSV file. */
final class SheetTable {
    private SheetTable() {}

    /** The rows of the sheet for that kind of document; a sheet that is not there has none. */
    static Optional<List<CsvTable.Row>> read(Path file, String shownAs, CsvTable.Kind kind, Problems problems) {
        return Workbook.open(file, shownAs, problems)
                .flatMap(book -> book.table(kind.sheet())
                        .map(table -> rows(table, kind, problems))
                        .orElseGet(() -> Optional.of(List.of())));
    }

    private static Optional<List<CsvTable.Row>> rows(Workbook.Table table, CsvTable.Kind kind, Problems problems) {
        table.heads().forEach((head, origin) -> {
            if (!kind.columns().contains(head)) {
                var what = "\"" + head + "\" is not a column of " + kind.name();
                problems.unknown(origin, what, head, kind.columns(), expected(kind));
            }
        });
        for (var head : kind.required()) {
            if (!table.heads().containsKey(head)) {
                problems.add(table.origin(), "The column \"" + head + "\" is missing", expected(kind));
                return Optional.empty();
            }
        }
        var read = new ArrayList<CsvTable.Row>();
        table.rows().forEach(row -> read.add(new CsvTable.Row(cells(row, table, problems), row.origin())));
        return Optional.of(read);
    }

    private static String expected(CsvTable.Kind kind) {
        return "Expected heads such as: " + String.join(", ", kind.columns()) + ".";
    }

    /** The blank cell of a row under a head. */
    private static Origin below(Origin head, Origin row) {
        var cell = head.sheet() + "!" + Place.of(head.column() - 1, row.line());
        return new Origin(head.file(), row.line(), head.column(), "", cell);
    }

    private static Map<String, PriceCell> cells(Workbook.Row row, Workbook.Table table, Problems problems) {
        var cells = new TreeMap<String, PriceCell>();
        table.heads().forEach((head, place) -> {
            var cell = row.cell(head);
            cells.put(
                    head,
                    new PriceCell(
                            cell.map(Workbook.Filled::text).orElse(""),
                            cell.map(Workbook.Filled::origin).orElseGet(() -> below(place, row.origin())),
                            problems));
        });
        return cells;
    }
}
