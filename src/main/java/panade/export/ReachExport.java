package panade.export;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import panade.explain.Room.PropertyRoom;
import panade.explain.conflict.Move;
import panade.label.LabelChange;
import panade.reach.ShelfTarget;
import panade.reach.Target;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Writes whether a price can be reached. */
public final class ReachExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ReachExport() {}

    /** The result of {@code reach}. */
    public static String of(Target target) {
        var result = NODES.objectNode();
        var hoped = NODES.objectNode();
        JsonExport.put(hoped, "perKg", target.targetPerKg());
        result.set("target", hoped);
        result.put("met", target.isMet());
        JsonExport.put(result, "gapPerKg", target.gapPerKg());
        result.set("best", JsonExport.node(target.best()));
        var shelf = target.shelf();
        if (shelf != null) {
            result.set("shelf", shelf(shelf));
        }
        result.set("moves", moves(target.moves(), target.labels()));
        result.set("pair", moves(target.pair(), Map.of()));
        var batch = target.batch();
        JsonExport.put(result, "batchKg", batch == null ? null : batch.base());
        result.set("prices", prices(target));
        result.set("atTarget", atTarget(target.atTarget()));
        var open = NODES.arrayNode();
        target.open().forEach(open::add);
        result.set("undecided", open);
        return RemarkExport.print(result, target.best().asked().remarks());
    }

    private static ArrayNode shelf(ShelfTarget shelf) {
        var array = NODES.arrayNode();
        shelf.lines().forEach(line -> {
            var node = NODES.objectNode();
            node.put("line", line.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            JsonExport.put(node, "part", line.part());
            JsonExport.put(node, "takenPerKg", line.taken());
            JsonExport.put(node, "leftPerKg", line.left());
            array.add(node);
        });
        return array;
    }

    private static ArrayNode moves(List<Move> moves, Map<Move, LabelChange> labels) {
        var array = NODES.arrayNode();
        moves.forEach(move -> {
            var node = NODES.objectNode();
            node.put("path", move.path());
            node.put("file", move.origin().file());
            node.put("name", move.name());
            JsonExport.put(node, "from", move.from());
            JsonExport.put(node, "to", move.to());
            node.put("unit", move.unit().symbol());
            var kept = move.kept();
            if (kept != null) {
                JsonExport.put(node, "kept", kept.number());
                node.put("keptUnit", kept.unit().symbol());
            }
            JsonExport.put(node, "costPerKg", move.costPerKg());
            var label = labels.get(move);
            if (label != null) {
                node.set("label", LabelExport.of(label));
            }
            array.add(node);
        });
        return array;
    }

    private static ArrayNode prices(Target target) {
        var array = NODES.arrayNode();
        target.prices().forEach(price -> {
            var node = NODES.objectNode();
            node.put("ingredient", price.ingredient());
            node.put("supplier", price.supplier());
            JsonExport.put(node, "from", price.from());
            JsonExport.put(node, "to", price.to());
            JsonExport.put(node, "costPerKg", price.costPerKg());
            array.add(node);
        });
        return array;
    }

    private static ArrayNode atTarget(List<PropertyRoom> rooms) {
        var array = NODES.arrayNode();
        rooms.forEach(room -> {
            for (var sense : List.of("max", "min")) {
                var node = NODES.objectNode();
                node.put("property", room.property());
                node.put("sense", sense);
                JsonExport.put(node, "value", sense.equals("max") ? room.max() : room.min());
                node.put("unit", room.unit().symbol());
                array.add(node);
            }
        });
        return array;
    }
}
