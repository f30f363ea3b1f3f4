package panade.intake;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A pantry, its prices and a brief as somebody first told them.
 *
 * @param pantry its title
 * @param product the brief's title
 * @param target a price per weight; empty for none
 */
public record Beginning(
        String pantry,
        String product,
        String currency,
        String batch,
        List<Item> items,
        List<Wish> wishes,
        String target) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    public Beginning {
        items = List.copyOf(items);
        wishes = List.copyOf(wishes);
    }

    /**
     * Something in the pantry.
     *
     * @param values by tagname; what is not known is not there
     * @param allergens as typed, with commas between; null when nobody knows
     * @param price money for a weight
     */
    public record Item(
            String name,
            Map<String, BigDecimal> values,
            @Nullable List<String> allergens,
            String supplier,
            String price,
            String per) {
        public Item {
            values = Map.copyOf(values);
        }

        /** What documents call it. */
        public String id() {
            return Slug.of(name);
        }
    }

    /**
     * A number that the product must keep.
     *
     * @param selector {@code property} or {@code ingredient}
     * @param least with its unit; empty for none
     * @param most with its unit; empty for none
     */
    public record Wish(String selector, String of, String name, String least, String most) {}

    /** The ingredient set. */
    public String set() {
        var text = new StringBuilder("{\n");
        text.append("  ").append(Json.field("title", NODES.stringNode(pantry))).append(",\n");
        text.append("  \"ingredients\": [\n    ");
        text.append(String.join(
                ",\n    ",
                items.stream().map(item -> Json.ingredient(ingredient(item))).toList()));
        return text.append("\n  ]\n}\n").toString();
    }

    private static ObjectNode ingredient(Item item) {
        var json = NODES.objectNode().put("id", item.id()).put("name", item.name());
        var allergens = item.allergens();
        if (allergens != null) {
            allergens.forEach(json.putArray("allergens")::add);
        }
        var values = json.putObject("values");
        item.values().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(value -> values.put(value.getKey(), value.getValue()));
        return json;
    }

    /** The price list. */
    public String prices() {
        return PriceRows.csv(items.stream()
                .map(item -> List.of(item.id(), item.supplier(), item.price(), item.per(), "", "", "", currency, ""))
                .toList());
    }

    /**
     * The brief.
     *
     * @param set the ingredient set's path from the brief
     * @param prices the price list's path from the brief
     */
    public String brief(String set, String prices) {
        var json = NODES.objectNode().put("title", product).put("ingredients", set);
        json.putArray("prices").add(prices);
        json.put("currency", currency).put("batch", batch);
        if (!target.isEmpty()) {
            json.put("target", target);
        }
        var lines = json.properties().stream()
                .map(field -> Json.field(field.getKey(), field.getValue()))
                .toList();
        var bounds = wishes.stream().map(wish -> Json.text(bound(wish))).toList();
        var list = bounds.isEmpty() ? "[]" : "[\n    " + String.join(",\n    ", bounds) + "\n  ]";
        return "{\n  " + String.join(",\n  ", lines) + ",\n  \"bounds\": " + list + "\n}\n";
    }

    private static ObjectNode bound(Wish wish) {
        var json = NODES.objectNode();
        if (!wish.name().isEmpty()) {
            json.put("name", wish.name());
        }
        json.put(wish.selector(), wish.of());
        putUnlessEmpty(json, "min", wish.least());
        putUnlessEmpty(json, "max", wish.most());
        return json;
    }

    private static void putUnlessEmpty(ObjectNode json, String field, String text) {
        if (!text.isEmpty()) {
            json.put(field, text);
        }
    }

    /** A number of at least nothing, as it may stand in a set. */
    public static Optional<BigDecimal> amount(String text) {
        return Decimal.parse(text)
                .filter(number -> number.signum() >= 0
                        && number.subtract(BigFraction.of(100_000)).signum() <= 0)
                .map(Numbers::decimal);
    }
}
