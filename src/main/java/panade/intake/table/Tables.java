package panade.intake.table;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import panade.domain.pantry.Property;
import panade.quantity.Unit;
import panade.sheet.Grid;
import tools.jackson.databind.node.ObjectNode;

/** Tells tables apart by their headings. */
public final class Tables {
    private static final Set<String> TRAITS = Set.of("trait", "title");
    private static final Set<String> PRICES = Set.of("ingredient", "price");

    private Tables() {}

    public static Optional<Table> find(String file, Grid grid, Columns columns) {
        return Table.under(file, grid, TRAITS, columns)
                .or(() -> Table.under(file, grid, PRICES, columns))
                .or(() -> Table.under(file, grid, Set.of("id"), columns))
                .or(() -> Table.under(file, grid, Set.of("name"), columns));
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
