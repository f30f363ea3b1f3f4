package panade.intake;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import panade.intake.Beginning.Part;
import panade.intake.Beginning.Wish;
import panade.intake.json.Json;
import panade.intake.table.Slug;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes the brief of a beginning. */
final class BeginningBrief {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Beginning beginning;

    BeginningBrief(Beginning beginning) {
        this.beginning = beginning;
    }

    String text(String set, List<String> prices) {
        var json = NODES.objectNode().put("title", beginning.product()).put("ingredients", set);
        prices.forEach(json.putArray("prices")::add);
        json.put("currency", beginning.currency()).put("batch", beginning.batch());
        if (!beginning.only().isEmpty()) {
            beginning.only().forEach(json.putArray("only")::add);
        }
        putUnlessEmpty(json, "target", beginning.target());
        var lines = json.properties().stream()
                .map(field -> Json.field(field.getKey(), field.getValue()))
                .toList();
        var bounds =
                beginning.wishes().stream().map(wish -> Json.text(bound(wish))).toList();
        return "{\n  " + String.join(",\n  ", lines) + ",\n  \"bounds\": " + list(bounds) + stages() + "\n}\n";
    }

    private static String list(List<String> lines) {
        return lines.isEmpty() ? "[]" : "[\n    " + String.join(",\n    ", lines) + "\n  ]";
    }

    private static ObjectNode bound(Wish wish) {
        var json = NODES.objectNode();
        putUnlessEmpty(json, "name", wish.name());
        json.put(wish.selector(), wish.of());
        if (!wish.within().isEmpty()) {
            json.putObject("within").put("kind", wish.within());
            json.putObject("per").put("kind", wish.within());
        }
        putLimit(json, "min", wish.least());
        putLimit(json, "max", wish.most());
        return json;
    }

    /** A limit with a unit is a text, one without a number. */
    private static void putLimit(ObjectNode json, String field, String text) {
        Beginning.amount(text)
                .ifPresentOrElse(number -> json.put(field, number), () -> putUnlessEmpty(json, field, text));
    }

    private static void putUnlessEmpty(ObjectNode json, String field, String text) {
        if (!text.isEmpty()) {
            json.put(field, text);
        }
    }

    private String stages() {
        if (beginning.stages().isEmpty()) {
            return "";
        }
        var stages = new ArrayList<>(
                beginning.stages().stream().map(part -> Json.text(stage(part))).toList());
        var shared = new LinkedHashSet<String>();
        beginning.stages().forEach(part -> shared.addAll(part.shared()));
        if (!shared.isEmpty()) {
            var mix = NODES.objectNode().put("id", "mix");
            shared.forEach(mix.putArray("ingredients")::add);
            stages.add(Json.text(mix));
        }
        return ",\n  \"stages\": " + list(stages);
    }

    private static ObjectNode stage(Part part) {
        var json = NODES.objectNode().put("id", Slug.of(part.name())).put("title", part.name());
        part.members().forEach(json.putArray("ingredients")::add);
        if (!part.least().isEmpty() || !part.most().isEmpty()) {
            var share = json.putObject("share");
            putUnlessEmpty(share, "min", part.least());
            putUnlessEmpty(share, "max", part.most());
        }
        return json;
    }
}
