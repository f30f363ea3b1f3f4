package panade.intake.price;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import panade.document.syntax.CsvSeparator;
import panade.domain.origin.Origin;
import panade.intake.table.Columns;
import panade.intake.table.Faults;
import panade.intake.table.Table;
import panade.sheet.Grid;
import panade.sheet.Grid.Entry;
import panade.sheet.Grid.Sort;

/**
 * Reads CSV as a sheet without a name (RFC 4180, or with semicolons or tabs where those are what separates the
 * headings).
 */
public final class CsvGrid {
    private static final String GUARDED = "=+-@\t\r";

    private CsvGrid() {}

    public static Optional<Grid> of(String text, String shown, Faults faults) {
        try {
            return Optional.of(new Grid("", entries(text)));
        } catch (UncheckedIOException | CSVException e) {
            faults.add(
                    new Origin(shown, 0, 0, ""),
                    "A quote in it is not closed, or closed too early",
                    "Expected a quote within a cell written twice: \"5\"\" sieve\".");
            return Optional.empty();
        }
    }

    private static List<List<Entry>> entries(String text) throws CSVException {
        var separator = CsvSeparator.of(text);
        var format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator.sign())
                .setIgnoreEmptyLines(false)
                .get();
        var rows = new ArrayList<List<Entry>>();
        try (var parser = CSVParser.parse(text.substring(separator.start()), format)) {
            for (var row : parser) {
                rows.add(row.stream()
                        .map(cell -> new Entry(unguarded(cell), Sort.TEXT))
                        .toList());
            }
        } catch (CSVException e) {
            throw e;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    /** Without the apostrophe that keeps a spreadsheet from taking a cell for a formula. */
    private static String unguarded(String cell) {
        boolean guarded = cell.length() > 1 && cell.charAt(0) == '\'' && GUARDED.indexOf(cell.charAt(1)) >= 0;
        return guarded ? cell.substring(1) : cell;
    }

    /** The rows of one of our own price lists, in the order of its usual columns; none where it cannot be read. */
    public static List<List<String>> offers(String text, String shown, Faults faults) {
        return of(text, shown, faults)
                .flatMap(grid -> Table.under(shown, grid, Set.of("ingredient", "price"), Columns.OURS))
                .map(CsvGrid::offers)
                .orElse(List.of());
    }

    private static List<List<String>> offers(Table table) {
        var columns = table.byHeading();
        return table.rows().stream()
                .map(row -> PriceTable.COLUMNS.stream()
                        .map(column -> Optional.ofNullable(columns.get(column))
                                .map(found -> row.at(found).text().strip())
                                .orElse(""))
                        .toList())
                .toList();
    }
}
