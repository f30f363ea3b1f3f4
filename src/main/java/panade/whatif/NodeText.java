package panade.whatif;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Node.WordNode;

/** Writes nodes as JSON (RFC 8259): numbers as they are spelt, a line for each field of a document and each bound. */
final class NodeText {
    private static final int FIRST_PRINTABLE = 0x20;

    private NodeText() {}

    /** A whole document. */
    static String document(List<Field> fields) {
        return fields.stream()
                .map(field -> "  " + quoted(field.name()) + ": " + listed(field.value()))
                .collect(Collectors.joining(",\n", "{\n", "\n}\n"));
    }

    /** A list of objects stands on lines of its own. */
    private static String listed(Node node) {
        boolean lines = node instanceof ArrayNode list && list.items().stream().anyMatch(ObjectNode.class::isInstance);
        return lines
                ? ((ArrayNode) node)
                        .items().stream()
                                .map(item -> "    " + text(item))
                                .collect(Collectors.joining(",\n", "[\n", "\n  ]"))
                : text(node);
    }

    static String text(Node node) {
        if (node instanceof ObjectNode object) {
            return object.fields().stream()
                    .map(field -> quoted(field.name()) + ": " + text(field.value()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof ArrayNode list) {
            return list.items().stream().map(NodeText::text).collect(Collectors.joining(", ", "[", "]"));
        }
        if (node instanceof TextNode text) {
            return quoted(text.text());
        }
        return node instanceof NumberNode number ? number.spelling() : ((WordNode) node).word();
    }

    private static String quoted(String text) {
        var quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (each == '"' || each == '\\') {
                quoted.append('\\').append(each);
            } else if (each < FIRST_PRINTABLE) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) each));
            } else {
                quoted.append(each);
            }
        }
        return quoted.append('"').toString();
    }
}
