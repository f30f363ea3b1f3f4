package panade.export;

import java.math.BigDecimal;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.cost.FullCost;
import panade.cost.OptionalSections;
import panade.domain.Blend;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.ShadowPrice;
import panade.model.Unproved;
import panade.plan.Choice;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.plan.Outcome.Undecided;
import panade.quantity.Decimal;
import panade.quantity.Unit;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes results as JSON; every figure is exact until it is rounded here, once, to {@value #DIGITS} significant digits.
 */
public final class JsonExport {
    private static final int DIGITS = 15;

    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private JsonExport() {}

    /** The result of {@code blend} when there is one, with what was asked for beside it. */
    public static String of(Blended outcome, OptionalSections asides) {
        var result = node(outcome);
        if (FullCost.isStated(outcome.brief())) {
            var full = FullCost.of(outcome.brief(), outcome.blend());
            result.set("fullCost", CostExport.of(full, asides.breakEven()));
        }
        var ladder = asides.ladder();
        if (ladder != null) {
            result.set("ladder", CostExport.of(ladder));
        }
        var label = asides.label();
        if (label != null) {
            var node = NODES.objectNode();
            put(node, "freePerKg", label.freePerKg());
            put(node, "extraPerKg", label.extraPerKg());
            result.set("sameLabel", node);
        }
        return RemarkExport.print(result, outcome.asked().remarks());
    }

    /** Any outcome as part of a larger result. */
    static ObjectNode node(Outcome outcome) {
        if (outcome instanceof Blended blended) {
            return node(blended);
        }
        return outcome instanceof Conflicted conflicted
                ? ConflictExport.of(conflicted)
                : undecided(((Undecided) outcome).reason());
    }

    private static ObjectNode node(Blended outcome) {
        var result = NODES.objectNode();
        result.put("status", "optimal");
        result.put("unique", outcome.explanation().unique());
        result.set("cost", cost(outcome));
        result.set("blend", blend(outcome));
        result.set("bounds", bounds(outcome));
        result.set("unused", unused(outcome));
        result.set("properties", properties(outcome));
        result.set("prices", prices(outcome));
        result.set("room", NearbyExport.room(outcome.room()));
        result.set("propertyRoom", NearbyExport.propertyRoom(outcome.room()));
        result.set("alternatives", NearbyExport.alternatives(outcome));
        result.set("certificate", certificate(outcome));
        return result;
    }

    /** The result when no blend meets the brief. */
    public static String of(Conflicted outcome) {
        return RemarkExport.print(ConflictExport.of(outcome), outcome.brief().remarks());
    }

    /** The result when nothing could be proved. */
    public static String of(Undecided outcome) {
        return RemarkExport.print(undecided(outcome.reason()), outcome.brief().remarks());
    }

    /** The result of a command that could not prove what it was asked. */
    public static String undecided(Unproved open) {
        return undecided(open.reason()).toPrettyString() + "\n";
    }

    private static ObjectNode undecided(String reason) {
        return NODES.objectNode().put("status", "undecided").put("reason", reason);
    }

    private static ObjectNode certificate(Blended outcome) {
        var proof = outcome.proof().proof();
        var node = NODES.objectNode()
                .put("primal", proof.isFeasible() ? "exact" : "failed")
                .put("dual", proof.isBounded() ? "exact" : "failed");
        var choice = outcome.choice();
        put(
                node,
                "gap",
                choice == null ? proof.gap() : choice.gap(outcome.blend().costPerKg()));
        node.put("engine", proof.engine());
        if (choice != null) {
            node.set("choice", choice(choice));
        }
        return node;
    }

    private static ObjectNode choice(Choice choice) {
        var node = NODES.objectNode().put("engine", choice.engine()).put("proved", choice.closed());
        put(node, "boundPerKg", choice.bound());
        node.put("looked", choice.looked());
        put(node, "searchBoundPerKg", choice.claim());
        return node;
    }

    private static ObjectNode cost(Blended outcome) {
        var perKg = outcome.blend().costPerKg();
        var cost = NODES.objectNode();
        cost.put(
                "currency",
                outcome.brief().currency().isEmpty() ? null : outcome.brief().currency());
        put(cost, "perKg", perKg);
        put(cost, "perLb", perKg.multiply(Unit.POUND.factor()));
        put(
                cost,
                "batch",
                outcome.blend().rawCostPerKg().multiply(outcome.brief().batch().base()));
        cost.put("basis", outcome.brief().practice().perCooked() ? "cooked" : "raw");
        cost.put("perKgExact", perKg.toString().replace(" ", ""));
        return cost;
    }

    private static ArrayNode blend(Blended outcome) {
        var lines = NODES.arrayNode();
        var total = outcome.blend().rawCostPerKg();
        for (var line : outcome.blend().lines()) {
            lines.add(line(outcome, line, total));
        }
        return lines;
    }

    private static ObjectNode line(Blended outcome, Blend.Line line, BigFraction total) {
        var batch = outcome.brief().batch().base();
        var node = NODES.objectNode();
        node.put("ingredient", line.use().ingredient());
        node.put("stage", line.use().stage());
        node.put("supplier", line.offer().supplier());
        put(node, "share", line.share());
        put(node, "grams", line.share().multiply(batch).multiply(1000));
        put(node, "cost", line.costPerKg().multiply(batch));
        put(
                node,
                "costShare",
                total.signum() == 0 ? BigFraction.ZERO : line.costPerKg().divide(total));
        return node;
    }

    private static ArrayNode bounds(Blended outcome) {
        var bounds = NODES.arrayNode();
        outcome.explanation().limits().forEach(limit -> bounds.add(bound(limit)));
        return bounds;
    }

    private static ObjectNode bound(Limit limit) {
        var node = NODES.objectNode();
        node.put("name", limit.name());
        node.put("kind", word(limit.kind()));
        node.put("path", limit.path());
        node.put("file", limit.origin().file());
        node.put("unit", limit.unit().symbol());
        put(node, "value", limit.value());
        put(node, "min", limit.min());
        put(node, "max", limit.max());
        node.put("binding", limit.touch() == null ? null : word(limit.touch()));
        node.set("shadowPrice", price(limit.price()));
        return node;
    }

    /** A constant as results spell it, in small letters. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static ObjectNode price(@Nullable ShadowPrice price) {
        var node = NODES.objectNode();
        if (price == null) {
            return node.put("whenRaised", 0)
                    .put("whenLowered", 0)
                    .putNull("from")
                    .putNull("to");
        }
        put(node, "whenRaised", price.whenRaised());
        put(node, "whenLowered", price.whenLowered());
        put(node, "from", price.from());
        put(node, "to", price.to());
        if (price.jumpRaised() != null) {
            put(node, "jumpWhenRaised", price.jumpRaised());
        }
        if (price.jumpLowered() != null) {
            put(node, "jumpWhenLowered", price.jumpLowered());
        }
        return node;
    }

    private static ArrayNode unused(Blended outcome) {
        var unused = NODES.arrayNode();
        outcome.explanation().unused().forEach(each -> {
            var node = NODES.objectNode();
            node.put("ingredient", each.ingredient());
            var entry = each.entry();
            put(node, "entersAt", entry == null ? null : entry.at());
            put(node, "share", entry == null ? null : entry.share());
            put(node, "savingPerKg", entry == null ? null : entry.saving());
            node.put("worthwhile", entry != null && entry.worthwhile());
            put(node, "pricePerKg", each.pricePerKg());
            node.put("supplier", each.supplier());
            unused.add(node);
        });
        return unused;
    }

    private static ArrayNode prices(Blended outcome) {
        var prices = NODES.arrayNode();
        outcome.explanation().used().forEach(each -> {
            var node = NODES.objectNode();
            node.put("ingredient", each.ingredient());
            node.put("supplier", each.supplier());
            put(node, "pricePerKg", each.pricePerKg());
            put(node, "from", each.from());
            put(node, "to", each.to());
            prices.add(node);
        });
        return prices;
    }

    private static ArrayNode properties(Blended outcome) {
        var properties = NODES.arrayNode();
        outcome.explanation().properties().forEach(each -> {
            var node = NODES.objectNode();
            node.put("property", each.property());
            put(node, "value", each.value());
            node.put("unit", each.unit().symbol());
            properties.add(node);
        });
        return properties;
    }

    static void put(ObjectNode node, String name, @Nullable BigFraction value) {
        if (value == null) {
            node.putNull(name);
        } else {
            node.put(name, number(value));
        }
    }

    static BigDecimal number(BigFraction value) {
        return Decimal.significant(value, DIGITS);
    }

    static String print(ObjectNode node) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
    }
}
