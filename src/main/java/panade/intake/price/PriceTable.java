package panade.intake.price;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.Documents;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.origin.Origin;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.intake.table.Faults;
import panade.intake.table.Numbers;
import panade.intake.table.Table;
import panade.intake.table.Table.Row;

/** Reads offers from a table. */
public final class PriceTable {
    static final List<String> COLUMNS =
            List.of("ingredient", "supplier", "price", "per", "pack", "minimum", "available", "currency", "note");

    private final Table table;
    private final Map<String, String> usual;
    private final IngredientSet set;
    private final Faults faults;
    private final Map<String, Integer> headings;
    private final Map<String, List<String>> byName;

    /**
     * A table of prices.
     *
     * @param usual what is meant where the table has no such column: {@code supplier}, {@code per}, {@code currency}
     */
    public PriceTable(Table table, Map<String, String> usual, IngredientSet set, Faults faults) {
        this.table = table;
        this.usual = usual;
        this.set = set;
        this.faults = faults;
        this.headings = table.byHeading();
        this.byName = set.ingredients().values().stream()
                .collect(Collectors.groupingBy(
                        ingredient -> ingredient.name().toLowerCase(Locale.ROOT),
                        Collectors.mapping(Ingredient::id, Collectors.toList())));
    }

    /** Columns that mean nothing here. */
    public List<String> notTaken() {
        return table.headings().stream()
                .filter(heading -> !heading.isBlank())
                .filter(heading -> !COLUMNS.contains(heading.toLowerCase(Locale.ROOT)))
                .map(heading -> "\"" + heading + "\"")
                .toList();
    }

    /** What the table says of each row of a price list, and what is wrong with the rows that cannot be taken. */
    public Quote read() {
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
            return Quote.EMPTY;
        }
        var rows = new ArrayList<List<String>>();
        var untaken = new ArrayList<Problem>();
        var doubtful = new LinkedHashSet<String>();
        for (var row : table.rows()) {
            var found = new Faults();
            var cells = COLUMNS.stream().map(column -> cell(row, column, found)).toList();
            if (found.none()) {
                check(row, cells, found);
            }
            if (found.none()) {
                rows.add(cells);
            } else {
                untaken.addAll(found.all());
                doubtful.add(cells.get(COLUMNS.indexOf("supplier")));
            }
        }
        return new Quote(rows, untaken, doubtful);
    }

    /** Asks the reader of price lists, and tells what it finds at the cell that it came from. */
    private void check(Row row, List<String> cells, Faults found) {
        var reading = Documents.pricesOf(PriceRows.csv(List.of(cells)), "", set);
        if (reading instanceof Reading.Rejected<List<Offer>> rejected) {
            rejected.problems().forEach(problem -> {
                var pointer = problem.origin().pointer();
                var column = pointer.substring(pointer.lastIndexOf('/') + 1);
                var origin = row.origin(headings.getOrDefault(column, 0));
                found.add(new Problem(origin, problem.what(), problem.advice()));
            });
        }
    }

    private static String option(String name) {
        return name.equals("per") ? "--per kg" : "--" + name + " NAME";
    }

    private String cell(Row row, String column, Faults found) {
        var at = headings.get(column);
        if (at == null) {
            return usual.getOrDefault(column, "");
        }
        var entry = row.at(at);
        if (column.equals("price")) {
            return new Numbers(found)
                    .read(entry, row.origin(at), BigFraction.ONE)
                    .map(number -> number.toPlainString())
                    .orElse("");
        }
        var text = entry.text().strip();
        return column.equals("ingredient") ? id(text, row.origin(at), found) : text;
    }

    /** The id of an ingredient that is called so, by its id or, where only one is, by its name. */
    private String id(String text, Origin origin, Faults found) {
        if (set.ingredients().containsKey(text)) {
            return text;
        }
        var named = byName.getOrDefault(text.toLowerCase(Locale.ROOT), List.of());
        if (named.size() == 1) {
            return named.get(0);
        }
        if (!text.isEmpty()) {
            found.add(Problem.unknown(
                    origin,
                    "There is no ingredient \"" + text + "\" in the set",
                    text,
                    set.ingredients().keySet(),
                    "Expected the id or the name of an ingredient of the set."));
        }
        return text;
    }
}
