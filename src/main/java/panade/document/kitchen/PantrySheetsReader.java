package panade.document.kitchen;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import panade.document.kitchen.Workbook.Row;
import panade.document.kitchen.Workbook.Table;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;

/** Reads the sheets Ingredients and Traits as an ingredient set would be written. */
public final class PantrySheetsReader {
    private final Workbook book;
    private final CellValues values;

    private PantrySheetsReader(Workbook book) {
        this.book = book;
        this.values = new CellValues(book.problems());
    }

    /** The ingredient set of a workbook. */
    public static Optional<ObjectNode> read(Path file, String shownAs, Problems problems) {
        return Workbook.open(file, shownAs, problems).flatMap(book -> new PantrySheetsReader(book).set());
    }

    private Optional<ObjectNode> set() {
        var table = book.table(Sheets.INGREDIENTS);
        if (table.isEmpty()) {
            book.tellMissing(Sheets.INGREDIENTS);
            return Optional.empty();
        }
        var origin = table.get().origin();
        var tree = new FieldTree(book.problems());
        book.table(Sheets.BRIEF).ifPresent(brief -> pantryFields(brief, tree));
        var fields = new ArrayList<>(tree.fields(origin).values());
        book.table(Sheets.TRAITS).ifPresent(traits -> fields.add(new Field("traits", traits.origin(), traits(traits))));
        var ingredients = new ArrayList<Node>();
        table.get().rows().forEach(row -> ingredients.add(ingredient(row, "/ingredients/" + ingredients.size())));
        fields.add(new Field("ingredients", origin, new ArrayNode(origin, List.copyOf(ingredients))));
        return Optional.of(new ObjectNode(origin, List.copyOf(fields)));
    }

    /** Title, source and assumptions of the set stand among the fields of the brief. */
    private void pantryFields(Table brief, FieldTree tree) {
        var start = Sheets.PANTRY + ".";
        for (var row : brief.rows()) {
            var name = row.cell(Sheets.FIELD).filter(cell -> cell.text().startsWith(start));
            var value = row.cell(Sheets.VALUE);
            if (name.isPresent() && value.isPresent()) {
                var field = name.get().text().substring(start.length());
                var node = values.of(field, value.get(), "/" + field.replace('.', '/'));
                tree.put(new Workbook.Filled(field, name.get().origin()), node);
            }
        }
    }

    private Node traits(Table table) {
        var traits = new ArrayList<Field>();
        for (var row : table.rows()) {
            var name = row.cell(Sheets.TRAIT);
            if (name.isEmpty()) {
                book.problems().add(row.origin(), "The trait has no name", "Expected one in the column trait.");
                continue;
            }
            if (traits.stream().anyMatch(field -> field.name().equals(name.get().text()))) {
                book.problems()
                        .add(name.get().origin(), "The trait is there twice", "Expected one row for each trait.");
                continue;
            }
            var pointer = "/traits/" + name.get().text();
            var place = CellValues.at(name.get().origin(), pointer);
            traits.add(new Field(name.get().text(), place, new ObjectNode(place, trait(row, pointer))));
        }
        return new ObjectNode(table.origin(), List.copyOf(traits));
    }

    private List<Field> trait(Row row, String pointer) {
        var fields = new ArrayList<Field>();
        row.cells().forEach((head, cell) -> {
            if (!head.equals(Sheets.TRAIT)) {
                var path = pointer + "/" + head;
                var value = head.equals("sum") ? values.sum(cell, path) : values.of(head, cell, path);
                fields.add(new Field(head, CellValues.at(cell.origin(), path), value));
            }
        });
        return List.copyOf(fields);
    }

    private ObjectNode ingredient(Row row, String pointer) {
        var about = new ArrayList<Field>();
        var holds = new ArrayList<Field>();
        var spread = new ArrayList<Field>();
        row.cells().forEach((head, cell) -> {
            boolean isSpread = head.startsWith(Sheets.SPREAD);
            boolean isAbout = Sheets.ABOUT.contains(head);
            var name = isSpread ? head.substring(Sheets.SPREAD.length()) : head;
            var path = pointer + (isAbout ? "/" : isSpread ? "/spread/" : "/values/") + name;
            var field = new Field(name, CellValues.at(cell.origin(), path), values.of(isAbout ? name : "", cell, path));
            (isAbout ? about : isSpread ? spread : holds).add(field);
        });
        var place = CellValues.at(row.origin(), pointer);
        merge(about, "values", holds, place, true);
        merge(about, "spread", spread, place, false);
        return new ObjectNode(place, List.copyOf(about));
    }

    /** What stands in columns of its own, and what is written in the one cell for what no column can be named by. */
    private static void merge(List<Field> about, String name, List<Field> columns, Origin place, boolean always) {
        var written = about.stream().filter(field -> field.name().equals(name)).findFirst();
        about.removeIf(field -> field.name().equals(name) && field.value() instanceof ObjectNode);
        var inside = Stream.concat(columns.stream(), written.stream().flatMap(PantrySheetsReader::inside))
                .toList();
        if (always || !inside.isEmpty()) {
            about.add(new Field(name, place, new ObjectNode(place, inside)));
        }
    }

    private static Stream<Field> inside(Field field) {
        return field.value() instanceof ObjectNode object ? object.fields().stream() : Stream.empty();
    }
}
