package panade.document.syntax;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.domain.origin.Origin;

/** Writes what overrides say over the fields of a brief. */
public final class Overriding {
    private Overriding() {}

    public static ObjectNode apply(ObjectNode brief, Overrides overrides) {
        var typed = new TypedFields(overrides.typed()).apply(brief);
        var changed = set(typed, "batch", text("--batch", overrides.batch()));
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
    public static Origin optionOrigin(String option) {
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
