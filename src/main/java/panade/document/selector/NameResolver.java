package panade.document.selector;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.domain.pantry.IngredientSet;
import panade.domain.pantry.PropertyWords;

/** Puts ids where a brief has names that only one ingredient has, and tagnames where it has everyday words for them. */
public record NameResolver(IngredientSet set) {
    private static final Set<String> IDS =
            Set.of("ingredient", "ingredients", "only", "whenUsed", "if", "then", "neverTogether");
    private static final Set<String> PROPERTIES = Set.of("property");
    private static final Set<String> BY_PROPERTY = Set.of("lose", "assume");

    /** The brief with ids; the field that names the set's file stays. */
    public ObjectNode resolved(ObjectNode brief) {
        return new ObjectNode(
                brief.origin(),
                brief.fields().stream()
                        .map(field -> field.name().equals("ingredients") ? field : resolved(field))
                        .toList());
    }

    private Field resolved(Field field) {
        var value = field.value();
        if (IDS.contains(field.name())) {
            value = renamed(value, this::id);
        } else if (PROPERTIES.contains(field.name()) || BY_PROPERTY.contains(field.name())) {
            value = renamed(value, this::property);
        } else {
            value = resolved(value);
        }
        return new Field(field.name(), field.nameOrigin(), value);
    }

    private Node resolved(Node node) {
        if (node instanceof ObjectNode object) {
            return new ObjectNode(
                    object.origin(),
                    object.fields().stream().map(this::resolved).toList());
        }
        return node instanceof ArrayNode list
                ? new ArrayNode(
                        list.origin(), list.items().stream().map(this::resolved).toList())
                : node;
    }

    /** A text, the texts of a list or the names of an object, each by another name. */
    private static Node renamed(Node node, UnaryOperator<String> by) {
        if (node instanceof TextNode text) {
            return new TextNode(text.origin(), by.apply(text.text()));
        }
        if (node instanceof ArrayNode list) {
            List<Node> items = new ArrayList<>();
            list.items().forEach(item -> items.add(item instanceof TextNode ? renamed(item, by) : item));
            return new ArrayNode(list.origin(), List.copyOf(items));
        }
        return node instanceof ObjectNode object
                ? new ObjectNode(
                        object.origin(),
                        object.fields().stream()
                                .map(field -> new Field(by.apply(field.name()), field.nameOrigin(), field.value()))
                                .toList())
                : node;
    }

    private String id(String name) {
        return set.idOf(name).orElse(name);
    }

    private String property(String name) {
        return set.properties().containsKey(name)
                ? name
                : PropertyWords.tagname(name).orElse(name);
    }
}
