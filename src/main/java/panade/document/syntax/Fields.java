package panade.document.syntax;

import java.util.List;
import java.util.Optional;
import panade.document.syntax.Node.ObjectNode;

/** Reads the fields of one object; a field that does not belong there is told at its name. */
public final class Fields {
    private final ObjectNode object;
    private final Problems problems;

    public Fields(ObjectNode object, Problems problems, String... known) {
        this.object = object;
        this.problems = problems;
        var names = List.of(known);
        object.fields().stream()
                .filter(field -> !names.contains(field.name()))
                .forEach(field -> problems.unknown(
                        field.nameOrigin(),
                        "\"" + field.name() + "\" is not a field that belongs here",
                        field.name(),
                        names,
                        "Expected one of: " + String.join(", ", names) + "."));
    }

    /** The field's value. */
    public Optional<Node> get(String name) {
        return object.field(name).map(Node.Field::value);
    }

    /** The field's value; its absence is told at the object's opening brace. */
    public Optional<Node> required(String name, String expected) {
        var value = get(name);
        if (value.isEmpty()) {
            problems.add(object.origin(), "\"" + name + "\" is missing", "Expected " + expected + ".");
        }
        return value;
    }
}
