package panade.export;

import java.math.BigDecimal;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.BriefResults;
import panade.domain.Blend;
import panade.plan.Outcome;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Builds JSON by hand for the commands that have no result record yet. */
final class JsonExport {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private JsonExport() {}

    /** Any outcome as part of a larger result. */
    static ObjectNode node(Outcome outcome) {
        return ResultJson.tree(BriefResults.partOf(outcome));
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    static void put(ObjectNode node, String name, @Nullable BigFraction value) {
        if (value == null) {
            node.putNull(name);
        } else {
            node.put(name, number(value));
        }
    }

    static BigDecimal number(BigFraction value) {
        return ResultJson.number(value);
    }

    static String print(ObjectNode node) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
    }

    static ArrayNode lines(Blend blend) {
        var lines = JsonNodeFactory.instance.arrayNode();
        blend.lines().forEach(line -> {
            var node = JsonNodeFactory.instance.objectNode();
            node.put("ingredient", line.use().ingredient());
            node.put("stage", line.use().stage());
            node.put("supplier", line.offer().supplier());
            put(node, "share", line.share());
            lines.add(node);
        });
        return lines;
    }
}
