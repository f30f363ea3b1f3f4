package panade.document.syntax;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.origin.Origin;

/** A JSON value that remembers where it was written. */
public sealed interface Node {
    /** Where its first character stands. */
    Origin origin();

    /** What to call it in a message, such as {@code a text}. */
    String words();

    /** An object; fields keep the document's order, and no name comes twice. */
    record ObjectNode(Origin origin, List<Field> fields) implements Node {
        @Override
        public String words() {
            return "an object";
        }

        /** The field of that name. */
        public Optional<Field> field(String name) {
            return fields.stream().filter(field -> field.name().equals(name)).findFirst();
        }
    }

    /** A named value; {@code nameOrigin} is where the name stands, with the value's pointer. */
    record Field(String name, Origin nameOrigin, Node value) {}

    /** A list. */
    record ArrayNode(Origin origin, List<Node> items) implements Node {
        @Override
        public String words() {
            return "a list";
        }
    }

    /** A text. */
    record TextNode(Origin origin, String text) implements Node {
        @Override
        public String words() {
            return "a text";
        }
    }

    /** A number with its exact value and its spelling. */
    record NumberNode(Origin origin, BigFraction value, String spelling) implements Node {
        @Override
        public String words() {
            return "a number";
        }
    }

    /** {@code true}, {@code false} or {@code null}. */
    record WordNode(Origin origin, String word) implements Node {
        @Override
        public String words() {
            return word;
        }
    }
}
