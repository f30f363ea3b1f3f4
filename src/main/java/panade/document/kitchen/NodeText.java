package panade.document.kitchen;

import java.util.stream.Collectors;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Node.WordNode;

/** Writes a value in one line as a document would hold it (RFC 8259). */
final class NodeText {
    private NodeText() {}

    static String of(Node node) {
        if (node instanceof ObjectNode object) {
            return object.fields().stream()
                    .map(field -> quoted(field.name()) + ": " + of(field.value()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof ArrayNode array) {
            return array.items().stream().map(NodeText::of).collect(Collectors.joining(", ", "[", "]"));
        }
        if (node instanceof NumberNode number) {
            return number.spelling();
        }
        return node instanceof WordNode word ? word.word() : quoted(((TextNode) node).text());
    }

    private static String quoted(String text) {
        var quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign == '"' || sign == '\\') {
                quoted.append('\\').append(sign);
            } else if (sign < ' ') {
                quoted.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) sign));
            } else {
                quoted.append(sign);
            }
        }
        return quoted.append('"').toString();
    }
}
