package panade.document.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.domain.origin.Origin;
import panade.quantity.Decimal;

/** Puts typed fields into a document that was read. A bound that is left without limits goes with them. */
record TypedFields(List<TypedField> typed) {
    ObjectNode apply(ObjectNode root) {
        return typed.isEmpty() ? root : fields(root);
    }

    private ObjectNode fields(ObjectNode object) {
        var fields = new ArrayList<Field>();
        for (var field : object.fields()) {
            var now = typedFor(object, field.name())
                    .map(text -> value(text, field.value().origin()))
                    .orElseGet(() -> within(field.value()));
            now.ifPresent(value -> fields.add(new Field(field.name(), field.nameOrigin(), value)));
        }
        typed.stream()
                .filter(each -> isIn(object, each) && object.field(each.field()).isEmpty())
                .forEach(each -> value(each, at(object, each))
                        .ifPresent(value -> fields.add(new Field(each.field(), value.origin(), value))));
        return new ObjectNode(object.origin(), List.copyOf(fields));
    }

    private Optional<TypedField> typedFor(ObjectNode object, String name) {
        return typed.stream()
                .filter(each -> isIn(object, each) && each.field().equals(name))
                .findFirst();
    }

    private static boolean isIn(ObjectNode object, TypedField typed) {
        return object.origin().pointer().equals(typed.pointer())
                && object.origin().file().equals(typed.file());
    }

    private static Origin at(ObjectNode object, TypedField typed) {
        var place = object.origin();
        return new Origin(place.file(), place.line(), place.column(), typed.pointer() + "/" + typed.field());
    }

    /** What is typed: a bare number where it is one, else a text; nothing where it is blank. */
    private static Optional<Node> value(TypedField typed, Origin origin) {
        var text = typed.text().strip();
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(Decimal.parse(text)
                        .<Node>map(number -> new NumberNode(origin, number, text))
                        .orElseGet(() -> new TextNode(origin, text)));
    }

    private Optional<Node> within(Node node) {
        if (node instanceof ArrayNode list) {
            var items = list.items().stream().flatMap(item -> within(item).stream());
            return Optional.of(new ArrayNode(list.origin(), items.toList()));
        }
        if (!(node instanceof ObjectNode object)) {
            return Optional.of(node);
        }
        var now = fields(object);
        return hasLimit(object) && !hasLimit(now) ? Optional.empty() : Optional.of(now);
    }

    private static boolean hasLimit(ObjectNode object) {
        return object.field("min").isPresent() || object.field("max").isPresent();
    }
}
