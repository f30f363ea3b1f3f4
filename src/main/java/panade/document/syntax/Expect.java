package panade.document.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Node.WordNode;

/** Takes a node for what it should be, or tells what was expected in its place. */
public record Expect(Problems problems) {

    public Optional<ObjectNode> object(Node node, String expected) {
        return node instanceof ObjectNode object ? Optional.of(object) : refuse(node, expected);
    }

    public Optional<ArrayNode> list(Node node, String expected) {
        return node instanceof ArrayNode list ? Optional.of(list) : refuse(node, expected);
    }

    public Optional<TextNode> text(Node node, String expected) {
        return node instanceof TextNode text ? Optional.of(text) : refuse(node, expected);
    }

    public Optional<NumberNode> number(Node node, String expected) {
        return node instanceof NumberNode number ? Optional.of(number) : refuse(node, expected);
    }

    /** The texts of a list; whatever else stands in it is told. */
    public List<TextNode> texts(Node node, String expected) {
        var texts = new ArrayList<TextNode>();
        list(node, expected)
                .ifPresent(list ->
                        list.items().forEach(item -> text(item, expected).ifPresent(texts::add)));
        return texts;
    }

    /** One text, or the texts of a list. */
    public List<TextNode> oneOrMore(Node node, String expected) {
        return node instanceof TextNode text ? List.of(text) : texts(node, expected);
    }

    /** Tells that a node is not what it should be. */
    public <T> Optional<T> refuse(Node node, String expected) {
        problems.add(node.origin(), described(node), "Expected " + expected + ".");
        return Optional.empty();
    }

    private static String described(Node node) {
        boolean brief = node instanceof TextNode || node instanceof NumberNode;
        return brief ? "\"" + spelling(node) + "\" is " + node.words() : "Found " + node.words() + " here";
    }

    /** A node as it was written, where it is short enough to repeat. */
    public static String spelling(Node node) {
        if (node instanceof TextNode text) {
            return text.text();
        }
        if (node instanceof NumberNode number) {
            return number.spelling();
        }
        return node instanceof WordNode word ? word.word() : node.words();
    }
}
