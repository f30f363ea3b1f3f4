package panade.intake.food;

import java.util.Map;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.pantry.Property;
import panade.intake.table.Faults;
import panade.intake.table.Numbers;
import panade.intake.table.Table;
import panade.intake.table.Table.Row;
import panade.quantity.Decimal;
import panade.sheet.WordList;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads what a set says of its columns: traits, assumptions, and the set's title and source. */
public final class TraitTable {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String TIMES = " x ";

    private final Table table;
    private final Map<String, Integer> columns;
    private final Map<String, Property> known;
    private final Faults faults;
    private final Numbers numbers;

    /**
     * A table of traits.
     *
     * @param known components that need not be declared
     */
    public TraitTable(Table table, Map<String, Property> known, Faults faults) {
        this.table = table;
        this.columns = table.byHeading();
        this.known = known;
        this.faults = faults;
        this.numbers = new Numbers(faults);
    }

    /** The fields of the set that it fills. */
    public ObjectNode read() {
        var about = NODES.objectNode();
        var assume = NODES.objectNode();
        var traits = NODES.objectNode();
        for (var row : table.rows()) {
            var name = text(row, "trait");
            if (name.equals("set title") || name.equals("set source")) {
                putUnlessBlank(about, name.substring(4), text(row, "title"));
            } else if (name.isEmpty()) {
                faults.add(row.origin(0), "This row names no trait", "Expected a name under \"trait\".");
            } else {
                putNumber(row, "assume", assume, name);
                trait(row, name, traits);
            }
        }
        about.set("assume", assume);
        about.set("traits", traits);
        return about;
    }

    private static void putUnlessBlank(ObjectNode node, String field, String text) {
        if (!text.isEmpty()) {
            node.put(field, text);
        }
    }

    private String text(Row row, String heading) {
        var column = columns.get(heading);
        return column == null ? "" : row.at(column).text().strip();
    }

    private void putNumber(Row row, String heading, ObjectNode node, String field) {
        var column = columns.get(heading);
        if (column != null) {
            numbers.read(row.at(column), row.origin(column), BigFraction.ONE)
                    .ifPresent(number -> node.put(field, number));
        }
    }

    private void trait(Row row, String name, ObjectNode traits) {
        var trait = NODES.objectNode();
        var component = known.get(name);
        if (component == null) {
            putUnlessBlank(trait, "unit", text(row, "unit"));
        }
        var title = text(row, "title");
        if (!title.equals(usualTitle(name, component))) {
            putUnlessBlank(trait, "title", title);
        }
        putNumber(row, "absent", trait, "absent");
        var sum = sum(row);
        if (!sum.isEmpty()) {
            trait.set("sum", sum);
        }
        if (component == null || !trait.isEmpty()) {
            traits.set(name, trait);
        }
    }

    private static String usualTitle(String name, @Nullable Property component) {
        return component == null ? name : component.title();
    }

    private ObjectNode sum(Row row) {
        var sum = NODES.objectNode();
        for (var part : WordList.read(text(row, "sum"))) {
            int sign = part.indexOf(TIMES);
            var number =
                    sign < 0 ? null : Decimal.parse(part.substring(0, sign)).orElse(null);
            if (number == null) {
                faults.add(
                        row.origin(Objects.requireNonNull(columns.get("sum"))),
                        "\"" + part + "\" is no part of a sum",
                        "Expected parts such as: 4 x PROCNT; 9 x FAT.");
            } else {
                sum.put(part.substring(sign + TIMES.length()), Numbers.decimal(number));
            }
        }
        return sum;
    }
}
