package panade.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.Problem;
import panade.domain.IngredientSet;
import panade.domain.Origin;
import panade.intake.Table.Row;
import panade.quantity.Quantity;
import panade.quantity.UnitPrice;

/** Reads offers from a table, and writes them as a price list. */
final class PriceTable {
    static final List<String> COLUMNS =
            List.of("ingredient", "supplier", "price", "per", "pack", "minimum", "available", "currency", "note");

    private final Table table;
    private final Map<String, String> usual;
    private final IngredientSet set;
    private final Faults faults;
    private final Map<String, Integer> headings;
    private final List<Row> taken = new ArrayList<>();

    /**
     * A table of prices.
     *
     * @param usual what is meant where the table has no such column: {@code supplier}, {@code per}, {@code currency}
     */
    PriceTable(Table table, Map<String, String> usual, IngredientSet set, Faults faults) {
        this.table = table;
        this.usual = usual;
        this.set = set;
        this.faults = faults;
        this.headings = table.byHeading();
    }

    /** Columns that mean nothing here. */
    List<String> notTaken() {
        return table.headings().stream()
                .filter(heading -> !heading.isBlank())
                .filter(heading -> !COLUMNS.contains(heading.toLowerCase(Locale.ROOT)))
                .map(heading -> "\"" + heading + "\"")
                .toList();
    }

    /** The rows of a price list, without the header. */
    List<List<String>> read() {
        var rows = new ArrayList<List<String>>();
        var needed = List.of("supplier", "per").stream()
                .filter(name -> !headings.containsKey(name) && !usual.containsKey(name))
                .toList();
        if (!needed.isEmpty()) {
            faults.add(
                    table.headOrigin(0),
                    "The table does not say this of the prices: " + String.join(", ", needed),
                    "Expected a column of that name, or "
                            + String.join(
                                    " and ",
                                    needed.stream().map(PriceTable::option).toList()) + ".");
            return rows;
        }
        for (var row : table.rows()) {
            rows.add(COLUMNS.stream().map(column -> cell(row, column)).toList());
            taken.add(row);
        }
        return rows;
    }

    private static String option(String name) {
        return name.equals("per") ? "--per kg" : "--" + name + " NAME";
    }

    /** Where a row of the price list came from, counted from 0. */
    Origin origin(int row, String column) {
        var found = taken.get(row);
        return found.origin(headings.getOrDefault(column, 0));
    }

    private String cell(Row row, String column) {
        var at = headings.get(column);
        if (at == null) {
            return usual.getOrDefault(column, "");
        }
        var entry = row.at(at);
        if (column.equals("price")) {
            return new Numbers(faults)
                    .read(entry, row.origin(at), BigFraction.ONE)
                    .map(number -> number.toPlainString())
                    .orElse("");
        }
        var text = entry.text().strip();
        return column.equals("ingredient") ? id(text, row.origin(at)) : text;
    }

    /** The id of an ingredient that is called so, by its id or, where only one is, by its name. */
    private String id(String text, Origin origin) {
        if (set.ingredients().containsKey(text)) {
            return text;
        }
        var named = set.ingredients().values().stream()
                .filter(ingredient -> ingredient.name().equalsIgnoreCase(text))
                .toList();
        if (named.size() == 1) {
            return named.get(0).id();
        }
        if (!text.isEmpty()) {
            faults.add(Problem.unknown(
                    origin,
                    "There is no ingredient \"" + text + "\" in the set",
                    text,
                    set.ingredients().keySet(),
                    "Expected the id or the name of an ingredient of the set."));
        }
        return text;
    }

    /** A price list's text. */
    static String csv(List<List<String>> rows) {
        var text = new StringBuilder();
        try (var csv =
                CSVFormat.RFC4180.builder().setRecordSeparator("\n").get().print(text)) {
            csv.printRecord(COLUMNS);
            for (var row : rows) {
                csv.printRecord(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** What differs between two price lists, offer by offer. */
    static List<Change> changes(List<List<String>> before, List<List<String>> after) {
        var changes = new ArrayList<Change>();
        var old = byOffer(before);
        byOffer(after).forEach((key, row) -> {
            var was = Optional.ofNullable(old.remove(key));
            if (was.isEmpty()) {
                changes.add(new Change(Change.Sort.ADDED, key, "", "", words(row)));
            } else {
                differences(key, was.get(), row, changes);
            }
        });
        old.forEach((key, row) -> changes.add(new Change(Change.Sort.GONE, key, "", words(row), "")));
        return changes;
    }

    /** The rows of one list, and those of another that are for other offers. */
    static List<List<String>> joined(List<List<String>> before, List<List<String>> after) {
        var rows = byOffer(after);
        rows.putAll(byOffer(before));
        return List.copyOf(rows.values());
    }

    private static Map<String, List<String>> byOffer(List<List<String>> rows) {
        var offers = new LinkedHashMap<String, List<String>>();
        var counts = new HashMap<String, Integer>();
        for (var row : rows) {
            var key = row.get(0) + " from " + row.get(1);
            int count = counts.merge(key, 1, Integer::sum);
            offers.put(count == 1 ? key : key + " (" + count + ")", row);
        }
        return offers;
    }

    private static String words(List<String> row) {
        return row.get(2) + "/" + row.get(3);
    }

    private static void differences(String key, List<String> was, List<String> is, List<Change> changes) {
        if (!UnitPrice.perKg(words(was)).equals(UnitPrice.perKg(words(is)))) {
            changes.add(new Change(Change.Sort.CHANGED, key, "price", words(was), words(is)));
        }
        for (int i = COLUMNS.indexOf("pack"); i < COLUMNS.size(); i++) {
            if (!isSame(was.get(i), is.get(i))) {
                changes.add(new Change(Change.Sort.CHANGED, key, COLUMNS.get(i), was.get(i), is.get(i)));
            }
        }
    }

    /** The same words, or the same weight in other words. */
    private static boolean isSame(String one, String other) {
        var weight = Quantity.parse(one).map(Quantity::base);
        return one.equals(other)
                || (weight.isPresent() && weight.equals(Quantity.parse(other).map(Quantity::base)));
    }
}
