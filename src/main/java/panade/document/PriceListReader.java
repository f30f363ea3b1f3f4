package panade.document;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import panade.document.CsvText.Cell;
import panade.domain.IngredientSet;
import panade.domain.Offer;
import panade.domain.Origin;

/** Reads a price list. */
final class PriceListReader {
    private static final List<String> REQUIRED = List.of("ingredient", "supplier", "price", "per");
    private static final List<String> COLUMNS =
            List.of("ingredient", "supplier", "price", "per", "pack", "minimum", "available", "currency", "note");

    private final CsvText csv;
    private final String file;
    private final Optional<IngredientSet> set;
    private final Problems problems;
    private Optional<String> currency;

    private PriceListReader(
            CsvText csv, String file, Optional<IngredientSet> set, Optional<String> currency, Problems problems) {
        this.csv = csv;
        this.file = file;
        this.set = set;
        this.currency = currency;
        this.problems = problems;
    }

    /** The offers; without a set, ingredients are not looked up, and without a currency the first one stated rules. */
    static Optional<PriceList> read(
            Path file, String shownAs, Optional<IngredientSet> set, Optional<String> currency, Problems problems) {
        return TextFile.read(file, shownAs, problems)
                .flatMap(text -> new PriceListReader(new CsvText(text), shownAs, set, currency, problems).list());
    }

    private Optional<PriceList> list() {
        if (csv.fault().isPresent()) {
            return refuse(csv.fault().get());
        }
        var rows = csv.rows();
        if (rows.isEmpty()) {
            problems.add(new Origin(file, 1, 1, "/header"), "The price list is empty", header());
            return Optional.empty();
        }
        var columns = columns(rows.get(0));
        // A column too many leaves the rows readable, and what is wrong in them is told in the same run.
        return columns.keySet().containsAll(REQUIRED) ? Optional.of(list(rows, columns)) : Optional.empty();
    }

    private PriceList list(List<List<Cell>> rows, Map<String, Integer> columns) {
        int width = rows.get(0).size();
        var offers = new ArrayList<Offer>();
        for (int i = 1; i < rows.size(); i++) {
            offer(rows.get(i), i - 1, width, columns).ifPresent(offers::add);
        }
        return new PriceList(offers, currency);
    }

    private Optional<PriceList> refuse(CsvText.Fault fault) {
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

    private static String header() {
        return "Expected a first line such as: " + String.join(",", COLUMNS) + ".";
    }

    private Map<String, Integer> columns(List<Cell> header) {
        var columns = new HashMap<String, Integer>();
        var slips = new ArrayList<String>();
        for (int i = 0; i < header.size(); i++) {
            column(header.get(i), i, columns, slips);
        }
        var missing = REQUIRED.stream()
                .filter(name -> !columns.containsKey(name) && !slips.contains(name))
                .toList();
        if (!missing.isEmpty()) {
            problems.add(
                    new Origin(file, 1, 1, "/header"),
                    "The column \"" + String.join("\", \"", missing) + "\" is missing",
                    header());
        }
        return columns;
    }

    private void column(Cell cell, int i, Map<String, Integer> columns, List<String> slips) {
        var name = cell.content().strip();
        var origin = origin(cell.offset(), "/header");
        if (!COLUMNS.contains(name)) {
            problems.unknown(origin, "\"" + name + "\" is not a column of a price list", name, COLUMNS, header());
            Problems.nearest(name, COLUMNS).ifPresent(slips::add);
        } else if (columns.putIfAbsent(name, i) != null) {
            problems.add(origin, "The column \"" + name + "\" is there twice", "Expected each column once.");
        }
    }

    private Optional<Offer> offer(List<Cell> cells, int row, int width, Map<String, Integer> columns) {
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
        return offer(new OfferRow(places, problems), origin(cells.get(0).offset(), "/" + row));
    }

    private Optional<Offer> offer(OfferRow row, Origin origin) {
        int before = problems.count();
        var ingredient = row.ingredient(set);
        var supplier = row.name("supplier", "the supplier's name");
        var perKg = row.pricePerKg();
        var pack = row.amount("pack");
        var minimum = row.amount("minimum");
        var available = row.amount("available");
        currency = row.currency(currency);
        if (problems.count() > before || ingredient.isEmpty() || supplier.isEmpty() || perKg.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Offer(
                ingredient.get(),
                supplier.get(),
                perKg.get(),
                pack.orElse(null),
                minimum.orElse(null),
                available.orElse(null),
                row.note(),
                origin));
    }

    private Origin origin(int offset, String pointer) {
        var place = csv.place(offset);
        return new Origin(file, place.line(), place.column(), pointer);
    }
}
