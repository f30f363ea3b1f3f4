package panade.export;

import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Cost;
import panade.explain.conflict.Conflict.Relaxation;
import panade.explain.conflict.Conflict.Member;
import panade.plan.Contradiction;
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
        result.set("members", members(conflict.sets()));
        result.put("allConflicts", conflict.complete());
        result.put("separateConflicts", conflict.separate());
        result.put("conflictProved", conflict.proved());
        var freeing = NODES.arrayNode();
        conflict.sets().forEach(set -> {
            var paths = NODES.arrayNode();
            set.stream().filter(Member::frees).forEach(member -> paths.add(member.path()));
            freeing.add(paths);
        });
        result.set("freeing", freeing);
        result.set("cures", cures(conflict.cures()));
        var combined = NODES.objectNode();
        combined.set("moves", cures(conflict.combined()));
        put(combined, conflict.combinedCost());
        result.set("combined", conflict.combined().isEmpty() ? NODES.nullNode() : combined);
        var open = NODES.arrayNode();
        conflict.open().forEach(open::add);
        result.set("undecided", open);
        result.set("certificate", certificate(outcome));
        return result;
    }

    /** The same sets with the file of each path: under "basedOn" two files have a path each of the same words. */
    private static ArrayNode members(List<List<Member>> sets) {
        var array = NODES.arrayNode();
        sets.forEach(set -> {
            var members = array.addArray();
            set.forEach(member -> members.addObject()
                    .put("path", member.path())
                    .put("file", member.origin().file())
                    .put("name", member.name()));
        });
        return array;
    }

    private static ArrayNode cures(List<Relaxation> cures) {
        var array = NODES.arrayNode();
        cures.forEach(cure -> array.add(cure(cure)));
        return array;
    }

    private static ObjectNode cure(Relaxation cure) {
        var node = NODES.objectNode();
        node.put("path", cure.path());
        var origin = cure.origin();
        if (origin != null) {
            node.put("file", origin.file());
        }
        node.put("name", cure.name());
        if (cure.change() instanceof Change.Moves moves) {
            JsonExport.put(node, "from", moves.from());
            JsonExport.put(node, "to", moves.to());
            node.put("unit", moves.unit().symbol());
            var kept = moves.kept();
            if (kept != null) {
                JsonExport.put(node, "kept", kept.number());
                node.put("keptUnit", kept.unit().symbol());
            }
        } else if (cure.change() instanceof Change.Drops) {
            node.put("from", "kept");
            node.put("to", "dropped");
        } else {
            node.put("from", "left out");
            node.put("to", "allowed");
        }
        put(node, cure.cost());
        return node;
    }

    private static void put(ObjectNode node, @Nullable Cost cost) {
        JsonExport.put(node, "costPerKg", cost == null ? null : cost.perKg());
        if (cost != null) {
            node.put("costProved", cost.least());
        }
    }

    private static ObjectNode certificate(Conflicted outcome) {
        var proof = outcome.proof();
        var node = NODES.objectNode().put("contradiction", "exact").put("engine", proof.engine());
        if (proof instanceof Contradiction.RuledOut ruledOut) {
            return node.put("provedBy", "branching")
                    .put("looked", ruledOut.proof().looked());
        }
        return node.put("provedBy", "multipliers");
    }
}
