package panade.intake.food;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import panade.domain.origin.Origin;
import panade.domain.pantry.Property;
import panade.intake.json.Json;
import panade.intake.table.Faults;
import panade.intake.table.Numbers;
import panade.intake.table.Slug;
import panade.quantity.Decimal;
import panade.quantity.Unit;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads foods from the JSON downloads of USDA FoodData Central: an object whose one field, such as
 * {@code FoundationFoods} or {@code SRLegacyFoods}, lists foods, each with {@code description}, {@code fdcId} and
 * {@code foodNutrients} per 100 g. Downloads of hundreds of megabytes are read food by food.
 */
public final class FoodDataCentral {
    /** How many foods are taken without being named. */
    static final int MANY = 40;

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final String file;
    private final List<String> only;
    private final Map<String, Property> properties;
    private final Faults faults;
    private final Set<String> notTaken = new TreeSet<>();
    private final List<IngredientDraft> drafts = new ArrayList<>();
    private final Map<String, String> ids = new LinkedHashMap<>();
    private int foods;

    /**
     * A download.
     *
     * @param only words of which a food's description must have all of one entry, or its FDC ID; empty for all foods
     */
    public FoodDataCentral(String file, List<String> only, Map<String, Property> properties, Faults faults) {
        this.file = file;
        this.only = only;
        this.properties = properties;
        this.faults = faults;
    }

    /** The foods as ingredients. */
    public List<IngredientDraft> read(Path path) throws IOException {
        try (var parser = Json.MAPPER.createParser(path)) {
            parser.nextToken();
            walk(parser);
        } catch (JacksonException | NumberFormatException e) { // the latter for a number with too large an exponent
            throw new IOException(e);
        }
        if (foods == 0) {
            faults.add(here(""), "No food was found in it", "Expected a JSON download of USDA FoodData Central.");
        } else if (drafts.isEmpty() && faults.none()) {
            faults.add(here(""), "None of its " + foods + " foods is called so", "Expected --only with other words.");
        } else if (only.isEmpty() && drafts.size() > MANY) {
            faults.add(
                    here(""),
                    "It has " + foods + " foods",
                    "Say which you want: --only \"soy protein isolate\", as often as you like, or --only \"\" for all.");
        }
        return drafts;
    }

    /** Nutrients that have no tagname here. */
    public Set<String> notTaken() {
        return notTaken;
    }

    private Origin here(String food) {
        return new Origin(file + (food.isEmpty() ? "" : ": " + food), 0, 0, "");
    }

    /** Lists are walked wherever they are; an object with nutrients is a food. */
    private void walk(JsonParser parser) {
        if (parser.currentToken() == JsonToken.START_ARRAY) {
            while (parser.nextToken() == JsonToken.START_OBJECT) {
                food(tree(parser));
            }
        } else if (parser.currentToken() == JsonToken.START_OBJECT) {
            var rest = NODES.objectNode();
            while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                var name = parser.currentName();
                boolean list = parser.nextToken() == JsonToken.START_ARRAY && name.endsWith("Foods");
                if (list) {
                    walk(parser);
                } else {
                    rest.set(name, tree(parser));
                }
            }
            food(rest);
        }
    }

    private static JsonNode tree(JsonParser parser) {
        return Json.MAPPER.readTree(parser);
    }

    private void food(JsonNode food) {
        if (!food.path("foodNutrients").isArray()) {
            return;
        }
        foods++;
        if (isWanted(food) && (drafts.size() <= MANY || !only.isEmpty())) {
            drafts.add(draft(food));
        }
    }

    private boolean isWanted(JsonNode food) {
        var description = food.path("description").asString("").toLowerCase(Locale.ROOT);
        return only.isEmpty()
                || only.stream()
                        .anyMatch(entry -> entry.equals(food.path("fdcId").asString(""))
                                || List.of(entry.toLowerCase(Locale.ROOT).split("[ ,]+")).stream()
                                        .allMatch(description::contains));
    }

    private IngredientDraft draft(JsonNode food) {
        var description = food.path("description").asString("").strip();
        var fdcId = food.path("fdcId").asString("");
        var slug = Slug.of(description);
        var id = ids.containsKey(slug) ? slug + "-" + fdcId : slug;
        ids.put(id, fdcId);
        var json = NODES.objectNode();
        json.put("id", id);
        json.put("name", description);
        json.set("values", values(food, description));
        json.put("source", "USDA FoodData Central, FDC ID " + fdcId + published(food) + "; as given there, per 100 g");
        return new IngredientDraft(id, json, Map.of("", here(description)));
    }

    private static String published(JsonNode food) {
        var date = food.path("publicationDate").asString("");
        return date.isEmpty() ? "" : ", " + date;
    }

    private ObjectNode values(JsonNode food, String description) {
        var found = new LinkedHashMap<String, BigDecimal>();
        var ranks = new LinkedHashMap<String, Integer>();
        for (var entry : food.path("foodNutrients")) {
            var nutrient = entry.path("nutrient").isObject() ? entry.path("nutrient") : entry;
            var number = nutrient.path("number").asString("");
            var amount = entry.path("amount");
            var known = FdcNutrients.find(number);
            if (known.isEmpty()) {
                notTaken.add(nutrient.path("name").asString(number));
            } else if (amount.isNumber()) {
                var tag = known.get().tagname();
                int rank = known.get().rank();
                boolean better = rank < ranks.getOrDefault(tag, Integer.MAX_VALUE);
                if (better) {
                    convert(amount.decimalValue(), nutrient.path("unitName").asString(""), tag, description)
                            .ifPresent(value -> {
                                ranks.put(tag, rank);
                                found.put(tag, value);
                            });
                }
            }
        }
        var values = NODES.objectNode();
        properties.keySet().stream().filter(found::containsKey).forEach(tag -> values.put(tag, found.get(tag)));
        return values;
    }

    private Optional<BigDecimal> convert(BigDecimal amount, String unitName, String tag, String food) {
        if (amount.signum() < 0) {
            // Carbohydrate by difference can come out a little below nothing; what that means is not ours to say.
            notTaken.add(tag + " of " + food + ", which is below zero");
            return Optional.empty();
        }
        var unit = Unit.find(unitName.toLowerCase(Locale.ROOT) + "/100g");
        var own = properties.get(tag);
        if (own == null || unit.isEmpty() || !unit.get().measuresLike(own.unit())) {
            faults.add(
                    here(food),
                    "\"" + unitName + "\" is not a unit for " + tag,
                    "Expected a download of USDA FoodData Central as it is published.");
            return Optional.empty();
        }
        var exact = Decimal.parse(amount.toString());
        if (exact.isEmpty()) {
            faults.add(
                    here(food),
                    "\"" + amount + "\" is no amount of " + tag,
                    "Expected a download of USDA FoodData Central as it is published.");
        }
        var factor = unit.get().factor().divide(own.unit().factor());
        return exact.map(value -> Numbers.decimal(value.multiply(factor)));
    }
}
