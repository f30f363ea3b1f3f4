package panade.resolve;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * Reads typed documents straight from what the README says of them, with nothing of the program. Only what these tests
 * type is read: no variants, sums of properties, {@code basedOn} or assumptions.
 */
final class PlainReading {
    private final TypedKitchen kitchen;
    private final Map<String, JsonNode> ingredients = new HashMap<>();
    private final List<Variable> variables = new ArrayList<>();
    private final List<Claimed> rows = new ArrayList<>();
    private final BigFraction batch;

    /** Goods of one offer weighed in at one place. */
    record Variable(String ingredient, String stage, TypedKitchen.Offer offer) {}

    /** {@code sign x (form x - right) >= 0}, or equal where the sign is nought. */
    record Claimed(String path, List<BigFraction> form, int sign, BigFraction right) {}

    /** A selector's two sides and its unit. */
    record Measured(List<BigFraction> of, @Nullable List<BigFraction> per, BigFraction unit, boolean amount) {}

    PlainReading(TypedKitchen kitchen) {
        this.kitchen = kitchen;
        this.batch = mass(kitchen.brief().get("batch").asString());
        kitchen.set()
                .get("ingredients")
                .forEach(one -> ingredients.put(one.get("id").asString(), one));
        for (var offer : kitchen.pooled()) {
            stagesOf(offer.ingredient())
                    .forEach(stage -> variables.add(new Variable(offer.ingredient(), stage, offer)));
        }
        readBounds();
        readStages();
        readCeilings();
        readOffers();
    }

    List<Variable> variables() {
        return List.copyOf(variables);
    }

    List<Claimed> rows() {
        return List.copyOf(rows);
    }

    private List<String> stagesOf(String id) {
        var stages = new ArrayList<String>();
        boolean isMixed = false;
        for (var stage : kitchen.brief().path("stages")) {
            if (names(stage, id)) {
                stages.add(stage.get("id").asString());
                isMixed |= stage.get("id").asString().equals("mix");
            }
        }
        if (stages.isEmpty() && !isMixed) {
            stages.add("mix");
        }
        return stages;
    }

    private boolean names(JsonNode stage, String id) {
        return texts(stage.path("ingredients")).contains(id)
                || texts(stage.path("kinds")).stream().anyMatch(kind -> isKind(id, kind));
    }

    private boolean isKind(String id, String kind) {
        return texts(ingredient(id).path("kinds")).contains(kind);
    }

    private JsonNode ingredient(String id) {
        return java.util.Objects.requireNonNull(ingredients.get(id));
    }

    private static List<String> texts(JsonNode node) {
        return node.isString()
                ? List.of(node.asString())
                : StreamSupport.stream(node.spliterator(), false)
                        .map(JsonNode::asString)
                        .toList();
    }

    private void readBounds() {
        var bounds = kitchen.brief().path("bounds");
        for (int i = 0; i < bounds.size(); i++) {
            bound("/bounds/" + i, bounds.get(i), null);
        }
    }

    private void readStages() {
        var stages = kitchen.brief().path("stages");
        for (int s = 0; s < stages.size(); s++) {
            var id = stages.get(s).get("id").asString();
            var share = stages.get(s).get("share");
            if (share != null) {
                limits("/stages/" + s + "/share", share, new Measured(ofStage(id), null, BigFraction.ONE, false));
            }
            var bounds = stages.get(s).path("bounds");
            for (int i = 0; i < bounds.size(); i++) {
                bound("/stages/" + s + "/bounds/" + i, bounds.get(i), id);
            }
        }
    }

    private void readCeilings() {
        for (var one : kitchen.set().get("ingredients")) {
            var ceiling = one.get("maxUse");
            if (ceiling != null) {
                var id = one.get("id").asString();
                var level = share(ceiling.asString());
                rows.add(
                        new Claimed("maxUse " + id, form(v -> one(v.ingredient().equals(id))), -1, level));
            }
        }
    }

    private void readOffers() {
        for (var offer : kitchen.pooled()) {
            if (offer.available() != null) {
                var usable = usable(offer.ingredient());
                rows.add(new Claimed(
                        "available " + offer.ingredient() + " " + offer.supplier(),
                        form(v -> v.offer().equals(offer) ? usable.reciprocal() : BigFraction.ZERO),
                        -1,
                        of(offer.available()).divide(batch)));
            }
        }
    }

    BigFraction usable(String id) {
        var usable = ingredient(id).get("usable");
        return usable == null ? BigFraction.ONE : share(usable.asString());
    }

    /** Money per kilogram weighed in. */
    List<BigFraction> costs() {
        return variables.stream()
                .map(v -> of(v.offer().price()).divide(usable(v.ingredient())))
                .toList();
    }

    boolean isPerCooked() {
        return kitchen.brief().path("costBasis").asString("raw").equals("cooked");
    }

    /** What a kilogram weighs after cooking. */
    List<BigFraction> cookedWeight() {
        return form(v -> {
            var left = BigFraction.ONE;
            for (var lost : kitchen.brief().path("cooking").path("lose").properties()) {
                left = left.subtract(
                        share(lost.getValue().asString()).multiply(content(v.ingredient(), lost.getKey())));
            }
            return left;
        });
    }

    private BigFraction kept(String property) {
        var lost = kitchen.brief().path("cooking").path("lose").get(property);
        return lost == null ? BigFraction.ONE : BigFraction.ONE.subtract(share(lost.asString()));
    }

    /** What a kilogram of each variable holds. */
    List<BigFraction> content(String property) {
        return form(v -> content(v.ingredient(), property));
    }

    /** Per kilogram: mass fractions for components, the number itself for a trait. */
    private BigFraction content(String id, String property) {
        var value = of(ingredient(id).get("values").get(property).decimalValue());
        return switch (property) {
            case "NA" -> value.divide(100_000);
            case "bite", "tone" -> value;
            default -> value.divide(100);
        };
    }

    private void bound(String path, JsonNode bound, @Nullable String stage) {
        limits(path, bound, measured(bound, stage));
    }

    /** What a bound measures; a stage's own bound sees that stage alone. */
    Measured measured(JsonNode bound, @Nullable String stage) {
        boolean isCooked = bound.path("state").asString("raw").equals("cooked");
        var seen = stage == null ? form(v -> BigFraction.ONE) : ofStage(stage);
        var of = times(selected(bound, isCooked), seen);
        var limit = bound.has("max") ? bound.get("max") : bound.get("min");
        boolean amount = limit != null && limit.asString().endsWith(" kg");
        if (bound.has("per")) {
            return new Measured(of, times(selected(bound.get("per"), isCooked), seen), BigFraction.ONE, amount);
        }
        var whole = isCooked ? cookedWeight() : seen;
        return new Measured(of, stage == null && !isCooked ? null : whole, BigFraction.ONE, amount);
    }

    private void limits(String path, JsonNode bound, Measured measured) {
        if (bound.has("min")) {
            rows.add(row(path + "/min", measured, bound.get("min"), 1));
        }
        if (bound.has("max")) {
            rows.add(row(path + "/max", measured, bound.get("max"), -1));
        }
    }

    private Claimed row(String path, Measured measured, JsonNode limit, int sign) {
        var text = limit.asString();
        if (text.endsWith(" kg")) {
            return new Claimed(path, measured.of(), sign, mass(text).divide(batch));
        }
        var level = limit.isNumber() ? of(limit.decimalValue()) : share(text);
        var per = measured.per();
        if (per == null) {
            return new Claimed(path, measured.of(), sign, level);
        }
        var form = new ArrayList<BigFraction>();
        for (int j = 0; j < per.size(); j++) {
            form.add(measured.of().get(j).subtract(level.multiply(per.get(j))));
        }
        return new Claimed(path, form, sign, BigFraction.ZERO);
    }

    private List<BigFraction> selected(JsonNode selector, boolean isCooked) {
        if (selector.has("sum")) {
            var total = form(v -> BigFraction.ZERO);
            for (var part : selector.get("sum")) {
                total = plus(total, selected(part, isCooked));
            }
            return total;
        }
        var place = selector.get("within");
        return form(v -> place == null || isWithin(place, v) ? one(selector, v, isCooked) : BigFraction.ZERO);
    }

    private boolean isWithin(JsonNode place, Variable v) {
        if (place.has("kind")) {
            return isKind(v.ingredient(), place.get("kind").asString());
        }
        return place.has("stage")
                ? place.get("stage").asString().equals(v.stage())
                : place.get("ingredient").asString().equals(v.ingredient());
    }

    private BigFraction one(JsonNode selector, Variable v, boolean isCooked) {
        if (selector.has("property")) {
            return texts(selector.get("property")).stream()
                    .map(property ->
                            content(v.ingredient(), property).multiply(isCooked ? kept(property) : BigFraction.ONE))
                    .reduce(BigFraction.ZERO, BigFraction::add);
        }
        if (selector.has("stage")) {
            return one(texts(selector.get("stage")).contains(v.stage()));
        }
        if (selector.has("kind")) {
            return weight(selector.get("kind"), kind -> isKind(v.ingredient(), kind));
        }
        return weight(selector.get("ingredient"), v.ingredient()::equals);
    }

    /** In a list each counts once; in a weighted sum the weights of all that fit add up. */
    private static BigFraction weight(JsonNode names, Function<String, Boolean> fits) {
        if (!names.isObject()) {
            return one(texts(names).stream().anyMatch(fits::apply));
        }
        var total = BigFraction.ZERO;
        for (var each : names.properties()) {
            total = fits.apply(each.getKey()) ? total.add(of(each.getValue().decimalValue())) : total;
        }
        return total;
    }

    private List<BigFraction> ofStage(String id) {
        return form(v -> one(v.stage().equals(id)));
    }

    List<BigFraction> form(Function<Variable, BigFraction> of) {
        return variables.stream().map(of).toList();
    }

    static List<BigFraction> times(List<BigFraction> a, List<BigFraction> b) {
        return java.util.stream.IntStream.range(0, a.size())
                .mapToObj(j -> a.get(j).multiply(b.get(j)))
                .toList();
    }

    static List<BigFraction> plus(List<BigFraction> a, List<BigFraction> b) {
        return java.util.stream.IntStream.range(0, a.size())
                .mapToObj(j -> a.get(j).add(b.get(j)))
                .toList();
    }

    static BigFraction dot(List<BigFraction> a, List<BigFraction> b) {
        return times(a, b).stream().reduce(BigFraction.ZERO, BigFraction::add);
    }

    static BigFraction one(boolean counts) {
        return counts ? BigFraction.ONE : BigFraction.ZERO;
    }

    static BigFraction of(BigDecimal decimal) {
        var plain = decimal.scale() < 0 ? decimal.setScale(0) : decimal;
        return BigFraction.of(plain.unscaledValue(), BigInteger.TEN.pow(plain.scale()));
    }

    private static BigFraction mass(String text) {
        return of(new BigDecimal(text.substring(0, text.length() - " kg".length())));
    }

    /** A share as a fraction of one. */
    static BigFraction share(String text) {
        int space = text.indexOf(' ');
        var number = of(new BigDecimal(text.substring(0, space)));
        return switch (text.substring(space + 1)) {
            case "%" -> number.divide(100);
            case "mg/100g" -> number.divide(100_000);
            default -> throw new IllegalArgumentException(text);
        };
    }
}
