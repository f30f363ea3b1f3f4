package panade.export;

import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.vary.CompositionStudy;
import panade.vary.CompositionStudy.Broken;
import panade.vary.CompositionStudy.Costs;
import panade.vary.PriceStudy;
import panade.vary.PriceStudy.Kept;
import panade.vary.PriceStudy.Level;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes a study of prices that vary. */
public final class StudyExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private StudyExport() {}

    /**
     * The result of {@code study}.
     *
     * @param compositions the same with what ingredients hold drawn too; null where that was not done
     */
    public static String of(PriceStudy study, @Nullable CompositionStudy compositions) {
        var result = NODES.objectNode();
        result.put("draws", study.draws());
        result.put("seed", study.seed());
        result.set("cost", cost(study));
        putTarget(result, study.target());
        result.set("kept", kept(study.kept()));
        result.set("safest", kept(study.safest()).put("compared", study.compared()));
        result.set("prices", prices(study));
        result.set("ingredients", ingredients(study));
        result.set("bounds", bounds(study));
        result.set(
                "certificate",
                NODES.objectNode()
                        .put("proved", study.proof().proved())
                        .put("off", study.proof().off()));
        if (compositions != null) {
            result.set("compositions", compositions(compositions));
        }
        return RemarkExport.print(result, study.today().asked().remarks());
    }

    private static void putTarget(ObjectNode result, PriceStudy.@Nullable Target target) {
        if (target == null) {
            result.putNull("target");
            return;
        }
        var node = NODES.objectNode();
        JsonExport.put(node, "perKg", target.perKg());
        result.set("target", node.put("metIn", target.draws()));
    }

    private static ObjectNode cost(PriceStudy study) {
        var node = NODES.objectNode();
        JsonExport.put(node, "todayPerKg", study.today().blend().costPerKg());
        JsonExport.put(node, "meanPerKg", study.mean());
        JsonExport.put(node, "deviationPerKg", study.deviation());
        JsonExport.put(node, "lowestPerKg", study.lowest());
        JsonExport.put(node, "highestPerKg", study.highest());
        node.set("levels", levels(study.levels()));
        return node;
    }

    private static ArrayNode levels(List<Level> levels) {
        var nodes = NODES.arrayNode();
        levels.forEach(level -> {
            var each = NODES.objectNode();
            JsonExport.put(each, "share", level.share());
            JsonExport.put(each, "perKg", level.perKg());
            nodes.add(each);
        });
        return nodes;
    }

    private static ObjectNode compositions(CompositionStudy study) {
        var node = NODES.objectNode();
        node.put("draws", study.draws());
        node.put("values", study.values());
        node.put("proved", study.draws());
        node.put("noBlend", study.noBlend());
        node.put("keptMeets", study.keptMeets());
        putTarget(node, study.target());
        var broken = NODES.arrayNode();
        study.broken().forEach(bound -> broken.add(broken(bound)));
        node.set("broken", broken);
        var costs = study.costs();
        if (costs == null) {
            node.putNull("cost");
        } else {
            node.set("cost", cost(costs));
        }
        return node;
    }

    private static ObjectNode broken(Broken bound) {
        var node = NODES.objectNode();
        node.put("name", bound.name());
        node.put("path", bound.path());
        node.put("binding", JsonExport.word(bound.side()));
        node.put("draws", bound.draws());
        JsonExport.put(node, "asks", bound.asks());
        JsonExport.put(node, "oneInTwenty", bound.oneInTwenty());
        node.put("unit", bound.unit().symbol());
        return node;
    }

    private static ObjectNode cost(Costs costs) {
        var node = NODES.objectNode();
        JsonExport.put(node, "meanPerKg", costs.mean());
        JsonExport.put(node, "lowestPerKg", costs.lowest());
        JsonExport.put(node, "highestPerKg", costs.highest());
        node.set("levels", levels(costs.levels()));
        return node;
    }

    private static ObjectNode kept(Kept kept) {
        var node = NODES.objectNode();
        JsonExport.put(node, "meanAbovePerKg", kept.meanPerKg());
        JsonExport.put(node, "worstAbovePerKg", kept.worstPerKg());
        node.set("blend", JsonExport.lines(kept.blend()));
        return node;
    }

    private static ArrayNode prices(PriceStudy study) {
        var prices = NODES.arrayNode();
        study.weights().forEach(weight -> {
            var node = NODES.objectNode();
            node.put("ingredient", weight.offer().ingredient());
            node.put("supplier", weight.offer().supplier());
            JsonExport.put(node, "partOfVariance", weight.part());
            prices.add(node);
        });
        return prices;
    }

    private static ArrayNode ingredients(PriceStudy study) {
        var ingredients = NODES.arrayNode();
        study.uses().forEach(use -> {
            var node = NODES.objectNode();
            node.put("ingredient", use.ingredient());
            node.put("draws", use.draws());
            JsonExport.put(node, "meanShare", use.meanShare());
            ingredients.add(node);
        });
        return ingredients;
    }

    private static ArrayNode bounds(PriceStudy study) {
        var bounds = NODES.arrayNode();
        study.touches()
                .forEach(touch -> bounds.add(NODES.objectNode()
                        .put("name", touch.name())
                        .put("path", touch.path())
                        .put("binding", JsonExport.word(touch.side()))
                        .put("draws", touch.draws())));
        return bounds;
    }
}
