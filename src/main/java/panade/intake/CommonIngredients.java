package panade.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import panade.intake.Beginning.Item;
import panade.intake.json.Json;
import tools.jackson.databind.JsonNode;

/** Ingredients to begin with, the composition of which is public; where each is from stands in its source. */
public final class CommonIngredients {
    private CommonIngredients() {}

    /** All of them, in the order of the list, with no offers yet. */
    public static List<Item> all() {
        try (var in = CommonIngredients.class.getResourceAsStream("common-ingredients.json")) {
            var items = new ArrayList<Item>();
            Json.MAPPER
                    .readTree(Objects.requireNonNull(in))
                    .path("ingredients")
                    .forEach(ingredient -> items.add(item(ingredient)));
            return items;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Item item(JsonNode ingredient) {
        var values = new LinkedHashMap<String, BigDecimal>();
        ingredient
                .path("values")
                .properties()
                .forEach(value -> values.put(value.getKey(), value.getValue().decimalValue()));
        return new Item(
                ingredient.path("name").asString(),
                values,
                words(ingredient.get("allergens")),
                Objects.requireNonNull(words(ingredient.get("kinds"))),
                List.of(),
                ingredient.path("source").asString());
    }

    private static @Nullable List<String> words(@Nullable JsonNode list) {
        if (list == null) {
            return null;
        }
        var words = new ArrayList<String>();
        list.forEach(word -> words.add(word.asString()));
        return words;
    }
}
