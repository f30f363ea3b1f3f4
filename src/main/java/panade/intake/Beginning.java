package panade.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.intake.food.IngredientDraft;
import panade.intake.json.Json;
import panade.intake.price.CsvGrid;
import panade.intake.price.PriceRows;
import panade.intake.price.Quote;
import panade.intake.table.Faults;
import panade.intake.table.Numbers;
import panade.intake.table.Slug;
import panade.quantity.Decimal;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A pantry, its prices and a brief as somebody first told them.
 *
 * @param pantry its title
 * @param product the brief's title
 * @param items what is to be in the pantry and is not there yet
 * @param scores traits of somebody's own, name by name with what they are out of
 * @param only ids that may go in; empty for all of the pantry
 * @param stages parts that are mixed on their own
 * @param target a price per weight; empty for none
 */
public record Beginning(
        String pantry,
        String product,
        String currency,
        String batch,
        List<Item> items,
        Map<String, String> scores,
        List<String> only,
        List<Wish> wishes,
        List<Part> stages,
        String target) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    public Beginning {
        items = List.copyOf(items);
        scores = Map.copyOf(scores);
        only = List.copyOf(only);
        wishes = List.copyOf(wishes);
        stages = List.copyOf(stages);
    }

    /**
     * Something in the pantry.
     *
     * @param values by tagname or score; what is not known is not there
     * @param allergens null when nobody knows
     * @param offers at what prices it can be had; none where nobody knows one
     * @param source where its values are from; empty where somebody told them
     */
    public record Item(
            String name,
            Map<String, BigDecimal> values,
            @Nullable List<String> allergens,
            List<String> kinds,
            List<Price> offers,
            String source) {
        public Item {
            values = Map.copyOf(values);
            kinds = List.copyOf(kinds);
            offers = List.copyOf(offers);
        }

        /** The same of these kinds. */
        public Item ofKinds(List<String> others) {
            return new Item(name, values, allergens, others, offers, source);
        }

        /** The same with one more offer. */
        public Item with(Price offer) {
            var all = new ArrayList<>(offers);
            all.add(offer);
            return new Item(name, values, allergens, kinds, all, source);
        }

        /** The same with one more value. */
        public Item with(String property, BigDecimal value) {
            var all = new HashMap<>(values);
            all.put(property, value);
            return new Item(name, all, allergens, kinds, offers, source);
        }

        /** The same carrying these allergens; null when nobody knows. */
        public Item carrying(@Nullable List<String> others) {
            return new Item(name, values, others, kinds, offers, source);
        }

        /** What documents call it. */
        public String id() {
            return Slug.of(name);
        }
    }

    /**
     * An offer.
     *
     * @param item the ingredient's id
     * @param price money for a weight
     * @param pack the smallest weight sold; empty where any is
     */
    public record Price(String item, String supplier, String price, String per, String pack) {}

    /**
     * A number that the product must keep.
     *
     * @param selector {@code property}, {@code kind} or {@code ingredient}
     * @param within the kind whose mean it is; empty for all of the batch
     * @param least with its unit; empty for none
     * @param most with its unit; empty for none
     */
    public record Wish(String selector, String of, String name, String within, String least, String most) {}

    /**
     * A part that is mixed on its own.
     *
     * @param members ids of what goes into it
     * @param shared ids of those that go into the rest as well
     */
    public record Part(String name, List<String> members, List<String> shared, String least, String most) {
        public Part {
            members = List.copyOf(members);
            shared = List.copyOf(shared);
        }
    }

    /** A new ingredient set. */
    public String set() {
        var text = new StringBuilder("{\n");
        text.append("  ").append(Json.field("title", NODES.stringNode(pantry))).append(",\n");
        if (!scores.isEmpty()) {
            text.append("  ").append(Json.field("traits", traits())).append(",\n");
        }
        text.append("  \"ingredients\": [\n    ");
        text.append(String.join(
                ",\n    ",
                items.stream().map(item -> Json.ingredient(ingredient(item))).toList()));
        return text.append("\n  ]\n}\n").toString();
    }

    /** A set that is there already, with what is new in it; comments and layout stay as they are. */
    public String addedTo(String set) {
        var merge = new SetMerge(set, true, false);
        if (!scores.isEmpty()) {
            var about = NODES.objectNode();
            about.set("traits", traits());
            merge.addAbout(about);
        }
        items.forEach(item -> merge.add(new IngredientDraft(item.id(), ingredient(item), Map.of())));
        return merge.text();
    }

    private ObjectNode traits() {
        var traits = NODES.objectNode();
        scores.forEach((name, title) -> traits.putObject(name).put("title", title));
        return traits;
    }

    private static ObjectNode ingredient(Item item) {
        var json = NODES.objectNode().put("id", item.id()).put("name", item.name());
        if (!item.kinds().isEmpty()) {
            item.kinds().forEach(json.putArray("kinds")::add);
        }
        var allergens = item.allergens();
        if (allergens != null) {
            allergens.forEach(json.putArray("allergens")::add);
        }
        var values = json.putObject("values");
        item.values().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(value -> values.put(value.getKey(), value.getValue()));
        if (!item.source().isEmpty()) {
            json.put("source", item.source());
        }
        return json;
    }

    /** The price list: those of a list that is there already, and the new ones. */
    public String prices(String before) {
        var rows = items.stream()
                .flatMap(item -> item.offers().stream())
                .map(offer -> List.of(
                        offer.item(), offer.supplier(), offer.price(), offer.per(), offer.pack(), "", "", currency, ""))
                .toList();
        var old = before.isEmpty() ? List.<List<String>>of() : CsvGrid.offers(before, "", new Faults());
        return PriceRows.csv(PriceRows.joined(old, new Quote(rows, List.of(), Set.of())));
    }

    /**
     * The brief.
     *
     * @param set the ingredient set's path from the brief
     * @param prices the price lists' paths from the brief
     */
    public String brief(String set, List<String> prices) {
        return new BeginningBrief(this).text(set, prices);
    }

    /** A number of at least nothing, as it may stand in a set. */
    public static Optional<BigDecimal> amount(String text) {
        return Decimal.parse(text)
                .filter(number -> number.signum() >= 0 && number.compareTo(BigFraction.of(100_000)) <= 0)
                .map(Numbers::decimal);
    }
}
