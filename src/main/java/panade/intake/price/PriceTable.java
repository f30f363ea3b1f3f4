package panade.intake.price;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import panade.document.Documents;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.origin.Origin;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.intake.table.Faults;
import panade.intake.table.Guess;
import panade.intake.table.Table;
import panade.intake.table.Table.Row;

/** Reads offers from a table. */
public final class PriceTable {
    static final List<String> COLUMNS =
            List.of("ingredient", "supplier", "price", "per", "pack", "minimum", "available", "currency", "note");

    private static final String PER = "per";

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
        this.usual = new HashMap<>(usual);
        this.set = set;
        this.faults = faults;
        this.headings = table.byHeading();
        table.guesses().forEach(this::take);
        this.byName = set.ingredients().values().stream()
                .collect(Collectors.groupingBy(
                        ingredient -> ingredient.name().toLowerCase(Locale.ROOT),
                        Collectors.mapping(Ingredient::id, Collectors.toList())));
    }

    /** What the head of the prices says of all of them, unless somebody said otherwise. */
    private void take(Guess guess) {
        if (!guess.per().isEmpty()) {
            usual.putIfAbsent(PER, guess.per());
        }
        if (!guess.currency().isEmpty()) {
            usual.putIfAbsent("currency", guess.currency());
        }
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
        if (!isComplete()) {
            return Quote.EMPTY;
        }
        var rows = new ArrayList<List<String>>();
        var untaken = new ArrayList<Problem>();
        var doubtful = new LinkedHashSet<String>();
        for (var row : table.rows()) {
            var found = new Faults();
            var price = new QuotedPrice(row, headings, usual, found);
            var cells = COLUMNS.stream()
                    .map(column -> cell(row, column, price, found))
                    .toList();
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

    private boolean isComplete() {
        var needed = List.of("supplier", PER).stream()
                .filter(name -> !headings.containsKey(name) && !usual.containsKey(name))
                .filter(name -> !name.equals(PER) || !QuotedPrice.stateWeights(table))
                .toList();
        if (!needed.isEmpty()) {
            faults.add(
                    table.headOrigin(0),
                    "The table does not say this of the prices: " + String.join(", ", needed),
                    "Expected a column of that name, or "
                            + String.join(
                                    " and ",
                                    needed.stream().map(PriceTable::option).toList()) + ".");
        }
        return needed.isEmpty();
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
        return name.equals(PER) ? "--per kg" : "--" + name + " NAME";
    }

    private String cell(Row row, String column, QuotedPrice price, Faults found) {
        var at = headings.get(column);
        if (column.equals("price")) {
            return price.money();
        }
        if (column.equals(PER)) {
            return price.per();
        }
        if (at == null) {
            return usual.getOrDefault(column, "");
        }
        var text = row.at(at).text().strip();
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
