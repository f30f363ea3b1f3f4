package panade.intake.food;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Problem;
import panade.domain.origin.Origin;
import panade.domain.pantry.AllergenWords;
import panade.domain.pantry.Property;
import panade.intake.json.JsonEdits;
import panade.intake.table.Faults;
import panade.intake.table.Numbers;
import panade.intake.table.Slug;
import panade.intake.table.Table;
import panade.intake.table.Table.Row;
import panade.quantity.Decimal;
import panade.sheet.WordList;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads ingredients from a table that has a row for each and a column for each property. */
public final class CompositionTable {
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

    private final Table table;
    private final Map<String, Property> properties;
    private final Faults faults;
    private final Numbers numbers;
    private final Map<String, Integer> headings;
    private final Map<Integer, PropertyColumn> valueColumns = new LinkedHashMap<>();

    public CompositionTable(Table table, Map<String, Property> properties, Faults faults) {
        this.table = table;
        this.properties = properties;
        this.faults = faults;
        this.numbers = new Numbers(faults);
        this.headings = table.byHeading();
        for (int i = 0; i < table.headings().size(); i++) {
            int column = i;
            PropertyColumn.of(table.headings().get(i), properties).ifPresent(found -> valueColumns.put(column, found));
        }
    }

    /** Whether any column is one of values. */
    public boolean hasValues() {
        return !valueColumns.isEmpty();
    }

    /** Columns that mean nothing here, each with what it may have been meant for. */
    public List<String> notTaken() {
        var names = new ArrayList<String>();
        for (int i = 0; i < table.headings().size(); i++) {
            var heading = table.headings().get(i);
            boolean known = valueColumns.containsKey(i) || isOurs(heading.toLowerCase(Locale.ROOT));
            if (!known && !heading.isBlank()) {
                names.add("\"" + heading + "\"" + meant(heading, isNumeric(i)));
            }
        }
        return names;
    }

    private static boolean isOurs(String heading) {
        return TEXTS.contains(heading)
                || LISTS.contains(heading)
                || PAIRS.contains(heading)
                || MARKS.containsKey(heading)
                || heading.equals("colours")
                || heading.equals("id")
                || heading.equals("others");
    }

    private String meant(String heading, boolean numeric) {
        var near = Problem.unknown(new Origin("", 0, 0, ""), "", heading, properties.keySet(), "")
                .advice();
        var title = properties.values().stream()
                .filter(property -> property.title()
                        .toLowerCase(Locale.ROOT)
                        .startsWith(heading.replaceAll("\\s*\\(.*", "").toLowerCase(Locale.ROOT)))
                .findFirst();
        if (title.isPresent()) {
            return ": is it --column \"" + heading + "=" + title.get().id() + "\"?";
        }
        var slip = near.size() > 1 ? ": " + near.get(1).replace("Did", "did") : "";
        return numeric
                ? slip + (slip.isEmpty() ? ": " : " Or ") + "a score of your own? Say --trait \"" + heading + "\""
                : slip;
    }

    /** Whether numbers stand in a column and nothing else. */
    private boolean isNumeric(int column) {
        var texts = table.rows().stream()
                .map(row -> row.at(column).text().strip())
                .filter(text -> !text.isEmpty())
                .toList();
        return !texts.isEmpty()
                && texts.stream().allMatch(text -> Decimal.parse(text).isPresent());
    }

    /**
     * The ingredients.
     *
     * @param source where they come from, for those that do not say
     */
    public List<IngredientDraft> read(String source) {
        var drafts = new ArrayList<IngredientDraft>();
        table.rows().forEach(row -> ingredient(row, source).ifPresent(drafts::add));
        return drafts;
    }

    private Optional<IngredientDraft> ingredient(Row row, String source) {
        var id = Optional.of(text(row, "id"))
                .filter(found -> !found.isEmpty())
                .orElseGet(() -> Slug.of(text(row, "name")));
        if (id.isEmpty()) {
            faults.add(row.origin(0), "This row has no id and no name", "Expected a name to call the ingredient by.");
            return Optional.empty();
        }
        var json = NODES.objectNode();
        var origins = new LinkedHashMap<String, Origin>();
        origins.put("", row.origin(0));
        json.put("id", id);
        TEXTS.forEach(name -> putText(row, name, json, origins));
        LISTS.forEach(name -> putList(row, name, json, origins));
        PAIRS.forEach(name -> putPairs(row, name, json, origins));
        MARKS.forEach((name, path) -> putMark(row, name, path, json, origins));
        putColours(row, json, origins);
        var values = NODES.objectNode();
        var spread = NODES.objectNode();
        valueColumns.forEach(
                (column, found) -> putNumber(row, column, found, found.spread() ? spread : values, origins));
        json.set("values", values);
        putOthers(row, json);
        if (!spread.isEmpty()) {
            json.set("spread", spread);
        }
        if (!json.has("source")) {
            json.put("source", source);
        }
        return Optional.of(new IngredientDraft(id, json, origins));
    }

    private String text(Row row, String heading) {
        var column = headings.get(heading);
        return column == null ? "" : row.at(column).text().strip();
    }

    private void putText(Row row, String heading, ObjectNode json, Map<String, Origin> origins) {
        var text = text(row, heading);
        if (!text.isEmpty()) {
            var field = SPELT.getOrDefault(heading, heading);
            json.put(field, text);
            origins.put("/" + field, row.origin(headings.getOrDefault(heading, 0)));
        }
    }

    private void putMark(Row row, String heading, List<String> path, ObjectNode json, Map<String, Origin> origins) {
        var text = text(row, heading);
        if (!text.isEmpty()) {
            json.withObjectProperty(path.get(0)).put(path.get(1), text);
            var origin = row.origin(headings.getOrDefault(heading, 0));
            origins.put("/" + path.get(0), origin);
            origins.put("/" + path.get(0) + "/" + path.get(1), origin);
        }
    }

    /** "yes" is true; what is neither yes nor no is left for the reader of sets to refuse. */
    private void putColours(Row row, ObjectNode json, Map<String, Origin> origins) {
        var text = text(row, "colours").toLowerCase(Locale.ROOT);
        if (text.equals("yes") || text.equals("true")) {
            json.put("colours", true);
        } else if (!text.isEmpty() && !text.equals("no") && !text.equals("false")) {
            json.put("colours", text);
            origins.put("/colours", row.origin(headings.getOrDefault("colours", 0)));
        }
    }

    private void putList(Row row, String heading, ObjectNode json, Map<String, Origin> origins) {
        var text = text(row, heading);
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

    private void putPairs(Row row, String heading, ObjectNode json, Map<String, Origin> origins) {
        var text = text(row, heading);
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

    private void putOthers(Row row, ObjectNode json) {
        var column = headings.get("others");
        if (column != null) {
            numbers.read(row.at(column), row.origin(column), BigFraction.ONE)
                    .ifPresent(number -> json.put("others", number));
        }
    }

    private void putNumber(Row row, int column, PropertyColumn found, ObjectNode values, Map<String, Origin> origins) {
        var id = found.property().id();
        var origin = row.origin(column);
        numbers.read(row.at(column), origin, found.factor()).ifPresent(number -> {
            values.put(id, number);
            origins.put((found.spread() ? "/spread/" : "/values/") + JsonEdits.escaped(id), origin);
        });
    }
}
