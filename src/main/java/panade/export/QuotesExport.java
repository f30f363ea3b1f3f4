package panade.export;

import java.util.List;
import panade.certify.Decision;
import panade.cost.LabelStudy;
import panade.domain.origin.Remark;
import panade.plan.Outcome.Blended;
import panade.quotes.PriceComparison;
import panade.quotes.PriceComparison.Single;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Writes a comparison of price lists. */
public final class QuotesExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private QuotesExport() {}

    /**
     * The result of {@code quotes}.
     *
     * @param remarks on the brief under any of the lists
     */
    public static String of(PriceComparison comparison, List<Remark> remarks) {
        var result = NODES.objectNode();
        var lists = NODES.arrayNode();
        comparison.lists().forEach(lists::add);
        result.set("lists", lists);
        var best = NODES.arrayNode();
        comparison.best().forEach(outcome -> best.add(JsonExport.node(outcome)));
        result.set("best", best);
        result.set("labels", labels(comparison));
        result.set("costOf", costs(comparison));
        result.set("regret", single(comparison.regret(), "worstPerKg"));
        result.set("average", single(comparison.average(), "perKg"));
        result.set("pooled", JsonExport.node(comparison.pooled()));
        return RemarkExport.print(result, remarks);
    }

    /** What switching from the first list's blend to each list's own does to the label; null where one is missing. */
    private static ArrayNode labels(PriceComparison comparison) {
        var labels = NODES.arrayNode();
        var first = comparison.best().get(0);
        for (var each : comparison.best()) {
            if (first instanceof Blended before && each instanceof Blended after) {
                labels.add(LabelExport.of(LabelStudy.between(before, after)));
            } else {
                labels.addNull();
            }
        }
        return labels;
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

    private static JsonNode single(Decision<Single> decision, String name) {
        return decision.fold(
                single -> single(single, name),
                NODES::nullNode,
                reason -> NODES.objectNode().put("status", "undecided").put("reason", reason));
    }

    private static JsonNode single(Single single, String name) {
        var node = NODES.objectNode();
        JsonExport.put(node, name, single.perKg());
        var costs = NODES.arrayNode();
        single.costs().forEach(cost -> costs.add(JsonExport.number(cost)));
        node.set("costs", costs);
        node.set("blend", JsonExport.lines(single.blend()));
        return node;
    }
}
