package panade.export;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import panade.domain.Blend;
import panade.quantity.Decimal;
import panade.trace.Curve;
import panade.trace.Curve.Kind;
import panade.trace.Curve.Moved;
import panade.trace.Curve.Segment;
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
        for (int i = 0; i < curve.points().size(); i++) {
            points.add(point(curve, i));
        }
        result.set("points", points);
        result.set("segments", segments(curve));
        return RemarkExport.print(result, curve.brief().remarks());
    }

    /** The points as CSV (RFC 4180). */
    public static String csv(Curve curve) {
        return IntStream.range(0, curve.points().size())
                .mapToObj(i -> place(curve, i).toPlainString() + ","
                        + Decimal.significant(curve.points().get(i).costPerKg(), DIGITS)
                                .toPlainString() + "\r\n")
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

    private static BigDecimal place(Curve curve, int point) {
        return Decimal.significant(curve.points().get(point).at(), DIGITS, curve.rounding(point));
    }

    private static ObjectNode point(Curve curve, int i) {
        var point = curve.points().get(i);
        var node = NODES.objectNode();
        node.put("at", place(curve, i));
        JsonExport.put(node, "costPerKg", point.costPerKg());
        if (point.kind() != Kind.TURN) {
            node.put("kind", word(point.kind()));
        }
        return node;
    }

    private static ArrayNode segments(Curve curve) {
        var segments = NODES.arrayNode();
        for (int i = 0; i < curve.points().size(); i++) {
            int from = i;
            curve.after(i).ifPresent(segment -> segments.add(segment(curve, from, segment)));
        }
        return segments;
    }

    private static ObjectNode segment(Curve curve, int from, Segment segment) {
        var node = NODES.objectNode();
        node.put("from", place(curve, from));
        if (segment.to() == null) {
            node.putNull("to");
        } else {
            node.put("to", place(curve, from + 1));
        }
        JsonExport.put(node, "slope", segment.slope());
        JsonExport.put(node, "bend", segment.bend());
        node.set("blend", lines(segment.blend()));
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
