package panade.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import panade.bench.PlannedBench;
import panade.bench.PlannedSheet;
import panade.buy.MultiPeriodPlan;
import panade.buy.PlanSearch;
import panade.buy.PurchaseAnswers;
import panade.buy.PurchasePlan;
import panade.domain.Blend;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes what to order. */
public final class BuyExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private BuyExport() {}

    /**
     * The result of {@code buy}.
     *
     * @param bench sheets to weigh the plan's blends by; empty where none were asked for
     */
    public static String json(PurchaseAnswers answers, PlannedBench bench) {
        var result = NODES.objectNode();
        addStatus(result, answers.adapting());
        var searches = NODES.objectNode();
        searches.set("frozen", addStatus(NODES.objectNode(), answers.keeping()));
        searches.set("adapted", addStatus(NODES.objectNode(), answers.adapting()));
        searches.set("leastCash", addStatus(NODES.objectNode(), answers.saving()));
        result.set("searches", searches);
        JsonExport.put(result, "exactWeights", answers.exact());
        result.set("frozen", plan(answers.frozen()));
        result.set("adapted", plan(answers.adapted()));
        result.set("leastCash", plan(answers.leastCash()));
        var small = NODES.arrayNode();
        answers.smallOrders().forEach(order -> {
            var node = NODES.objectNode()
                    .put("period", order.period())
                    .put("supplier", order.terms().supplier());
            JsonExport.put(node, "goods", order.goods());
            JsonExport.put(node, "missing", order.missing());
            small.add(node);
        });
        result.set("smallOrders", small);
        if (!bench.sheets().isEmpty()) {
            addBench(result, bench);
        }
        return RemarkExport.print(result, answers.remarks());
    }

    private static void addBench(ObjectNode result, PlannedBench bench) {
        var sheets = NODES.arrayNode();
        bench.sheets().forEach(planned -> sheets.add(sheet(planned)));
        result.set("sheets", sheets);
        var shortages = NODES.arrayNode();
        bench.shortages().forEach(missing -> {
            var node = NODES.objectNode().put("period", missing.period()).put("ingredient", missing.ingredient());
            JsonExport.put(node, "kilograms", missing.kilograms());
            shortages.add(node);
        });
        result.set("shortages", shortages);
    }

    private static ObjectNode sheet(PlannedSheet planned) {
        var node = NODES.objectNode()
                .put("period", planned.period())
                .put("product", planned.sheet().brief().title())
                .put("batch", planned.sheet().brief().batch().text());
        JsonExport.put(node, "batches", planned.batches());
        node.setAll(BatchExport.node(planned.sheet()));
        return node;
    }

    private static ObjectNode addStatus(ObjectNode node, PlanSearch search) {
        if (search instanceof PlanSearch.Impossible impossible) {
            return node.put("status", "infeasible").put("proved", impossible.proved());
        }
        return search instanceof PlanSearch.Undecided undecided
                ? node.put("status", "undecided").put("reason", undecided.reason())
                : node.put("status", "planned");
    }

    /** The order lists of the plan whose blends adapt, one row a line. */
    public static String csv(PurchaseAnswers answers) {
        var text = new StringBuilder();
        try (var csv = CSVFormat.RFC4180.print(text)) {
            csv.printRecord("period", "supplier", "ingredient", "packs", "pack", "kilograms", "money");
            for (var plan : answers.adapted().map(MultiPeriodPlan::periods).orElse(List.of())) {
                print(plan, csv);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void print(PurchasePlan plan, CSVPrinter csv) throws IOException {
        for (var line : plan.lines()) {
            var pack = line.offer().pack();
            csv.printRecord(
                    GuardedText.of(plan.period()),
                    GuardedText.of(line.offer().supplier()),
                    GuardedText.of(line.offer().ingredient()),
                    pack == null ? "" : JsonExport.number(line.packs()).toPlainString(),
                    pack == null ? "" : GuardedText.of(pack.text()),
                    JsonExport.number(line.kilograms()).toPlainString(),
                    JsonExport.number(line.money()).toPlainString());
        }
    }

    private static JsonNode plan(Optional<MultiPeriodPlan> found) {
        if (found.isEmpty()) {
            return NODES.nullNode();
        }
        var plan = found.get();
        var node = NODES.objectNode();
        JsonExport.put(node, "cash", plan.cash());
        JsonExport.put(node, "goodsMoney", plan.goodsMoney());
        JsonExport.put(node, "deliveryAndStorage", plan.deliveryAndStorage());
        JsonExport.put(node, "wasOnShelf", plan.wasOnShelf());
        JsonExport.put(node, "inBowl", plan.inBowl());
        JsonExport.put(node, "wasted", plan.wasted());
        JsonExport.put(node, "onShelf", plan.onShelf());
        JsonExport.put(node, "gap", plan.gap().orElse(null));
        node.put("finished", plan.finished());
        var periods = NODES.arrayNode();
        plan.periods().forEach(period -> periods.add(period(period)));
        node.set("periods", periods);
        return node;
    }

    private static JsonNode period(PurchasePlan plan) {
        var node = NODES.objectNode().put("period", plan.period());
        JsonExport.put(node, "cash", plan.cash());
        JsonExport.put(node, "storage", plan.storage());
        node.set("orders", orders(plan));
        node.set("lines", lines(plan));
        node.set("store", store(plan));
        var blends = NODES.arrayNode();
        plan.blends().forEach(blend -> blends.add(blend(blend)));
        node.set("blends", blends);
        return node;
    }

    private static ArrayNode orders(PurchasePlan plan) {
        var orders = NODES.arrayNode();
        plan.orders().forEach(order -> {
            var node = NODES.objectNode().put("supplier", order.terms().supplier());
            JsonExport.put(node, "goods", order.goods());
            JsonExport.put(node, "delivery", order.terms().delivery());
            JsonExport.put(node, "minimumOrder", order.terms().minimumOrder());
            node.put("leadDays", order.terms().leadDays());
            node.put("placed", order.placed());
            orders.add(node);
        });
        return orders;
    }

    private static ArrayNode lines(PurchasePlan plan) {
        var lines = NODES.arrayNode();
        plan.lines().forEach(line -> {
            var pack = line.offer().pack();
            var node = NODES.objectNode()
                    .put("supplier", line.offer().supplier())
                    .put("ingredient", line.offer().ingredient())
                    .put("pack", pack == null ? null : pack.text());
            JsonExport.put(node, "packs", pack == null ? null : line.packs());
            JsonExport.put(node, "kilograms", line.kilograms());
            JsonExport.put(node, "money", line.money());
            lines.add(node);
        });
        return lines;
    }

    private static ArrayNode store(PurchasePlan plan) {
        var store = NODES.arrayNode();
        plan.store().forEach(stock -> {
            var node = NODES.objectNode().put("ingredient", stock.ingredient());
            JsonExport.put(node, "before", stock.before());
            JsonExport.put(node, "bought", stock.bought());
            JsonExport.put(node, "used", stock.used());
            JsonExport.put(node, "wasted", stock.wasted());
            JsonExport.put(node, "left", stock.left());
            store.add(node);
        });
        return store;
    }

    private static ArrayNode blend(Blend blend) {
        var lines = NODES.arrayNode();
        blend.lines().forEach(line -> {
            var node = NODES.objectNode()
                    .put("ingredient", line.use().ingredient())
                    .put("stage", line.use().stage());
            JsonExport.put(node, "share", line.share());
            lines.add(node);
        });
        return lines;
    }
}
