package panade.document.kitchen;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import panade.document.kitchen.Workbook.Filled;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Node.WordNode;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.quantity.Decimal;
import panade.sheet.WordList;

/** What a cell means, by what its column holds. What stands in braces or brackets is read as in a document. */
record CellValues(Problems problems) {
    private static final Set<String> WORDS = Set.of("true", "false", "null");
    private static final Pattern PART = Pattern.compile("(?<number>\\S+)\\s+x\\s+(?<name>.+)");

    /** A value of the column or field of that name. */
    Node of(String column, Filled cell, String pointer) {
        var origin = at(cell.origin(), pointer);
        if (Sheets.TEXTS.contains(column)) {
            return new TextNode(origin, cell.text());
        }
        if (isWritten(cell)) {
            return written(cell, origin);
        }
        if (Sheets.LISTS.contains(column)) {
            return new ArrayNode(origin, texts(cell, origin));
        }
        if (Sheets.NAMED.contains(column)) {
            return named(cell, origin);
        }
        return Sheets.MEASURED.contains(column) ? measured(cell, origin) : value(cell, origin);
    }

    /** A number, a word of JSON, or a text. */
    private static Node value(Filled cell, Origin origin) {
        if (WORDS.contains(lower(cell))) {
            return new WordNode(origin, lower(cell));
        }
        return Decimal.parse(cell.text())
                .<Node>map(number -> new NumberNode(origin, number, cell.text()))
                .orElseGet(() -> new TextNode(origin, cell.text()));
    }

    private static String lower(Filled cell) {
        return cell.text().toLowerCase(java.util.Locale.ROOT);
    }

    /** A weighted sum, such as {@code 4 x PROCNT; 9 x FAT}. */
    Node sum(Filled cell, String pointer) {
        var origin = at(cell.origin(), pointer);
        if (isWritten(cell)) {
            return written(cell, origin);
        }
        var fields = new ArrayList<Field>();
        for (var word : WordList.read(cell.text())) {
            var part = PART.matcher(word);
            var number = part.matches()
                    ? Decimal.parse(part.group("number"))
                    : java.util.Optional.<org.apache.commons.numbers.fraction.BigFraction>empty();
            if (number.isEmpty()) {
                problems.add(
                        origin,
                        "\"" + word + "\" is no part of a sum",
                        "Expected numbers times names with semicolons between them, such as 4 x PROCNT; 9 x FAT.");
            } else {
                fields.add(new Field(
                        part.group("name"), origin, new NumberNode(origin, number.get(), part.group("number"))));
            }
        }
        return new ObjectNode(origin, List.copyOf(fields));
    }

    private static List<Node> texts(Filled cell, Origin origin) {
        return WordList.read(cell.text()).stream()
                .<Node>map(word -> new TextNode(origin, word))
                .toList();
    }

    private static Node named(Filled cell, Origin origin) {
        var texts = texts(cell, origin);
        return texts.size() == 1 ? texts.get(0) : new ArrayNode(origin, texts);
    }

    private Node measured(Filled cell, Origin origin) {
        var parts = cell.text().split("\\s+", 2);
        if (parts.length < 2 || !Sheets.NAMED.contains(parts[0])) {
            problems.add(
                    origin,
                    "\"" + cell.text() + "\" does not say what is measured",
                    "Expected property, kind, ingredient or stage, and a name: such as kind texturate.");
            return new ObjectNode(origin, List.of(new Field("kind", origin, new TextNode(origin, cell.text()))));
        }
        var name = named(new Filled(parts[1], origin), origin);
        return new ObjectNode(origin, List.of(new Field(parts[0], origin, name)));
    }

    private static boolean isWritten(Filled cell) {
        return cell.text().startsWith("{") || cell.text().startsWith("[");
    }

    private Node written(Filled cell, Origin origin) {
        var inside = new Problems();
        var node = JsonDocument.parse(cell.text(), origin.file(), inside);
        inside.inOrder()
                .forEach(each -> problems.add(origin, each.what(), each.advice().toArray(String[]::new)));
        return placed(node.orElse(new TextNode(origin, cell.text())), origin);
    }

    /** The same in one cell. */
    private static Node placed(Node node, Origin origin) {
        if (node instanceof ObjectNode object) {
            return new ObjectNode(
                    origin,
                    object.fields().stream()
                            .map(field -> {
                                var place = below(origin, field.name());
                                return new Field(field.name(), place, placed(field.value(), place));
                            })
                            .toList());
        }
        if (node instanceof ArrayNode array) {
            var items = new ArrayList<Node>();
            array.items().forEach(item -> items.add(placed(item, below(origin, "" + items.size()))));
            return new ArrayNode(origin, List.copyOf(items));
        }
        if (node instanceof NumberNode number) {
            return new NumberNode(origin, number.value(), number.spelling());
        }
        return node instanceof WordNode word
                ? new WordNode(origin, word.word())
                : new TextNode(origin, ((TextNode) node).text());
    }

    private static Origin below(Origin origin, String name) {
        return at(origin, origin.pointer() + "/" + name.replace("~", "~0").replace("/", "~1"));
    }

    /** The place of a cell for what a pointer names. */
    static Origin at(Origin origin, String pointer) {
        return new Origin(origin.file(), origin.line(), origin.column(), pointer, origin.cell());
    }
}
