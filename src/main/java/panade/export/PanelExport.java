package panade.export;

import java.util.List;
import java.util.Locale;
import panade.domain.origin.Remark;
import panade.label.Allergens.Carried;
import panade.label.Caution;
import panade.label.Compliance;
import panade.label.Panel;
import panade.label.Panel.Row;
import panade.label.Statement;
import panade.label.nutrition.ProteinQuality.Score;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes the draft of a label. */
public final class PanelExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private PanelExport() {}

    /**
     * The result of {@code panel}.
     *
     * @param remarks on the brief that the blend was made from
     */
    public static String of(Panel panel, List<Remark> remarks) {
        return RemarkExport.print(node(panel), remarks);
    }

    /** The label as a part of a larger result. */
    static ObjectNode node(Panel panel) {
        var result = NODES.objectNode();
        result.put("draft", true);
        result.put("format", panel.request().format().name().toLowerCase(Locale.ROOT));
        result.put("serving", panel.serving() == null ? null : panel.servingGrams() + " g");
        result.put("servings", panel.servings().isEmpty() ? null : panel.servings());
        result.set("rows", list(panel.rows().stream().map(PanelExport::row).toList()));
        result.set("statement", statement(panel.statement()));
        var allergens = NODES.objectNode().put("contains", panel.allergens().contains());
        allergens.set("named", carried(panel.allergens().named()));
        allergens.set("others", carried(panel.allergens().others()));
        allergens.set("unknownFor", LabelExport.texts(panel.allergens().unknownFor()));
        allergens.set(
                "unclear",
                list(panel.allergens().strange().stream()
                        .map(each -> NODES.objectNode()
                                .put("ingredient", each.ingredient())
                                .put("word", each.word()))
                        .toList()));
        result.set("allergens", allergens);
        result.set(
                "proteinQuality",
                list(List.of(
                        score(panel.protein().pdcaas()), score(panel.protein().diaas()))));
        result.set(
                "compliance",
                list(panel.compliance().stream().map(PanelExport::compliance).toList()));
        result.set("notes", LabelExport.texts(panel.notes()));
        result.set("stillNeeded", sourced(panel.stillNeeded()));
        result.set("cautions", sourced(panel.cautions()));
        return result;
    }

    private static ArrayNode sourced(List<Caution> cautions) {
        return list(cautions.stream()
                .map(caution -> NODES.objectNode().put("text", caution.text()).put("source", caution.source()))
                .toList());
    }

    private static ObjectNode row(Row row) {
        var node = NODES.objectNode();
        node.put("id", row.id());
        node.put("name", row.name());
        node.put("level", row.level());
        node.put("unit", row.unit());
        JsonExport.put(node, "per100g", row.per100g());
        node.put("per100gText", row.per100gText());
        JsonExport.put(node, "perServing", row.perServing());
        node.put("perServingText", row.perServingText());
        node.put("percent", row.percent().isEmpty() ? null : row.percent());
        node.set("unknownFor", LabelExport.texts(row.unknownFor()));
        return node;
    }

    private static ObjectNode statement(Statement statement) {
        var node = NODES.objectNode().put("text", statement.text());
        node.set(
                "names",
                list(statement.names().stream()
                        .map(name -> {
                            var each = NODES.objectNode().put("label", name.label());
                            JsonExport.put(each, "share", name.share());
                            each.set("ingredients", LabelExport.texts(name.ingredients()));
                            return each;
                        })
                        .toList()));
        return node;
    }

    private static ArrayNode carried(List<Carried> allergens) {
        return list(allergens.stream()
                .map(each -> {
                    var node = NODES.objectNode().put("name", each.name());
                    node.set("from", LabelExport.texts(each.carriers()));
                    return node;
                })
                .toList());
    }

    private static ObjectNode score(Score score) {
        var node = NODES.objectNode().put("name", score.name());
        JsonExport.put(node, "score", score.cut());
        JsonExport.put(node, "uncut", score.value());
        node.put("limiting", score.limiting().isEmpty() ? null : score.limiting());
        JsonExport.put(node, "atLeast", score.atLeast());
        node.set(
                "missing",
                list(score.missing().stream()
                        .map(missing -> {
                            var each = NODES.objectNode().put("ingredient", missing.ingredient());
                            each.set("values", LabelExport.texts(missing.values()));
                            return each;
                        })
                        .toList()));
        node.put("pattern", score.pattern().source());
        return node;
    }

    private static ObjectNode compliance(Compliance line) {
        var node =
                NODES.objectNode().put("id", line.id()).put("name", line.name()).put("declared", line.declared());
        JsonExport.put(node, "low", line.low());
        JsonExport.put(node, "high", line.high());
        JsonExport.put(node, "expected", line.expected());
        node.put("spread", line.spread());
        node.put("room", line.room());
        node.set("unknownFor", LabelExport.texts(line.unknownFor()));
        return node.put("source", line.source());
    }

    private static ArrayNode list(List<ObjectNode> nodes) {
        return NODES.arrayNode().addAll(nodes);
    }
}
