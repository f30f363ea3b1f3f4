package panade.export;

import java.util.Locale;
import java.util.stream.Collectors;
import panade.domain.Blend;
import panade.quantity.Decimal;
import panade.study.Curve;
import panade.study.Curve.Kind;
import panade.study.Curve.Moved;
import panade.study.Curve.Point;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes a curve of the least cost. */
public final class TraceExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final int DIGITS = 15;

    private TraceExport() {}

    /** The result of {@code trace}. */
    public static String json(Curve curve) {
        var result = NODES.objectNode();
        result.set("of", of(curve.of()));
        JsonExport.put(result, "now", curve.now());
        result.put("endless", curve.endless());
        result.put("low", word(curve.low()));
        result.put("high", word(curve.high()));
        var points = NODES.arrayNode();
        curve.points().forEach(point -> points.add(point(point)));
        result.set("points", points);
        result.set("segments", segments(curve));
        return RemarkExport.print(result, curve.brief().remarks());
    }

    /** The points as CSV (RFC 4180). */
    public static String csv(Curve curve) {
        return curve.points().stream()
                .map(point -> Decimal.significant(point.at(), DIGITS).toPlainString() + ","
                        + Decimal.significant(point.costPerKg(), DIGITS).toPlainString() + "\r\n")
                .collect(Collectors.joining("", "at,costPerKg\r\n", ""));
    }

    private static ObjectNode of(Moved moved) {
        var node = NODES.objectNode();
        if (moved instanceof Moved.Price price) {
            return node.put("price", price.ingredient())
                    .put("supplier", price.supplier())
                    .put("unit", "per kg as bought");
        }
        var number = (Moved.BoundNumber) moved;
        return node.put("bound", number.name())
                .put("path", number.path())
                .put("unit", number.unit())
                .put("bent", number.bent());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static ObjectNode point(Point point) {
        var node = NODES.objectNode();
        JsonExport.put(node, "at", point.at());
        JsonExport.put(node, "costPerKg", point.costPerKg());
        if (point.kind() != Kind.TURN) {
            node.put("kind", word(point.kind()));
        }
        return node;
    }

    private static ArrayNode segments(Curve curve) {
        var segments = NODES.arrayNode();
        curve.segments().forEach(segment -> {
            var node = NODES.objectNode();
            JsonExport.put(node, "from", segment.from());
            JsonExport.put(node, "to", segment.to());
            JsonExport.put(node, "slope", segment.slope());
            JsonExport.put(node, "bend", segment.bend());
            node.set("blend", lines(segment.blend()));
            segments.add(node);
        });
        return segments;
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
