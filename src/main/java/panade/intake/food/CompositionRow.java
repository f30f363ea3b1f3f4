package panade.intake.food;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.origin.Origin;
import panade.domain.pantry.AllergenWords;
import panade.intake.json.JsonEdits;
import panade.intake.table.Faults;
import panade.intake.table.Numbers;
import panade.intake.table.Slug;
import panade.intake.table.Table.Row;
import panade.quantity.Decimal;
import panade.sheet.WordList;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A row of a table of ingredients. */
final class CompositionRow {
    private static final List<String> TEXTS =
            List.of("name", "label", "maxuse", "usable", "variantof", "note", "source", "fibre");
    private static final List<String> LISTS = List.of("kinds", "allergens", "madeof");
    /** Figures by tagname, such as {@code PROCNT 3.47; FAT 8.37}. */
    private static final List<String> PAIRS = List.of("energyfactors", "digestibility");

    /** Columns of what stands in an object of the set's, with the object's name and the field's. */
    private static final Map<String, List<String>> MARKS = Map.of(
            "labelus", List.of("labelIn", "us"),
            "labeleu", List.of("labelIn", "eu"),
            "additiveclass", List.of("additive", "class"),
            "additivenumber", List.of("additive", "number"));

    private static final Map<String, String> SPELT =
            Map.of("maxuse", "maxUse", "variantof", "variantOf", "madeof", "madeOf", "energyfactors", "energyFactors");
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Row row;
    private final Map<String, Integer> headings;
    private final Map<Integer, PropertyColumn> valueColumns;
    private final Faults faults;
    private final Numbers numbers;

    /**
     * A row.
     *
     * @param headings columns by what they are called
     * @param valueColumns columns of components and traits
     * @param faults is told what is wrong with it
     */
    CompositionRow(Row row, Map<String, Integer> headings, Map<Integer, PropertyColumn> valueColumns, Faults faults) {
        this.row = row;
        this.headings = headings;
        this.valueColumns = valueColumns;
        this.faults = faults;
        this.numbers = new Numbers(faults);
    }

    /** Whether a heading in small letters is a column that is not one of values. */
    static boolean isColumn(String heading) {
        return TEXTS.contains(heading)
                || LISTS.contains(heading)
                || PAIRS.contains(heading)
                || MARKS.containsKey(heading)
                || heading.equals("colours")
                || heading.equals("id")
                || heading.equals("others");
    }

    /** The ingredient; what is wrong with it has been told. */
    Optional<IngredientDraft> draft(String source) {
        var id = Optional.of(text("id")).filter(found -> !found.isEmpty()).orElseGet(() -> Slug.of(text("name")));
        if (id.isEmpty()) {
            faults.add(row.origin(0), "This row has no id and no name", "Expected a name to call the ingredient by.");
            return Optional.empty();
        }
        var json = NODES.objectNode();
        var origins = new LinkedHashMap<String, Origin>();
        origins.put("", row.origin(0));
        json.put("id", id);
        TEXTS.forEach(name -> putText(name, json, origins));
        LISTS.forEach(name -> putList(name, json, origins));
        PAIRS.forEach(name -> putPairs(name, json, origins));
        MARKS.forEach((name, path) -> putMark(name, path, json, origins));
        putColours(json, origins);
        var values = NODES.objectNode();
        var spread = NODES.objectNode();
        valueColumns.forEach((column, found) -> putNumber(column, found, found.spread() ? spread : values, origins));
        json.set("values", values);
        putOthers(json);
        if (!spread.isEmpty()) {
            json.set("spread", spread);
        }
        if (!json.has("source")) {
            json.put("source", source);
        }
        return Optional.of(new IngredientDraft(id, json, origins));
    }

    private String text(String heading) {
        var column = headings.get(heading);
        return column == null ? "" : row.at(column).text().strip();
    }

    private void putText(String heading, ObjectNode json, Map<String, Origin> origins) {
        var text = text(heading);
        if (!text.isEmpty()) {
            var field = SPELT.getOrDefault(heading, heading);
            json.put(field, text);
            origins.put("/" + field, row.origin(headings.getOrDefault(heading, 0)));
        }
    }

    private void putMark(String heading, List<String> path, ObjectNode json, Map<String, Origin> origins) {
        var text = text(heading);
        if (!text.isEmpty()) {
            json.withObjectProperty(path.get(0)).put(path.get(1), text);
            var origin = row.origin(headings.getOrDefault(heading, 0));
            origins.put("/" + path.get(0), origin);
            origins.put("/" + path.get(0) + "/" + path.get(1), origin);
        }
    }

    /** "yes" is true; what is neither yes nor no is left for the reader of sets to refuse. */
    private void putColours(ObjectNode json, Map<String, Origin> origins) {
        var text = text("colours").toLowerCase(Locale.ROOT);
        if (text.equals("yes") || text.equals("true")) {
            json.put("colours", true);
        } else if (!text.isEmpty() && !text.equals("no") && !text.equals("false")) {
            json.put("colours", text);
            origins.put("/colours", row.origin(headings.getOrDefault("colours", 0)));
        }
    }

    private void putList(String heading, ObjectNode json, Map<String, Origin> origins) {
        var text = text(heading);
        if (!text.isEmpty()) {
            var field = SPELT.getOrDefault(heading, heading);
            var list = json.putArray(field);
            words(field, text).forEach(list::add);
            origins.put("/" + field, row.origin(headings.getOrDefault(heading, 0)));
        }
    }

    /** Allergens are split at commas as well: no law's list has a word with one in it. */
    private static List<String> words(String field, String text) {
        var words = WordList.read(text);
        return field.equals("allergens") && words.size() == 1 ? AllergenWords.read(words.get(0)) : words;
    }

    private void putPairs(String heading, ObjectNode json, Map<String, Origin> origins) {
        var text = text(heading);
        if (text.isEmpty()) {
            return;
        }
        var field = SPELT.getOrDefault(heading, heading);
        var origin = row.origin(headings.getOrDefault(heading, 0));
        var pairs = json.putObject(field);
        origins.put("/" + field, origin);
        for (var pair : WordList.read(text)) {
            int space = pair.lastIndexOf(' ');
            if (space < 1) {
                faults.add(
                        origin,
                        "\"" + pair + "\" is not a tagname and a figure",
                        "Expected such as PROCNT 3.47; FAT 8.37.");
                continue;
            }
            var figure = pair.substring(space + 1);
            var number = Decimal.parse(figure);
            if (number.isPresent()) {
                pairs.put(pair.substring(0, space).strip(), new BigDecimal(figure));
            } else {
                pairs.put(pair.substring(0, space).strip(), figure);
            }
        }
    }

    private void putOthers(ObjectNode json) {
        var column = headings.get("others");
        if (column != null) {
            numbers.read(row.at(column), row.origin(column), BigFraction.ONE)
                    .ifPresent(number -> json.put("others", number));
        }
    }

    private void putNumber(int column, PropertyColumn found, ObjectNode values, Map<String, Origin> origins) {
        var id = found.property().id();
        var origin = row.origin(column);
        numbers.read(row.at(column), origin, found.factor()).ifPresent(number -> {
            values.put(id, number);
            origins.put((found.spread() ? "/spread/" : "/values/") + JsonEdits.escaped(id), origin);
        });
    }
}
