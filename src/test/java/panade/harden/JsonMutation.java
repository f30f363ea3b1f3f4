package panade.harden;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tools.jackson.core.JacksonException;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.util.RawValue;

/** Damage to what a JSON document says. */
final class JsonMutation {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private final Random random;

    JsonMutation(Random random) {
        this.random = random;
    }

    /** The damaged document; damaged in its bytes where it is no longer JSON. */
    byte[] damaged(byte[] content, Mutation otherwise) {
        try {
            var tree = JSON.readTree(new String(content, StandardCharsets.UTF_8));
            var holders = new ArrayList<JsonNode>();
            collect(tree, holders);
            if (holders.isEmpty()) {
                return otherwise.bytes(content);
            }
            damage(holders.get(random.nextInt(holders.size())), holders);
            return JSON.writeValueAsBytes(tree);
        } catch (JacksonException | NumberFormatException e) {
            return otherwise.bytes(content);
        }
    }

    private static void collect(JsonNode node, List<JsonNode> holders) {
        if (node.isContainer() && !node.isEmpty()) {
            holders.add(node);
            node.forEach(child -> collect(child, holders));
        }
    }

    private void damage(JsonNode holder, List<JsonNode> holders) {
        if (holder instanceof ObjectNode object) {
            var names = new ArrayList<>(object.propertyNames());
            damage(object, names.get(random.nextInt(names.size())), holders);
        } else if (holder instanceof ArrayNode array) {
            damage(array, random.nextInt(array.size()), holders);
        }
    }

    private void damage(ObjectNode object, String name, List<JsonNode> holders) {
        var value = object.get(name);
        switch (random.nextInt(6)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(Hostile.name(random), object.remove(name));
            case 2 -> object.set(Hostile.name(random), other(value, holders));
            default -> object.set(name, other(value, holders));
        }
    }

    private void damage(ArrayNode array, int at, List<JsonNode> holders) {
        var value = array.get(at);
        switch (random.nextInt(5)) {
            case 0 -> array.remove(at);
            case 1 -> array.add(value);
            case 2 -> array.insert(at, other(value, holders));
            default -> array.set(at, other(value, holders));
        }
    }

    private JsonNode other(JsonNode value, List<JsonNode> holders) {
        var nodes = JSON.getNodeFactory();
        return switch (random.nextInt(10)) {
            case 0 -> nodes.nullNode();
            case 1 -> nodes.booleanNode(random.nextBoolean());
            case 2 -> nodes.rawValueNode(new RawValue(Hostile.number(random)));
            case 3 -> nodes.arrayNode().add(value);
            case 4 -> nodes.objectNode().set(Hostile.name(random), value);
            case 5 -> holders.get(random.nextInt(holders.size())).deepCopy();
            case 6 -> nodes.stringNode(Hostile.word(random));
            case 7 -> nodes.rawValueNode(new RawValue(nested()));
            default -> near(value);
        };
    }

    /** The same kind of value with another content. */
    private JsonNode near(JsonNode value) {
        var nodes = JSON.getNodeFactory();
        if (value.isNumber()) {
            return nodes.rawValueNode(new RawValue(value.asString() + random.nextInt(10)));
        }
        return nodes.stringNode(value.isString() ? Hostile.value(random, value.asString()) : Hostile.word(random));
    }

    private String nested() {
        int deep = random.nextInt(20) == 0 ? 5000 : 1 + random.nextInt(5);
        return random.nextBoolean()
                ? "[".repeat(deep) + "]".repeat(deep)
                : "{\"sum\":[".repeat(deep) + "{\"kind\":\"fat\"}" + "]}".repeat(deep);
    }
}
