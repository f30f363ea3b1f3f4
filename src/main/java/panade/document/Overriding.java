package panade.document;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.document.Node.ArrayNode;
import panade.document.Node.Field;
import panade.document.Node.ObjectNode;
import panade.document.Node.TextNode;
import panade.domain.Origin;

/** Writes what the command line says over the fields of a brief. */
final class Overriding {
    private Overriding() {}

    static ObjectNode apply(ObjectNode brief, Overrides overrides) {
        var changed = set(brief, "batch", text("--batch", overrides.batch()));
        changed = set(changed, "target", text("--target", overrides.target()));
        return set(changed, "prices", prices(overrides));
    }

    private static @Nullable Node text(String option, @Nullable String value) {
        return value == null ? null : new TextNode(optionOrigin(option), value);
    }

    private static @Nullable Node prices(Overrides overrides) {
        if (overrides.prices().isEmpty()) {
            return null;
        }
        var origin = optionOrigin("--prices");
        List<Node> lists = new ArrayList<>();
        overrides.prices().forEach(path -> lists.add(new TextNode(origin, path.toString())));
        return new ArrayNode(origin, List.copyOf(lists));
    }

    /** Where a fault on the command line is said to be. */
    static Origin optionOrigin(String option) {
        return new Origin(option, 0, 0, "");
    }

    private static ObjectNode set(ObjectNode brief, String name, @Nullable Node value) {
        if (value == null) {
            return brief;
        }
        var fields = new ArrayList<>(brief.fields());
        fields.removeIf(field -> field.name().equals(name));
        fields.add(new Field(name, value.origin(), value));
        return new ObjectNode(brief.origin(), List.copyOf(fields));
    }
}
