package panade.resolve;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A kitchen as a cook types it: an ingredient set, price lists and a brief.
 *
 * @param set {@code ingredients.json}
 * @param brief the brief
 * @param lists the price lists
 */
record TypedKitchen(ObjectNode set, ObjectNode brief, List<List<Offer>> lists) {
    /**
     * A row of a price list.
     *
     * @param price money per kilogram as bought
     * @param available kilograms as bought; null for no end
     */
    record Offer(
            String ingredient,
            String supplier,
            BigDecimal price,
            @Nullable BigDecimal available) {
        String row() {
            var most = available == null ? "" : available.toPlainString() + " kg";
            return String.join(",", ingredient, supplier, price.toPlainString(), "kg", most);
        }
    }

    /** Lists in force: all of them pooled, or one alone. */
    List<Offer> pooled() {
        return lists.stream().flatMap(List::stream).toList();
    }

    int batchKg() {
        return number(brief.get("batch")).intValueExact();
    }

    /** The number in front of a unit. */
    static BigDecimal number(JsonNode quantity) {
        var text = quantity.asString();
        return new BigDecimal(text.substring(0, text.indexOf(' ')));
    }

    TypedKitchen withLists(List<List<Offer>> others) {
        return new TypedKitchen(set, brief, others);
    }

    /** The same with one member of the brief typed anew; null takes it out. */
    TypedKitchen typed(String pointer, @Nullable JsonNode value) {
        var copy = brief.deepCopy();
        var at = JsonPointer.compile(pointer);
        var parent = copy.at(at.head());
        var last = at.last().getMatchingProperty();
        if (parent instanceof ArrayNode array && value == null) {
            array.remove(Integer.parseInt(last));
        } else if (parent instanceof ObjectNode object && value == null) {
            object.remove(last);
        } else if (parent instanceof ObjectNode object) {
            object.set(last, value);
        } else {
            throw new IllegalArgumentException(pointer);
        }
        return new TypedKitchen(set, copy, lists);
    }

    /** The same with a ceiling on use typed anew in the set; null takes it out. */
    TypedKitchen typedInSet(String pointer, @Nullable JsonNode value) {
        var moved = new TypedKitchen(brief, set, lists).typed(pointer, value);
        return new TypedKitchen(moved.brief, brief, lists);
    }

    /** The same with one offer typed anew. */
    TypedKitchen typed(Offer old, Offer fresh) {
        var others = new ArrayList<List<Offer>>();
        lists.forEach(list -> others.add(
                list.stream().map(offer -> offer.equals(old) ? fresh : offer).toList()));
        return withLists(others);
    }

    /** The same without some ingredients. */
    TypedKitchen without(List<String> ids) {
        var others = new ArrayList<List<Offer>>();
        lists.forEach(list -> others.add(
                list.stream().filter(offer -> !ids.contains(offer.ingredient())).toList()));
        return withLists(others);
    }

    /** Writes the documents; gives the brief's file. Price lists are {@code prices-0.csv} and so on. */
    Path writeInto(Path folder) throws IOException {
        write(folder.resolve("ingredients.json"), set.toPrettyString());
        for (int i = 0; i < lists.size(); i++) {
            write(priceList(folder, i), csv(lists.get(i)));
        }
        var file = folder.resolve("brief.json");
        write(file, brief.toPrettyString());
        return file;
    }

    static Path priceList(Path folder, int i) {
        return folder.resolve("prices-" + i + ".csv");
    }

    private static String csv(List<Offer> list) {
        return list.stream().map(Offer::row).collect(joining("\n", "ingredient,supplier,price,per,available\n", "\n"));
    }

    private static void write(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    @Override
    public String toString() {
        return brief.toPrettyString() + "\n" + set.toPrettyString() + "\n"
                + lists.stream().map(TypedKitchen::csv).collect(joining("\n"));
    }
}
