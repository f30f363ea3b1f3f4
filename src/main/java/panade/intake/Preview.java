package panade.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import panade.domain.pantry.IngredientSet;
import panade.intake.food.IngredientDraft;
import panade.intake.price.Quote;

/**
 * The first rows of a table as they were understood.
 *
 * @param of what they are: ingredients or prices
 * @param columns headings in plain words
 * @param rows cells in the same order; empty where nothing is stated
 * @param more how many rows follow that are not shown
 */
public record Preview(String of, List<String> columns, List<List<String>> rows, int more) {
    private static final int SHOWN = 12;
    private static final List<String> PRICES =
            List.of("Ingredient", "Supplier", "Price", "Pack", "Least order", "Available", "Currency", "Note");

    public Preview {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** Ingredients with the values that any of them has. */
    static Preview ofIngredients(List<IngredientDraft> drafts, IngredientSet set) {
        var titles = new LinkedHashMap<String, String>();
        drafts.forEach(draft -> draft.json().path("values").properties().stream()
                .map(Map.Entry::getKey)
                .forEach(id -> titles.putIfAbsent(id, title(set, id))));
        var columns = new ArrayList<>(List.of("Ingredient"));
        columns.addAll(titles.values());
        return limited(
                "ingredients",
                columns,
                drafts.stream().map(draft -> row(draft, titles, set)).toList());
    }

    private static String title(IngredientSet set, String id) {
        var property = set.properties().get(id);
        if (property == null) {
            return id;
        }
        var unit = property.unit().symbol();
        return property.title() + (unit.isEmpty() ? "" : ", " + unit);
    }

    private static List<String> row(IngredientDraft draft, Map<String, String> titles, IngredientSet set) {
        var row = new ArrayList<>(List.of(name(set, draft.id())));
        titles.keySet().forEach(id -> {
            var value = draft.json().path("values").path(id);
            row.add(value.isNumber() ? value.decimalValue().toPlainString() : "");
        });
        return row;
    }

    /** Offers, without the columns in which nothing stands. */
    static Preview ofPrices(Quote quote, IngredientSet set) {
        var rows = quote.rows().stream().map(row -> price(row, set)).toList();
        var used = new ArrayList<Integer>();
        for (int i = 0; i < PRICES.size(); i++) {
            int column = i;
            if (rows.stream().anyMatch(row -> !row.get(column).isEmpty())) {
                used.add(i);
            }
        }
        return limited(
                "prices",
                used.stream().map(PRICES::get).toList(),
                rows.stream().map(row -> used.stream().map(row::get).toList()).toList());
    }

    private static List<String> price(List<String> row, IngredientSet set) {
        var cells = new ArrayList<>(List.of(name(set, row.get(0)), row.get(1), row.get(2) + "/" + row.get(3)));
        cells.addAll(row.subList(4, row.size()));
        return cells;
    }

    private static String name(IngredientSet set, String id) {
        var ingredient = set.ingredients().get(id);
        return ingredient == null ? id : ingredient.name();
    }

    private static Preview limited(String of, List<String> columns, List<List<String>> rows) {
        int shown = Math.min(SHOWN, rows.size());
        return new Preview(of, columns, rows.subList(0, shown), rows.size() - shown);
    }
}
