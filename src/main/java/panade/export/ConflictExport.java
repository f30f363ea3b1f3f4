package panade.export;

import java.util.List;
import panade.explain.Conflict.Change;
import panade.explain.Conflict.Cure;
import panade.plan.Outcome.Conflicted;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes why there is no blend. */
final class ConflictExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ConflictExport() {}

    static ObjectNode of(Conflicted outcome) {
        var conflict = outcome.conflict();
        var result = NODES.objectNode();
        result.put("status", "infeasible");
        var sets = NODES.arrayNode();
        conflict.sets().forEach(set -> {
            var paths = NODES.arrayNode();
            set.forEach(member -> paths.add(member.path()));
            sets.add(paths);
        });
        result.set("conflicts", sets);
        result.put("allConflicts", conflict.complete());
        result.set("cures", cures(conflict.cures()));
        var combined = NODES.objectNode();
        combined.set("moves", cures(conflict.combined()));
        JsonExport.put(combined, "costPerKg", conflict.combinedCostPerKg());
        result.set("combined", conflict.combined().isEmpty() ? NODES.nullNode() : combined);
        result.set("certificate", certificate(outcome));
        return result;
    }

    private static ArrayNode cures(List<Cure> cures) {
        var array = NODES.arrayNode();
        cures.forEach(cure -> array.add(cure(cure)));
        return array;
    }

    private static ObjectNode cure(Cure cure) {
        var node = NODES.objectNode();
        node.put("path", cure.path());
        node.put("name", cure.name());
        if (cure.change() instanceof Change.Moves moves) {
            JsonExport.put(node, "from", moves.from());
            JsonExport.put(node, "to", moves.to());
            node.put("unit", moves.unit().symbol());
        } else if (cure.change() instanceof Change.Drops) {
            node.put("from", "kept");
            node.put("to", "dropped");
        } else {
            node.put("from", "left out");
            node.put("to", "allowed");
        }
        JsonExport.put(node, "costPerKg", cure.costPerKg());
        return node;
    }

    private static ObjectNode certificate(Conflicted outcome) {
        return NODES.objectNode().put("contradiction", "exact").put("engine", outcome.engine());
    }
}
