package panade.harden;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Documents drawn at random around a hidden blend: lots, sums of sums, values left to others, assume or absent, units
 * of every kind, stages, ratios, means, amounts, cooked bounds, availability, rules, briefs based on briefs.
 */
record DrawnKitchen(ObjectNode set, ObjectNode brief, List<Offer> offers) {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final List<String> KINDS = List.of("texturate", "binder", "fat");
    private static final List<String> COMPONENTS = List.of("WATER", "PROCNT", "FAT", "NA");

    /** A row of the price list. */
    record Offer(
            String id,
            String supplier,
            double price,
            String per,
            @Nullable String available) {}

    static DrawnKitchen of(long number) {
        return new Drawing(new Random(number * 0x9E3779B97F4A7C15L)).kitchen();
    }

    /** Writes the documents, the brief's second half of bounds into a brief of its own that it is based on. */
    Path writeInto(Path folder) throws IOException {
        var list = new StringBuilder("ingredient,supplier,price,per,available\n");
        offers.forEach(offer -> list.append(String.join(
                        ",",
                        offer.id(),
                        offer.supplier(),
                        BigDecimal.valueOf(offer.price()).toPlainString(),
                        offer.per(),
                        offer.available() == null ? "" : offer.available()))
                .append('\n'));
        Files.writeString(folder.resolve("prices.csv"), list);
        Files.writeString(folder.resolve("ingredients.json"), set.toString());
        var upper = brief.deepCopy();
        var lower = JSON.objectNode();
        if (brief.path("bounds").size() % 2 == 1) {
            List.of("ingredients", "prices", "currency", "batch").forEach(name -> lower.set(name, upper.remove(name)));
            lower.set("bounds", upper.remove("bounds"));
            upper.put("basedOn", "base.json");
            Files.writeString(folder.resolve("base.json"), lower.toString());
        }
        return Files.writeString(folder.resolve("brief.json"), upper.toString());
    }

    @Override
    public String toString() {
        return set + "\n" + brief + "\n" + offers;
    }

    private static final class Drawing {
        private final Random random;
        private final ObjectNode set = JSON.objectNode();
        private final ObjectNode brief = JSON.objectNode();
        private final List<String> ids = new ArrayList<>();
        private final boolean hasRules;

        Drawing(Random random) {
            this.random = random;
            this.hasRules = random.nextInt(4) == 0;
        }

        private boolean oneIn(int count) {
            return random.nextInt(count) == 0;
        }

        private <T> T pick(List<T> list) {
            return list.get(random.nextInt(list.size()));
        }

        DrawnKitchen kitchen() {
            var traits = set.putObject("traits");
            traits.putObject("bite").put("absent", oneIn(2) ? 0 : 2);
            traits.putObject("soak").put("unit", "g/g").put("absent", 0);
            traits.putObject("load").putObject("sum").put("FAT", 1).put("PROCNT", new BigDecimal("0.25"));
            traits.putObject("burden")
                    .putObject("sum")
                    .put("load", 2)
                    .put("bite", new BigDecimal("1.5"))
                    .put("NA", new BigDecimal("0.01"));
            set.putObject("assume").put("NA", 3);
            var all = set.putArray("ingredients");
            int count = 4 + random.nextInt(hasRules ? 4 : 7);
            for (int i = 0; i < count; i++) {
                all.add(ingredient(i));
            }
            brief.put("ingredients", "ingredients.json").put("currency", "USD");
            brief.putArray("prices").add("prices.csv");
            brief.put("batch", pick(List.of("10 kg", "20 lb", "250 g", "1234.5 g", "40 oz", "0.75 kg")));
            if (oneIn(5)) {
                brief.putObject("avoid").putArray("ingredients").add(ids.get(1 + random.nextInt(count - 1)));
            }
            if (oneIn(3)) {
                var lose = brief.putObject("cooking").putObject("lose");
                lose.put("WATER", 5 + random.nextInt(20) + " %").put("FAT", random.nextInt(9) + " %");
            }
            if (oneIn(2)) {
                stages();
            }
            var offers = offers();
            var kitchen = new DrawnKitchen(set, brief, offers);
            bounds(new Reading(kitchen));
            if (hasRules) {
                rules();
            }
            return kitchen;
        }

        private ObjectNode ingredient(int i) {
            var one = JSON.objectNode();
            ids.add(i == 0 ? "water" : "i" + i);
            one.put("id", ids.get(i));
            if (!hasRules && i > 3 && oneIn(4)) {
                one.put("variantOf", ids.get(i - 1 - random.nextInt(2)));
            }
            var kinds = one.putArray("kinds");
            for (int k = 0; i > 0 && k < KINDS.size(); k++) {
                if (i - 1 == k || oneIn(4)) {
                    kinds.add(KINDS.get(k));
                }
            }
            values(one, i == 0 ? 1000 : random.nextInt(700));
            if (i > 0 && oneIn(4)) {
                one.put("usable", 60 + random.nextInt(40) + " %");
            }
            if (i > 0 && oneIn(5)) {
                one.put("maxUse", 5 + random.nextInt(50) + (oneIn(2) ? " %" : " g/100g"));
            }
            return one;
        }

        private void values(ObjectNode one, int water) {
            var values = one.putObject("values");
            int protein = random.nextInt(1001 - water);
            int fat = random.nextInt(1001 - water - protein);
            boolean isOpen = oneIn(3);
            values.put("WATER", BigDecimal.valueOf(water, 1));
            if (!isOpen || oneIn(2)) {
                values.put("PROCNT", BigDecimal.valueOf(protein, 1));
            }
            if (!isOpen || oneIn(2)) {
                values.put("FAT", BigDecimal.valueOf(fat, 1));
            }
            if (isOpen) {
                one.put("others", 0);
            }
            if (oneIn(2)) {
                values.put("NA", random.nextInt(900));
            }
            if (oneIn(2)) {
                values.put("bite", BigDecimal.valueOf(random.nextInt(100), 1));
            }
            if (oneIn(2)) {
                values.put("soak", BigDecimal.valueOf(random.nextInt(40), 1));
            }
        }

        private void stages() {
            var soak = brief.putArray("stages").addObject();
            soak.put("id", "soak");
            soak.putArray("kinds").add("texturate");
            soak.putArray("ingredients").add("water");
            brief.withArray("stages")
                    .addObject()
                    .put("id", "mix")
                    .putArray("ingredients")
                    .add("water");
        }

        private List<Offer> offers() {
            var offers = new ArrayList<Offer>();
            for (var id : ids) {
                for (int i = 0; i <= random.nextInt(3) / 2; i++) {
                    double price = (1 + random.nextInt(3000)) / 100.0;
                    var available = oneIn(6)
                            ? random.nextInt(9) + "." + random.nextInt(10) + pick(List.of(" kg", " lb", " oz"))
                            : null;
                    offers.add(new Offer(
                            id, "s" + i, price, pick(List.of("kg", "lb", "20 kg", "25 lb", "100 g")), available));
                }
            }
            return offers;
        }

        private double[] hidden(int count) {
            var shares = new double[count];
            double sum = 0;
            for (int j = 0; j < count; j++) {
                shares[j] = Math.max(0, random.nextInt(12) - 3) + (j == 0 ? 1 : 0);
                sum += shares[j];
            }
            for (int j = 0; j < count; j++) {
                shares[j] /= sum;
            }
            return shares;
        }

        private void bounds(Reading reading) {
            var hidden = hidden(reading.goods().size());
            boolean isTight = oneIn(4);
            var bounds = brief.putArray("bounds");
            for (int i = 1 + random.nextInt(6); i > 0; i--) {
                var bound = selector();
                limit(bound, bound, reading.measure(bound, null), hidden, isTight);
                if (bound.has("min") || bound.has("max")) {
                    bounds.add(bound);
                }
            }
            for (var stage : brief.path("stages")) {
                if (oneIn(2) && stage instanceof ObjectNode inner) {
                    var bound = JSON.objectNode().put("property", pick(COMPONENTS));
                    limit(bound, bound, reading.measure(bound, inner.path("id").asString()), hidden, isTight);
                    inner.putArray("bounds");
                    if (bound.has("min") || bound.has("max")) {
                        inner.withArray("bounds").add(bound);
                    }
                }
            }
        }

        private ObjectNode selector() {
            var bound = JSON.objectNode();
            switch (random.nextInt(9)) {
                case 0 -> bound.put("kind", pick(KINDS));
                case 1 -> bound.putArray("ingredient").add(pick(ids)).add(ids.get(0));
                case 2 -> bound.putObject("ingredient").put(pick(ids), 2).put(ids.get(0), new BigDecimal("0.5"));
                case 3 -> bound.put("property", pick(List.of("bite", "load", "burden")));
                case 4 ->
                    bound.put("property", "bite").set("per", JSON.objectNode().put("kind", pick(KINDS)));
                case 5 ->
                    bound.put("ingredient", "water")
                            .set("per", JSON.objectNode().put("property", pick(List.of("soak", "PROCNT"))));
                case 6 ->
                    bound.putArray("sum")
                            .add(JSON.objectNode().put("kind", pick(KINDS)))
                            .add(JSON.objectNode().put("ingredient", pick(ids)));
                default -> bound.put("property", pick(COMPONENTS));
            }
            if (bound.path("property").isString() && oneIn(4)) {
                var kind = JSON.objectNode().put("kind", pick(KINDS));
                bound.set("within", kind);
                if (bound.path("property").asString().equals("bite")) {
                    bound.set("per", kind.deepCopy());
                }
            } else if (COMPONENTS.contains(bound.path("property").asString("")) && brief.has("cooking") && oneIn(2)) {
                bound.put("state", "cooked");
            }
            return bound;
        }

        /** One or two numbers about what the hidden blend has; closer, or beyond it, where it is to be tight. */
        private void limit(
                ObjectNode bound, JsonNode selector, Reading.Measure measure, double[] hidden, boolean isTight) {
            double of = 0;
            double per = 0;
            for (int j = 0; j < hidden.length; j++) {
                of += measure.of()[j] * hidden[j];
                per += measure.per()[j] * hidden[j];
            }
            double value = per > 0 ? of / per : 1;
            double room = isTight ? -0.03 : 0.02 + 0.3 * random.nextDouble();
            if (oneIn(2)) {
                bound.set("min", written(selector, Math.max(0, value * (1 - room)), RoundingMode.FLOOR));
            }
            if (oneIn(2)) {
                bound.set("max", written(selector, value * (1 + room), RoundingMode.CEILING));
            }
            if (isTight && bound.has("min") && bound.has("max")) {
                bound.remove("max");
            }
        }

        private JsonNode written(JsonNode selector, double value, RoundingMode mode) {
            var property = selector.path("property").asString("");
            if (List.of("bite", "load", "burden").contains(property) || (property.isEmpty() && selector.has("per"))) {
                return JSON.numberNode(rounded(value, 1, mode));
            }
            if (selector.has("per")) {
                return JSON.stringNode(rounded(Math.min(value, 1), 1e-2, mode).toPlainString() + " %");
            }
            if (property.isEmpty() && oneIn(3)) {
                var unit = pick(List.of("kg", "lb", "oz", "g"));
                double batch = Reading.mass(brief.path("batch").asString());
                return JSON.stringNode(
                        rounded(value * batch, Reading.mass(unit), mode).toPlainString() + " " + unit);
            }
            var unit = pick(
                    property.equals("NA")
                            ? List.of("mg/100g", "mg/kg", "ppm", "%")
                            : List.of("%", "g/100g", "g/kg", "mg/g"));
            double one = switch (unit) {
                case "mg/100g" -> 1e-5;
                case "mg/kg", "ppm" -> 1e-6;
                case "g/kg", "mg/g" -> 1e-3;
                default -> 1e-2;
            };
            return JSON.stringNode(rounded(Math.min(value, 1), one, mode).toPlainString() + " " + unit);
        }

        private static BigDecimal rounded(double value, double unit, RoundingMode mode) {
            return new BigDecimal(value / unit).round(new MathContext(5, mode)).stripTrailingZeros();
        }

        private void rules() {
            var rules = brief.putArray("rules");
            rules.addObject().put("whenUsed", ids.get(1)).put("min", 1 + random.nextInt(4) + " %");
            var choose = rules.addObject();
            choose.putObject("choose").put("kind", pick(KINDS));
            choose.put(oneIn(2) ? "min" : "max", 1);
            if (oneIn(2)) {
                rules.addObject().put("if", ids.get(2)).put("then", ids.get(1));
            }
            if (oneIn(2)) {
                rules.addObject().putArray("neverTogether").add(ids.get(1)).add(ids.get(3));
            }
            if (oneIn(3)) {
                brief.put("maxIngredients", 2 + random.nextInt(3));
            }
        }
    }
}
