package panade.export;

import java.util.List;
import panade.label.LabelChange;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes what a change does to a label. */
final class LabelExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private LabelExport() {}

    static ObjectNode of(LabelChange change) {
        var names = NODES.objectNode();
        names.set("added", texts(change.added()));
        names.set("gone", texts(change.gone()));
        names.put("reordered", change.reordered());
        var allergens = NODES.objectNode();
        allergens.set("added", texts(change.allergensAdded()));
        allergens.set("gone", texts(change.allergensGone()));
        allergens.set("notKnown", texts(change.allergensNotKnown()));
        var figures = NODES.arrayNode();
        change.figures()
                .forEach(figure -> figures.add(NODES.objectNode()
                        .put("id", figure.id())
                        .put("name", figure.name())
                        .put("before", figure.before())
                        .put("after", figure.after())));
        var node = NODES.objectNode();
        node.set("names", names);
        node.set("allergens", allergens);
        node.set("panel", figures);
        return node;
    }

    static ArrayNode texts(List<String> texts) {
        var node = NODES.arrayNode();
        texts.forEach(node::add);
        return node;
    }
}
