package panade.export;

import org.jspecify.annotations.Nullable;
import panade.cost.FullCost;
import panade.cost.Ladder;
import panade.cost.OptionalSections.BreakEven;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes costs beside that of the ingredients. */
final class CostExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private CostExport() {}

    static ObjectNode of(FullCost cost, @Nullable BreakEven breakEven) {
        var node = NODES.objectNode();
        JsonExport.put(node, "ingredientsPerKg", cost.ingredients());
        JsonExport.put(node, "packedIngredientsPerKg", cost.packedIngredients());
        JsonExport.put(node, "labourPerKg", cost.labour());
        JsonExport.put(node, "packagingPerKg", cost.packaging());
        JsonExport.put(node, "overheadPerKg", cost.overhead());
        JsonExport.put(node, "packedPerKg", cost.packed());
        JsonExport.put(node, "yield", cost.cookedPart());
        JsonExport.put(node, "cookedPerKg", cost.cooked());
        JsonExport.put(node, "perServing", cost.perServing());
        var sizes = NODES.arrayNode();
        cost.sizes().forEach(size -> {
            var one = NODES.objectNode().put("batch", size.batch().text());
            JsonExport.put(one, "packedPerKg", size.packed());
            sizes.add(one);
        });
        node.set("sizes", sizes);
        if (breakEven != null) {
            JsonExport.put(
                    node, "breakEvenKgMonthly", cost.breakEven(breakEven.fixedMonthly(), breakEven.pricePerKg()));
        }
        return node;
    }

    static ArrayNode of(Ladder ladder) {
        var rungs = NODES.arrayNode();
        ladder.rungs().forEach(rung -> {
            var node = NODES.objectNode().put("names", rung.names());
            JsonExport.put(node, "costPerKg", rung.costPerKg().found().orElse(null));
            rungs.add(rung.costPerKg().fold(cost -> node, () -> node, reason -> node.put("undecided", reason)));
        });
        return rungs;
    }
}
