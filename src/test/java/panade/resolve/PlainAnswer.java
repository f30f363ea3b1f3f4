package panade.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.resolve.PlainReading.Claimed;
import panade.resolve.PlainSimplex.Row;
import tools.jackson.databind.JsonNode;

/** What a kitchen's documents come to, found by every choice that its rules leave, each solved by the plain simplex. */
final class PlainAnswer {
    private static final BigFraction LEAST_USE = BigFraction.of(1, 10_000);

    private final TypedKitchen kitchen;
    private final PlainReading reading;
    private final List<Row> rows = new ArrayList<>();

    /** How an ingredient is used: not at all, any amount, or at least so much as counts. */
    private enum Use {
        NONE,
        ANY,
        AMPLE
    }

    PlainAnswer(TypedKitchen kitchen) {
        this.kitchen = kitchen;
        this.reading = new PlainReading(kitchen);
        addEqual(reading.form(v -> BigFraction.ONE), BigFraction.ONE);
        reading.rows().forEach(row -> rows.addAll(asRows(row)));
    }

    PlainReading reading() {
        return reading;
    }

    List<Row> rows() {
        return List.copyOf(rows);
    }

    private void addEqual(List<BigFraction> form, BigFraction right) {
        rows.add(new Row(form, right));
        rows.add(new Row(negated(form), right.negate()));
    }

    private static List<Row> asRows(Claimed row) {
        return row.sign() > 0
                ? List.of(new Row(negated(row.form()), row.right().negate()))
                : List.of(new Row(row.form(), row.right()));
    }

    static List<BigFraction> negated(List<BigFraction> form) {
        return form.stream().map(BigFraction::negate).toList();
    }

    /** The least cost per kilogram, cooked where the brief says so; empty when there is no blend. */
    Optional<BigFraction> least() {
        return leastWith(List.of());
    }

    /** The same with rows more. */
    Optional<BigFraction> leastWith(List<Row> more) {
        var costs = new ArrayList<BigFraction>();
        for (var choice : choices()) {
            var all = new ArrayList<>(rows);
            all.addAll(choice);
            all.addAll(more);
            cost(all).ifPresent(costs::add);
        }
        return costs.stream().min(Comparator.comparing(cost -> cost, PlainAnswer::compare));
    }

    /** The least that a form can be, rules aside; empty when there is no blend. */
    Optional<BigFraction> least(List<BigFraction> form, List<Row> more) {
        var all = new ArrayList<>(rows);
        all.addAll(more);
        return PlainSimplex.minimise(form, all).map(point -> PlainReading.dot(form, point));
    }

    Optional<BigFraction> most(List<BigFraction> form, List<Row> more) {
        return least(negated(form), more).map(BigFraction::negate);
    }

    /** A blend that costs no more than so much per kilogram, as a row. */
    Row costingAtMost(BigFraction cost) {
        var costs = reading.costs();
        if (!reading.isPerCooked()) {
            return new Row(costs, cost);
        }
        var weight = reading.cookedWeight();
        return new Row(
                PlainReading.plus(
                        costs,
                        weight.stream().map(w -> w.multiply(cost).negate()).toList()),
                BigFraction.ZERO);
    }

    private Optional<BigFraction> cost(List<Row> all) {
        var costs = reading.costs();
        return reading.isPerCooked()
                ? perCooked(costs, all)
                : PlainSimplex.minimise(costs, all).map(point -> PlainReading.dot(costs, point));
    }

    /** Charnes and Cooper (Naval Research Logistics Quarterly 9, 1962): amounts per cooked kilogram, batch free. */
    private Optional<BigFraction> perCooked(List<BigFraction> costs, List<Row> all) {
        var scaled = new ArrayList<Row>();
        for (var row : all) {
            scaled.add(new Row(with(row.form(), row.right().negate()), BigFraction.ZERO));
        }
        var weight = with(reading.cookedWeight(), BigFraction.ZERO);
        scaled.add(new Row(weight, BigFraction.ONE));
        scaled.add(new Row(negated(weight), BigFraction.ONE.negate()));
        var form = with(costs, BigFraction.ZERO);
        return PlainSimplex.minimise(form, scaled).map(point -> PlainReading.dot(form, point));
    }

    private static List<BigFraction> with(List<BigFraction> form, BigFraction last) {
        var all = new ArrayList<>(form);
        all.add(last);
        return all;
    }

    static int compare(BigFraction a, BigFraction b) {
        return a.subtract(b).signum();
    }

    /** Rows for each choice that the rules allow; one choice without rows where there are no rules. */
    private List<List<Row>> choices() {
        var named = named();
        var choices = new ArrayList<List<Row>>();
        choose(new ArrayList<>(named), new HashMap<>(), choices);
        return choices;
    }

    private void choose(List<String> open, Map<String, Use> made, List<List<Row>> choices) {
        if (open.isEmpty()) {
            if (isAllowed(made)) {
                choices.add(rows(made));
            }
            return;
        }
        var id = open.get(open.size() - 1);
        var rest = open.subList(0, open.size() - 1);
        for (var use : Use.values()) {
            if (use != Use.ANY || leastUse(id).isEmpty()) {
                made.put(id, use);
                choose(rest, made, choices);
            }
        }
        made.remove(id);
    }

    /** Ingredients that a rule names and that can be bought; all of them where their number is limited. */
    private Set<String> named() {
        var sold = new TreeSet<String>();
        reading.variables().forEach(v -> sold.add(v.ingredient()));
        if (kitchen.brief().has("maxIngredients")) {
            return sold;
        }
        var named = new TreeSet<String>();
        for (var rule : rules()) {
            named.addAll(ids(rule.path("whenUsed")));
            named.addAll(ids(rule.path("choose").path("ingredient")));
            named.addAll(ids(rule.path("if")));
            named.addAll(ids(rule.path("then")));
            named.addAll(ids(rule.path("neverTogether")));
        }
        named.retainAll(sold);
        return named;
    }

    private List<JsonNode> rules() {
        return StreamSupport.stream(kitchen.brief().path("rules").spliterator(), false)
                .toList();
    }

    private static List<String> ids(JsonNode node) {
        return node.isString()
                ? List.of(node.asString())
                : StreamSupport.stream(node.spliterator(), false)
                        .map(JsonNode::asString)
                        .toList();
    }

    private Optional<BigFraction> leastUse(String id) {
        return rules().stream()
                .filter(rule -> ids(rule.path("whenUsed")).contains(id))
                .map(rule -> PlainReading.share(rule.get("min").asString()))
                .max(PlainAnswer::compare);
    }

    private boolean isAllowed(Map<String, Use> made) {
        var most = kitchen.brief().path("maxIngredients").asInt(Integer.MAX_VALUE);
        return count(List.copyOf(made.keySet()), made, Use.ANY) <= most
                && rules().stream().allMatch(rule -> isKept(rule, made));
    }

    private static boolean isKept(JsonNode rule, Map<String, Use> made) {
        if (rule.has("choose")) {
            var ids = ids(rule.get("choose").get("ingredient"));
            return count(ids, made, Use.AMPLE) >= rule.path("min").asInt(0)
                    && count(ids, made, Use.ANY) <= rule.path("max").asInt(Integer.MAX_VALUE);
        }
        if (rule.has("if")) {
            return count(ids(rule.get("if")), made, Use.ANY) == 0 || count(ids(rule.get("then")), made, Use.AMPLE) > 0;
        }
        return !rule.has("neverTogether") || count(ids(rule.get("neverTogether")), made, Use.ANY) <= 1;
    }

    private static long count(List<String> ids, Map<String, Use> made, Use least) {
        return ids.stream()
                .distinct()
                .filter(id -> made.getOrDefault(id, Use.NONE).compareTo(least) >= 0)
                .count();
    }

    private List<Row> rows(Map<String, Use> made) {
        var chosen = new ArrayList<Row>();
        new TreeMap<>(made).forEach((id, use) -> {
            var form = reading.form(v -> PlainReading.one(v.ingredient().equals(id)));
            if (use == Use.NONE) {
                chosen.add(new Row(form, BigFraction.ZERO));
            } else if (use == Use.AMPLE) {
                chosen.add(new Row(negated(form), leastUse(id).orElse(LEAST_USE).negate()));
            }
        });
        return chosen;
    }
}
