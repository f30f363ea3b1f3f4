package panade.intake.price;

import static panade.intake.price.PriceTable.COLUMNS;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import panade.intake.table.Change;
import panade.quantity.Quantity;
import panade.quantity.UnitPrice;

/** The rows of price lists, in the order of their usual columns: compared, put together and written. */
public final class PriceRows {
    private PriceRows() {}

    /** A price list's text. */
    public static String csv(List<List<String>> rows) {
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
    public static List<Change> changes(List<List<String>> before, List<List<String>> after) {
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

    /**
     * A list with a quote's rows in place of those of the same suppliers, and all others as they are. Of a supplier
     * with a row that could not be taken none is removed: it may be the one that was meant.
     */
    public static List<List<String>> replaced(List<List<String>> before, Quote quote) {
        var fresh = byOffer(quote.rows());
        var suppliers = quote.suppliers();
        var rows = new ArrayList<List<String>>();
        byOffer(before).forEach((key, row) -> {
            var replacement = fresh.remove(key);
            if (replacement != null) {
                rows.add(replacement);
            } else if (!suppliers.contains(supplier(row)) || quote.isDoubtful(supplier(row))) {
                rows.add(row);
            }
        });
        rows.addAll(fresh.values());
        return List.copyOf(rows);
    }

    /** Offers that the quote may have meant to end, but which stay because one of its rows could not be taken. */
    public static List<String> spared(List<List<String>> before, Quote quote) {
        var fresh = byOffer(quote.rows()).keySet();
        var suppliers = quote.suppliers();
        return byOffer(before).entrySet().stream()
                .filter(offer -> !fresh.contains(offer.getKey()))
                .filter(offer -> suppliers.contains(supplier(offer.getValue())))
                .filter(offer -> quote.isDoubtful(supplier(offer.getValue())))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** A list, and the rows of a quote that are for other offers. */
    public static List<List<String>> joined(List<List<String>> before, Quote quote) {
        var rows = byOffer(before);
        byOffer(quote.rows()).forEach(rows::putIfAbsent);
        return List.copyOf(rows.values());
    }

    /** Whose offer a row is. */
    public static String supplier(List<String> row) {
        return row.get(COLUMNS.indexOf("supplier"));
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
