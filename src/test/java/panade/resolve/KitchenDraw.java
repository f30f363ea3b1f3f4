package panade.resolve;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Draws small kitchens around a hidden blend, so that most have an answer: stages, ratios, means, amounts, weighted
 * sums, fixed numbers, trimming, several offers and lists, rules, a cooked cost basis. One in four is then squeezed.
 */
final class KitchenDraw {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final List<String> KINDS = List.of("texturate", "binder", "fat");

    private final Random random;
    private final ObjectNode set = JSON.objectNode();
    private final ObjectNode brief = JSON.objectNode();
    private final List<String> ids = new ArrayList<>();
    private List<BigFraction> hidden = List.of();
    private TypedKitchen kitchen = new TypedKitchen(set, brief, List.of());
    private boolean isStaged;

    private KitchenDraw(Random random) {
        this.random = random;
    }

    /** The kitchen of a seed; {@code withLists} gives two price lists, else one. */
    static TypedKitchen of(long seed, boolean withLists) {
        return new KitchenDraw(new Random(seed)).draw(withLists);
    }

    private TypedKitchen draw(boolean withLists) {
        pantry(4 + random.nextInt(4));
        brief.put("title", "drawn").put("ingredients", "ingredients.json").put("currency", "USD");
        brief.put("batch", 1 + random.nextInt(40) + " kg");
        isStaged = random.nextInt(3) == 0;
        if (isStaged) {
            stage();
        }
        var lists = new ArrayList<List<TypedKitchen.Offer>>();
        var names = brief.putArray("prices");
        for (int i = 0; i < (withLists ? 2 : 1); i++) {
            lists.add(offers(i));
            names.add("prices-" + i + ".csv");
        }
        kitchen = new TypedKitchen(set, brief, lists);
        cooking();
        hide();
        bounds(2 + random.nextInt(5));
        availability();
        rules();
        return kitchen;
    }

    private void pantry(int count) {
        var traits = set.putObject("traits");
        traits.putObject("bite").put("title", "chew");
        var all = set.putArray("ingredients");
        for (int i = 0; i < count; i++) {
            var one = all.addObject();
            ids.add(i == 0 ? "water" : "i" + i);
            one.put("id", ids.get(i));
            var kinds = one.putArray("kinds");
            for (int k = 0; k < KINDS.size(); k++) {
                if (i > 0 && (i - 1 == k || random.nextInt(4) == 0)) {
                    kinds.add(KINDS.get(k));
                }
            }
            values(one.putObject("values"), i == 0);
            if (i > 0 && random.nextInt(4) == 0) {
                one.put("usable", 60 + random.nextInt(40) + " %");
            }
        }
    }

    private void values(ObjectNode values, boolean isWater) {
        int water = isWater ? 1000 : random.nextInt(700);
        int protein = isWater ? 0 : random.nextInt(1000 - water);
        int fat = isWater ? 0 : random.nextInt(1000 - water - protein);
        values.put("WATER", BigDecimal.valueOf(water, 1));
        values.put("PROCNT", BigDecimal.valueOf(protein, 1));
        values.put("FAT", BigDecimal.valueOf(fat, 1));
        values.put("NA", BigDecimal.valueOf(random.nextInt(900)));
        values.put("bite", BigDecimal.valueOf(random.nextInt(100), 1));
    }

    private void stage() {
        var soak = brief.putArray("stages").addObject();
        soak.put("id", "soak");
        soak.putArray("kinds").add("texturate");
        soak.putArray("ingredients").add("water");
        var mix = brief.withArray("stages").addObject();
        mix.put("id", "mix");
        mix.putArray("ingredients").add("water");
    }

    private List<TypedKitchen.Offer> offers(int list) {
        var offers = new ArrayList<TypedKitchen.Offer>();
        for (var id : ids) {
            offers.add(new TypedKitchen.Offer(id, "north" + list, price(), null));
            if (random.nextInt(4) == 0) {
                offers.add(new TypedKitchen.Offer(id, "south" + list, price(), null));
            }
        }
        return offers;
    }

    private BigDecimal price() {
        return BigDecimal.valueOf(1 + random.nextInt(2000), 2);
    }

    private void cooking() {
        if (random.nextInt(3) == 0) {
            var lose = brief.putObject("cooking").putObject("lose");
            lose.put("WATER", 5 + random.nextInt(30) + " %");
            lose.put("FAT", random.nextInt(20) + " %");
            if (random.nextBoolean()) {
                brief.put("costBasis", "cooked");
            }
        }
    }

    /** Hundredths that sum to one, over all variables; about a third are nothing. */
    private void hide() {
        int n = new PlainReading(kitchen).variables().size();
        var weights = new ArrayList<Integer>();
        for (int j = 0; j < n; j++) {
            weights.add(Math.max(0, random.nextInt(12) - 3));
        }
        weights.set(0, weights.get(0) + 1);
        int total = weights.stream().mapToInt(Integer::intValue).sum();
        hidden = weights.stream().map(weight -> BigFraction.of(weight, total)).toList();
    }

    private void bounds(int count) {
        var bounds = brief.putArray("bounds");
        for (int i = 0; i < count; i++) {
            var bound = JSON.objectNode();
            var unit = select(bound);
            if (limit(bound, unit, null)) {
                bounds.add(bound);
            }
        }
        if (isStaged) {
            var soak = (ObjectNode) brief.get("stages").get(0);
            var bound = soak.putArray("bounds").addObject();
            bound.put("ingredient", "water");
            if (random.nextBoolean()) {
                bound.putObject("per").put("kind", "texturate");
            }
            if (!limit(bound, bound.has("per") ? "" : "%", "soak")) {
                soak.remove("bounds");
            }
        }
        if (bounds.isEmpty()) {
            bounds.addObject().put("property", "FAT").put("max", "100 %");
        }
    }

    /** Draws what is bounded; gives the unit that its limit is written in. */
    private String select(ObjectNode bound) {
        switch (random.nextInt(10)) {
            case 0 -> bound.put("ingredient", id());
            case 1 -> bound.put("kind", kind());
            case 2 -> bound.put("property", "NA");
            case 3 -> bound.putArray("kind").add("texturate").add("binder");
            case 4 ->
                bound.putObject("ingredient").put(id(), new BigDecimal("1")).put(id(), new BigDecimal("2.5"));
            case 5 -> {
                bound.put("property", random.nextBoolean() ? "bite" : "FAT");
                var kind = kind();
                bound.putObject("within").put("kind", kind);
                bound.putObject("per").put("kind", kind);
            }
            case 6 -> {
                bound.put("property", "PROCNT");
                bound.putObject("within").put("kind", kind());
                bound.putObject("per").put("property", "PROCNT");
            }
            case 7 -> {
                bound.put("ingredient", id());
                bound.putObject("per").put("kind", kind());
                return "";
            }
            case 8 -> {
                bound.put("ingredient", id());
                return "kg";
            }
            default -> bound.put("property", random.nextBoolean() ? "FAT" : "PROCNT");
        }
        var property = bound.path("property").asString();
        if (brief.has("cooking")
                && List.of("FAT", "PROCNT").contains(property)
                && !bound.has("per")
                && random.nextBoolean()) {
            bound.put("state", "cooked");
        }
        return property.equals("NA") ? "mg/100g" : property.equals("bite") ? "" : "%";
    }

    /** Puts limits around what the hidden blend has; false where it has nothing to measure on. */
    private boolean limit(ObjectNode bound, String unit, @org.jspecify.annotations.Nullable String stage) {
        var measured = new PlainReading(kitchen).measured(bound, stage);
        var of = PlainReading.dot(measured.of(), hidden);
        var per = measured.per() == null ? BigFraction.ONE : PlainReading.dot(measured.per(), hidden);
        if (unit.equals("kg")) {
            per = BigFraction.of(1).divide(kitchen.batchKg());
        }
        if (per.signum() == 0) {
            return false;
        }
        int factor = unit.equals("%") ? 100 : unit.equals("mg/100g") ? 100_000 : 1;
        var value = of.divide(per).multiply(factor);
        int sides = random.nextInt(8);
        boolean isStatable =
                !unit.equals("%") || value.subtract(BigFraction.of(100)).signum() <= 0;
        if (sides == 7
                && stage == null
                && isStatable
                && decimal(value, 6, RoundingMode.FLOOR)
                                .subtract(decimal(value, 6, RoundingMode.CEILING))
                                .signum()
                        == 0) {
            write(bound, "min", decimal(value, 6, RoundingMode.FLOOR), unit);
            write(bound, "max", decimal(value, 6, RoundingMode.FLOOR), unit);
            return true;
        }
        var squeeze = random.nextInt(14) == 0 ? BigFraction.of(3, 2) : BigFraction.ONE;
        if (sides < 4 || sides == 6) {
            write(bound, "min", cap(near(value.multiply(squeeze), RoundingMode.FLOOR), unit), unit);
        }
        if (sides >= 4) {
            write(
                    bound,
                    "max",
                    cap(
                            near(value.divide(sides == 6 ? BigFraction.ONE : squeeze), RoundingMode.CEILING)
                                    .max(floor(bound)),
                            unit),
                    unit);
        }
        return true;
    }

    private static BigDecimal floor(ObjectNode bound) {
        var min = bound.path("min");
        return min.isMissingNode() ? BigDecimal.ZERO : min.isNumber() ? min.decimalValue() : TypedKitchen.number(min);
    }

    private static BigDecimal cap(BigDecimal number, String unit) {
        return unit.equals("%") ? number.min(BigDecimal.valueOf(100)) : number;
    }

    private BigDecimal near(BigFraction value, RoundingMode mode) {
        var room = value.multiply(BigFraction.of(random.nextInt(2) * random.nextInt(40), 100));
        return decimal(mode == RoundingMode.FLOOR ? value.subtract(room) : value.add(room), 3, mode);
    }

    private static void write(ObjectNode bound, String side, BigDecimal number, String unit) {
        if (unit.isEmpty()) {
            bound.put(side, number);
        } else {
            bound.put(side, number.toPlainString() + " " + unit);
        }
    }

    static BigDecimal decimal(BigFraction value, int places, RoundingMode mode) {
        BigInteger top = value.getNumerator();
        var quotient = new BigDecimal(top)
                .divide(new BigDecimal(value.getDenominator()), places, mode)
                .stripTrailingZeros();
        return quotient.scale() < 0 ? quotient.setScale(0) : quotient;
    }

    private void availability() {
        if (random.nextInt(3) != 0) {
            return;
        }
        var reading = new PlainReading(kitchen);
        int at = random.nextInt(reading.variables().size());
        var offer = reading.variables().get(at).offer();
        var used = BigFraction.ZERO;
        for (int j = 0; j < hidden.size(); j++) {
            used = reading.variables().get(j).offer().equals(offer) ? used.add(hidden.get(j)) : used;
        }
        int batch = kitchen.batchKg();
        var most = decimal(used.multiply(batch).divide(reading.usable(offer.ingredient())), 2, RoundingMode.CEILING);
        kitchen =
                kitchen.typed(offer, new TypedKitchen.Offer(offer.ingredient(), offer.supplier(), offer.price(), most));
    }

    private void rules() {
        if (random.nextInt(4) != 0) {
            return;
        }
        var rules = brief.putArray("rules");
        for (int i = 0; i <= random.nextInt(2); i++) {
            var rule = rules.addObject();
            var a = id();
            var b = other(a);
            switch (random.nextInt(5)) {
                case 0 -> rule.put("whenUsed", a).put("min", 1 + random.nextInt(20) + " %");
                case 1 -> rule.putArray("neverTogether").add(a).add(b);
                case 2 -> rule.put("if", a).put("then", b);
                case 3 -> {
                    rule.putObject("choose").putArray("ingredient").add(a).add(b);
                    rule.put("min", 1);
                }
                default -> {
                    rule.putObject("choose").putArray("ingredient").add(a).add(b);
                    rule.put("max", 1);
                }
            }
        }
        if (random.nextInt(4) == 0) {
            brief.put("maxIngredients", Math.max(2, ids.size() - 1 - random.nextInt(2)));
        }
    }

    private String id() {
        return ids.get(random.nextInt(ids.size()));
    }

    private String other(String id) {
        return ids.get((ids.indexOf(id) + 1 + random.nextInt(ids.size() - 1)) % ids.size());
    }

    private String kind() {
        return KINDS.get(random.nextInt(KINDS.size()));
    }
}
