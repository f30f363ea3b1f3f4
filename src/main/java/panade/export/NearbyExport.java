package panade.export;

import panade.domain.Blend;
import panade.explain.Room;
import panade.plan.Outcome.Blended;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes what lies near the least-cost blend. */
final class NearbyExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private NearbyExport() {}

    static ArrayNode room(Room room) {
        var rooms = NODES.arrayNode();
        room.ingredients().forEach(each -> {
            var node = NODES.objectNode();
            node.put("ingredient", each.ingredient());
            JsonExport.put(node, "min", each.min());
            JsonExport.put(node, "max", each.max());
            rooms.add(node);
        });
        return rooms;
    }

    static ArrayNode propertyRoom(Room room) {
        var rooms = NODES.arrayNode();
        room.properties().forEach(each -> {
            var node = NODES.objectNode();
            node.put("property", each.property());
            JsonExport.put(node, "min", each.min());
            JsonExport.put(node, "max", each.max());
            node.put("unit", each.unit().symbol());
            rooms.add(node);
        });
        return rooms;
    }

    static ArrayNode alternatives(Blended outcome) {
        var alternatives = NODES.arrayNode();
        outcome.alternatives().forEach(blend -> alternatives.add(alternative(blend)));
        return alternatives;
    }

    private static ObjectNode alternative(Blend blend) {
        var node = NODES.objectNode();
        JsonExport.put(node, "perKg", blend.costPerKg());
        node.set("blend", lines(blend));
        return node;
    }

    /** The lines of a blend as shares. */
    static ArrayNode lines(Blend blend) {
        var lines = NODES.arrayNode();
        blend.lines().forEach(line -> {
            var node = NODES.objectNode();
            node.put("ingredient", line.use().ingredient());
            node.put("stage", line.use().stage());
            node.put("supplier", line.offer().supplier());
            JsonExport.put(node, "share", line.share());
            lines.add(node);
        });
        return lines;
    }
}
