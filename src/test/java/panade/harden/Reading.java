package panade.harden;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Reads documents straight from what the manual says of them and shares nothing with the program; in binary floating
 * point, as the solver that it is read for.
 */
final class Reading {
    /** NIST SP 811: a pound in kilograms. */
    private static final double POUND = 0.45359237;

    private static final Map<String, Double> MASSES =
            Map.of("kg", 1.0, "g", 1e-3, "lb", POUND, "oz", POUND / 16, "mg", 1e-6);
    private static final Map<String, Double> SHARES = Map.of(
            "%",
            1e-2, "g/100g", 1e-2, "g/kg", 1e-3, "mg/100g", 1e-5, "mg/kg", 1e-6, "ppm", 1e-6, "mg/g", 1e-3, "g/g", 1.0);

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonNode set;
    private final JsonNode brief;
    private final List<Goods> goods = new ArrayList<>();

    /** What one offer gives to one stage; the price is of a kilogram weighed in. */
    record Goods(String id, String stage, DrawnKitchen.Offer offer, double price) {}

    /** What a bound compares: {@code of} at least, or at most, a number times {@code per}. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Measure(double[] of, double[] per) {}

    /** A row: {@code form} between two numbers. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Row(String path, double[] form, double least, double most) {}

    Reading(DrawnKitchen kitchen) {
        this.set = kitchen.set();
        this.brief = kitchen.brief();
        for (var offer : kitchen.offers()) {
            if (!isCalled(brief.path("avoid").path("ingredients"), offer.id())) {
                double usable = number(ingredient(offer.id()).path("usable"), SHARES, 1);
                double price = offer.price() / mass(offer.per()) / usable;
                stages(offer.id()).forEach(stage -> goods.add(new Goods(offer.id(), stage, offer, price)));
            }
        }
    }

    List<Goods> goods() {
        return List.copyOf(goods);
    }

    double batch() {
        return mass(brief.path("batch").asString());
    }

    static double mass(String text) {
        var words = (Character.isDigit(text.charAt(0)) ? text : "1 " + text).split(" ", -1);
        return Double.parseDouble(words[0]) * Objects.requireNonNull(MASSES.get(words[1]));
    }

    private static double number(JsonNode node, Map<String, Double> units, double otherwise) {
        if (node.isMissingNode()) {
            return otherwise;
        }
        if (node.isNumber()) {
            return node.asDouble();
        }
        var words = node.asString().split(" ", -1);
        return new BigDecimal(words[0]).doubleValue() * Objects.requireNonNull(units.get(words[1]));
    }

    JsonNode ingredient(String id) {
        return StreamSupport.stream(set.path("ingredients").spliterator(), false)
                .filter(one -> one.path("id").asString().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static boolean names(JsonNode list, String word) {
        return list.isString()
                ? list.asString().equals(word)
                : StreamSupport.stream(list.spliterator(), false)
                        .anyMatch(each -> each.asString().equals(word));
    }

    /** An ingredient by its own id or by that of the one it is a lot of. */
    private boolean isCalled(JsonNode list, String id) {
        var parent = ingredient(id).path("variantOf");
        return names(list, id) || (parent.isString() && isCalled(list, parent.asString()));
    }

    boolean isKind(JsonNode list, String id) {
        var kinds = ingredient(id).path("kinds");
        return StreamSupport.stream(kinds.spliterator(), false).anyMatch(kind -> names(list, kind.asString()));
    }

    private List<String> stages(String id) {
        var found = new ArrayList<String>();
        for (var stage : brief.path("stages")) {
            if (isCalled(stage.path("ingredients"), id) || isKind(stage.path("kinds"), id)) {
                found.add(stage.path("id").asString());
            }
        }
        return found.isEmpty() ? List.of("mix") : found;
    }

    /** A value as the set states it, in the property's own unit. */
    private double stated(String id, String property) {
        var one = ingredient(id);
        var value = one.path("values").path(property);
        if (value.isNumber()) {
            return value.asDouble();
        }
        var trait = set.path("traits").path(property);
        if (trait.has("sum")) {
            return trait.path("sum").properties().stream()
                    .mapToDouble(part -> part.getValue().asDouble() * stated(id, part.getKey()))
                    .sum();
        }
        if (trait.has("absent")) {
            return trait.path("absent").asDouble();
        }
        return one.has("others") ? 0 : set.path("assume").path(property).asDouble();
    }

    /** Kilograms in a kilogram, or the number itself where there is no unit. */
    private double content(String id, String property) {
        double number = stated(id, property);
        return switch (property) {
            case "NA" -> number * 1e-5;
            case "bite", "soak", "load", "burden" -> number;
            default -> number * 1e-2;
        };
    }

    private double[] form(ToDoubleFunction<Goods> of) {
        return goods.stream().mapToDouble(of).toArray();
    }

    private boolean isWithin(JsonNode place, Goods one) {
        if (place.has("kind")) {
            return isKind(place.path("kind"), one.id());
        }
        return place.has("stage")
                ? names(place.path("stage"), one.stage())
                : isCalled(place.path("ingredient"), one.id());
    }

    private double selected(JsonNode selector, Goods one, boolean isCooked) {
        var within = selector.path("within");
        if (!within.isMissingNode() && !isWithin(within, one)) {
            return 0;
        }
        if (selector.has("sum")) {
            return StreamSupport.stream(selector.path("sum").spliterator(), false)
                    .mapToDouble(part -> selected(part, one, isCooked))
                    .sum();
        }
        if (selector.has("property")) {
            var property = selector.path("property").asString();
            double left = isCooked ? 1 - lost(property) : 1;
            return left * content(one.id(), property);
        }
        if (selector.has("stage")) {
            return names(selector.path("stage"), one.stage()) ? 1 : 0;
        }
        return selector.has("kind")
                ? weight(selector.path("kind"), list -> isKind(list, one.id()))
                : weight(selector.path("ingredient"), list -> isCalled(list, one.id()));
    }

    private static double weight(JsonNode list, Predicate<JsonNode> fits) {
        if (!list.isObject()) {
            return fits.test(list) ? 1 : 0;
        }
        return list.properties().stream()
                .filter(each -> fits.test(NODES.arrayNode().add(each.getKey())))
                .mapToDouble(each -> each.getValue().asDouble())
                .sum();
    }

    private double lost(String property) {
        return number(brief.path("cooking").path("lose").path(property), SHARES, 0);
    }

    private double cookedWeight(Goods one) {
        return 1 - lost("WATER") * content(one.id(), "WATER") - lost("FAT") * content(one.id(), "FAT");
    }

    /** What a bound measures; one in a stage sees that stage alone. */
    Measure measure(JsonNode bound, @Nullable String stage) {
        boolean isCooked = bound.has("state");
        ToDoubleFunction<Goods> seen = one -> stage == null || stage.equals(one.stage()) ? 1 : 0;
        var of = form(one -> seen.applyAsDouble(one) * selected(bound, one, isCooked));
        if (bound.has("per")) {
            return new Measure(of, form(one -> seen.applyAsDouble(one) * selected(bound.path("per"), one, isCooked)));
        }
        return new Measure(of, isCooked ? form(this::cookedWeight) : form(seen));
    }

    /** All that limits a blend but its rules. */
    List<Row> rows() {
        var rows = new ArrayList<Row>();
        limits(rows, "/bounds/", brief.path("bounds"), null);
        for (int s = 0; s < brief.path("stages").size(); s++) {
            var stage = brief.path("stages").path(s);
            var id = stage.path("id").asString();
            limits(rows, "/stages/" + s + "/bounds/", stage.path("bounds"), id);
            if (stage.has("share")) {
                var share = new Measure(form(one -> one.stage().equals(id) ? 1 : 0), form(one -> 1));
                limit(rows, "/stages/" + s + "/share", stage.path("share"), share);
            }
        }
        for (var one : set.path("ingredients")) {
            if (one.has("maxUse")) {
                var list = NODES.arrayNode().add(one.path("id"));
                rows.add(new Row(
                        "maxUse",
                        form(each -> isCalled(list, each.id()) ? 1 : 0),
                        Double.NEGATIVE_INFINITY,
                        number(one.path("maxUse"), SHARES, 1)));
            }
        }
        goods.stream()
                .map(Goods::offer)
                .distinct()
                .filter(offer -> offer.available() != null)
                .forEach(offer -> rows.add(available(offer, Objects.requireNonNull(offer.available()))));
        return rows;
    }

    private Row available(DrawnKitchen.Offer offer, String most) {
        double usable = number(ingredient(offer.id()).path("usable"), SHARES, 1);
        return new Row(
                "available",
                form(one -> one.offer().equals(offer) ? 1 : 0),
                Double.NEGATIVE_INFINITY,
                mass(most) * usable / batch());
    }

    private void limits(List<Row> rows, String path, JsonNode bounds, @Nullable String stage) {
        for (int i = 0; i < bounds.size(); i++) {
            limit(rows, path + i, bounds.path(i), measure(bounds.path(i), stage));
        }
    }

    private void limit(List<Row> rows, String path, JsonNode bound, Measure measure) {
        if (bound.has("min")) {
            var form = less(measure, bound.path("min"));
            rows.add(new Row(path, form.of(), form.per()[0], Double.POSITIVE_INFINITY));
        }
        if (bound.has("max")) {
            var form = less(measure, bound.path("max"));
            rows.add(new Row(path, form.of(), Double.NEGATIVE_INFINITY, form.per()[0]));
        }
    }

    /** The form and, as the one entry of the other side, the number it is compared with. */
    private Measure less(Measure measure, JsonNode limit) {
        if (limit.isString() && limit.asString().matches(".* (kg|g|lb|oz)")) {
            return new Measure(measure.of(), new double[] {mass(limit.asString()) / batch()});
        }
        double level = number(limit, SHARES, 0);
        var form = measure.of().clone();
        for (int j = 0; j < form.length; j++) {
            form[j] -= level * measure.per()[j];
        }
        return new Measure(form, new double[] {0});
    }
}
