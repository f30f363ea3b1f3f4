package panade.intake.json;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads JSON as our documents have it, decimals kept, and writes it the way they are laid out. */
public final class Json {
    public static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
            // Foods are read one by one out of a list.
            .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private Json() {}

    /** A value on one line. */
    public static String text(JsonNode node) {
        var parts = new ArrayList<String>();
        if (node.isObject()) {
            node.properties().forEach(field -> parts.add(field(field.getKey(), field.getValue())));
            return "{" + String.join(", ", parts) + "}";
        }
        if (node.isArray()) {
            node.forEach(item -> parts.add(text(item)));
            return "[" + String.join(", ", parts) + "]";
        }
        return node.isNumber() ? node.decimalValue().toPlainString() : MAPPER.writeValueAsString(node);
    }

    /** A named value. */
    public static String field(String name, JsonNode value) {
        return MAPPER.writeValueAsString(name) + ": " + text(value);
    }

    /** An ingredient on a few lines, its values on one of their own. */
    public static String ingredient(JsonNode ingredient) {
        var lines = new ArrayList<String>();
        var line = new ArrayList<String>();
        ingredient.properties().forEach(field -> {
            boolean own = field.getValue().isObject();
            if (own && !line.isEmpty()) {
                lines.add(String.join(", ", line));
                line.clear();
            }
            line.add(field(field.getKey(), field.getValue()));
            if (own) {
                lines.add(String.join(", ", line));
                line.clear();
            }
        });
        lines.add(String.join(", ", line));
        return "{" + String.join(",\n     ", withoutBlanks(lines)) + "}";
    }

    private static List<String> withoutBlanks(List<String> lines) {
        return lines.stream().filter(line -> !line.isEmpty()).toList();
    }

    /** Whether two values say the same; numbers by what they are, lists whatever their order. */
    public static boolean same(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return one.decimalValue().compareTo(other.decimalValue()) == 0;
        }
        boolean lists = one.isArray() && other.isArray();
        return lists ? sorted(one).equals(sorted(other)) : one.equals(other);
    }

    private static List<String> sorted(JsonNode list) {
        var items = new ArrayList<String>();
        list.forEach(item -> items.add(text(item)));
        return items.stream().sorted().toList();
    }
}
