package panade.harden;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.StreamSupport;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;
import tools.jackson.databind.JsonNode;

/** The least cost of a drawn kitchen by ojAlgo. */
final class Reference {
    /** What a rule that asks for use takes for it where no other says. */
    private static final double TRACE = 1e-4;

    private final DrawnKitchen kitchen;
    private final Reading reading;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final Variable[] shares;
    private final Map<String, Variable> mayBe = new LinkedHashMap<>();
    private final Map<String, Variable> mustBe = new LinkedHashMap<>();

    private Reference(DrawnKitchen kitchen, double ease) {
        this.kitchen = kitchen;
        this.reading = new Reading(kitchen);
        var goods = reading.goods();
        this.shares = new Variable[goods.size()];
        var batch = model.newExpression("batch").level(1);
        for (int j = 0; j < shares.length; j++) {
            shares[j] = model.newVariable("x" + j).lower(0).weight(goods.get(j).price());
            batch.set(shares[j], 1);
        }
        int number = 0;
        for (var row : reading.rows()) {
            double scale = 0;
            for (double entry : row.form()) {
                scale = Math.max(scale, Math.abs(entry));
            }
            var expression = model.newExpression("row " + number++);
            double unit = scale > 0 ? 1 / scale : 1;
            for (int j = 0; j < shares.length; j++) {
                expression.set(shares[j], row.form()[j] * unit);
            }
            if (row.least() > Double.NEGATIVE_INFINITY) {
                expression.lower(row.least() * unit - ease);
            } else {
                expression.upper(row.most() * unit + ease);
            }
        }
        kitchen.brief().path("rules").forEach(this::rule);
        if (kitchen.brief().has("maxIngredients")) {
            var count = model.newExpression("ingredients")
                    .upper(kitchen.brief().path("maxIngredients").asDouble());
            goods.stream().map(Reading.Goods::id).distinct().forEach(id -> count.set(mayBe(id), 1));
        }
    }

    /**
     * The least cost of a kilogram; empty where there is no blend.
     *
     * @param ease by how much each row is eased, of its largest entry
     */
    static OptionalDouble leastCost(DrawnKitchen kitchen, double ease) {
        var result = new Reference(kitchen, ease).model.minimise();
        return result.getState().isOptimal() ? OptionalDouble.of(result.getValue()) : OptionalDouble.empty();
    }

    private List<String> bought() {
        return reading.goods().stream().map(Reading.Goods::id).distinct().toList();
    }

    private Variable mayBe(String id) {
        return mayBe.computeIfAbsent(id, name -> {
            var binary = model.newVariable("may " + name).binary();
            var link = total("may be " + name, name).set(binary, -1);
            link.upper(0);
            return binary;
        });
    }

    private Variable mustBe(String id) {
        return mustBe.computeIfAbsent(id, name -> {
            var binary = model.newVariable("must " + name).binary();
            total("must be " + name, name).set(binary, -TRACE).lower(0);
            total("is " + name, name).set(binary, -floor(name)).lower(0);
            return binary;
        });
    }

    private double floor(String id) {
        return StreamSupport.stream(kitchen.brief().path("rules").spliterator(), false)
                .filter(rule -> rule.path("whenUsed").asString("").equals(id))
                .mapToDouble(rule -> percent(rule.path("min")))
                .max()
                .orElse(TRACE);
    }

    static double percent(JsonNode text) {
        return Double.parseDouble(text.asString().replace(" %", "")) / 100;
    }

    private org.ojalgo.optimisation.Expression total(String name, String id) {
        var total = model.newExpression(name);
        var goods = reading.goods();
        for (int j = 0; j < shares.length; j++) {
            if (goods.get(j).id().equals(id)) {
                total.set(Objects.requireNonNull(shares[j]), 1);
            }
        }
        return total;
    }

    private void rule(JsonNode rule) {
        if (rule.has("whenUsed")) {
            var id = rule.path("whenUsed").asString();
            if (bought().contains(id)) {
                total("floor " + id, id)
                        .set(mayBe(id), -percent(rule.path("min")))
                        .lower(0);
            }
        } else if (rule.has("choose")) {
            var kind = rule.path("choose").path("kind").asString();
            var all = bought().stream()
                    .filter(id -> StreamSupport.stream(
                                    reading.ingredient(id).path("kinds").spliterator(), false)
                            .anyMatch(each -> each.asString().equals(kind)))
                    .toList();
            var count = model.newExpression("choose " + kind);
            all.forEach(id -> count.set(rule.has("min") ? mustBe(id) : mayBe(id), 1));
            if (rule.has("min")) {
                count.lower(1);
            } else {
                count.upper(1);
            }
        } else if (rule.has("if")) {
            follows(rule.path("if").asString(), rule.path("then").asString());
        } else {
            var count = model.newExpression("never").upper(1);
            rule.path("neverTogether").forEach(id -> {
                if (bought().contains(id.asString())) {
                    count.set(mayBe(id.asString()), 1);
                }
            });
        }
    }

    private void follows(String one, String other) {
        if (bought().contains(one)) {
            var follows = model.newExpression("follows").upper(0).set(mayBe(one), 1);
            if (bought().contains(other)) {
                follows.set(mustBe(other), -1);
            }
        }
    }
}
