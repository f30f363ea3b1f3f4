package panade.intake.table;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import panade.domain.pantry.Property;
import panade.quantity.Unit;
import panade.sheet.Grid;
import tools.jackson.databind.node.ObjectNode;

/** Tells tables apart by their headings. */
public final class Tables {
    private static final Set<String> TRAITS = Set.of("trait", "title");
    private static final Set<String> PRICES = Set.of("ingredient", "price");
    private static final Set<String> NAME = Set.of("name");

    private Tables() {}

    /**
     * The table of a sheet whose headings are ours, at least those that it cannot be without.
     *
     * @param known components and traits
     * @param faults is told where several headings fit one of our columns
     */
    public static Optional<Table> ours(
            String file, Grid grid, Columns columns, Map<String, Property> known, Faults faults) {
        return Table.under(file, grid, TRAITS, columns)
                .or(() -> Table.under(file, grid, PRICES, columns)
                        .map(table -> HeadGuesses.ofPrices(table).named(faults)))
                .or(() -> Table.under(file, grid, Set.of("id"), columns)
                        .or(() -> Table.under(file, grid, NAME, columns).filter(table -> !mayBePrices(table, known)))
                        .map(table -> HeadGuesses.ofComposition(table, known).named(faults)));
    }

    /** The table of a sheet whose headings are other people's words for what ours are. */
    public static Optional<Table> guessed(
            String file, Grid grid, Columns columns, Map<String, Property> known, Faults faults) {
        return Table.nearTheTop(file, grid, columns)
                .flatMap(table -> mayBeComposition(table, known)
                        ? Stream.of(HeadGuesses.ofComposition(table, known).named(faults))
                        : mayBePrices(table, known)
                                ? Stream.of(HeadGuesses.ofPrices(table).named(faults))
                                : Stream.empty())
                .findFirst();
    }

    private static boolean mayBeComposition(Table table, Map<String, Property> known) {
        var heads = HeadGuesses.ofComposition(table, known);
        return heads.have(NAME) && heads.haveProperty();
    }

    private static boolean mayBePrices(Table table, Map<String, Property> known) {
        return HeadGuesses.ofPrices(table).have(PRICES) && !mayBeComposition(table, known);
    }

    public static boolean isTraits(Table table) {
        return table.byHeading().keySet().containsAll(TRAITS);
    }

    public static boolean isPrices(Table table) {
        return table.byHeading().keySet().containsAll(PRICES);
    }

    public static boolean isComposition(Table table) {
        return !isTraits(table) && !isPrices(table);
    }

    /** Traits that a table declares, as far as columns of values need them. */
    public static Map<String, Property> declared(ObjectNode about, Map<String, Property> known) {
        var traits = new HashMap<String, Property>();
        about.path("traits").properties().forEach(field -> {
            if (!known.containsKey(field.getKey())) {
                var unit = Unit.declared(field.getValue().path("unit").asString(""));
                traits.put(field.getKey(), new Property(field.getKey(), field.getKey(), unit, false, null, Map.of()));
            }
        });
        return traits;
    }
}
