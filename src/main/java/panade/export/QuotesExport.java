package panade.export;

import org.jspecify.annotations.Nullable;
import panade.study.PriceComparison;
import panade.study.PriceComparison.Single;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Writes a comparison of price lists. */
public final class QuotesExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private QuotesExport() {}

    /** The result of {@code quotes}. */
    public static String of(PriceComparison comparison) {
        var result = NODES.objectNode();
        var lists = NODES.arrayNode();
        comparison.lists().forEach(lists::add);
        result.set("lists", lists);
        var best = NODES.arrayNode();
        comparison.best().forEach(outcome -> best.add(JsonExport.node(outcome)));
        result.set("best", best);
        result.set("costOf", costs(comparison));
        result.set("regret", single(comparison.regret(), "worstPerKg"));
        result.set("average", single(comparison.average(), "perKg"));
        result.set("pooled", JsonExport.node(comparison.pooled()));
        return JsonExport.print(result);
    }

    private static ArrayNode costs(PriceComparison comparison) {
        var rows = NODES.arrayNode();
        comparison.costOf().forEach(costs -> {
            var row = NODES.arrayNode();
            costs.forEach(cost -> {
                if (cost.isPresent()) {
                    row.add(JsonExport.number(cost.get()));
                } else {
                    row.addNull();
                }
            });
            rows.add(row);
        });
        return rows;
    }

    private static JsonNode single(@Nullable Single single, String name) {
        if (single == null) {
            return NODES.nullNode();
        }
        var node = NODES.objectNode();
        JsonExport.put(node, name, single.perKg());
        var costs = NODES.arrayNode();
        single.costs().forEach(cost -> costs.add(JsonExport.number(cost)));
        node.set("costs", costs);
        node.set("blend", TraceExport.lines(single.blend()));
        return node;
    }
}
