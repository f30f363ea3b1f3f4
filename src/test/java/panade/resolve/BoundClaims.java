package panade.resolve;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Values, rates and reaches of bounds, each tried by typing another number. */
final class BoundClaims {
    private static final BigFraction LOOSE = BigFraction.of(1, 10_000);
    /** What a rate of fifteen digits leaves open of a cost. */
    private static final BigFraction ROUNDED = PlainReading.of(new BigDecimal("1e-13"));

    private static final BigDecimal SMALL = new BigDecimal("1e-9");

    private final TypedKitchen kitchen;
    private final PlainAnswer answer;
    private final BigFraction least;
    private final Tally tally;

    BoundClaims(TypedKitchen kitchen, PlainAnswer answer, BigFraction least, Tally tally) {
        this.kitchen = kitchen;
        this.answer = answer;
        this.least = least;
        this.tally = tally;
    }

    void check(JsonNode bounds, Shares shares) {
        for (var bound : bounds) {
            var path = bound.get("path").asString();
            var typed = kitchen.brief().at(path);
            if (path.startsWith("/bounds/") || path.startsWith("/stages/")) {
                value(bound, path, typed, shares);
                if (!kitchen.brief().has("rules") && !kitchen.brief().has("maxIngredients")) {
                    rates(bound, path, typed);
                }
            }
        }
    }

    private void value(JsonNode bound, String path, JsonNode typed, Shares shares) {
        if (path.endsWith("/share")) {
            return;
        }
        var stage = path.startsWith("/stages/")
                ? kitchen.brief()
                        .at(path.substring(0, path.indexOf("/bounds")))
                        .get("id")
                        .asString()
                : null;
        var measured = answer.reading().measured(typed, stage);
        var of = PlainReading.dot(measured.of(), shares.all());
        var per = measured.per() == null || measured.amount()
                ? BigFraction.ONE
                : PlainReading.dot(measured.per(), shares.all());
        var unit = bound.path("unit").asString("");
        if (per.signum() == 0) {
            tally.claim(
                    "values of nothing",
                    bound.get("value").isNull() && bound.get("binding").isNull(),
                    bound.toString());
            return;
        }
        var batch = kitchen.batchKg();
        var factor = measured.amount()
                ? BigFraction.of(batch)
                : BigFraction.of(unit.equals("%") ? 100 : unit.equals("mg/100g") ? 100_000 : 1);
        var value = of.divide(per).multiply(factor);
        boolean holds = bound.get("value").isNumber() && Printed.isNear(Printed.number(bound.get("value")), value);
        tally.claim("values of bounds", holds, path + " " + bound.get("value") + " for " + Printed.text(value));
    }

    private void rates(JsonNode bound, String path, JsonNode typed) {
        var binding = bound.get("binding").asString("");
        var side = binding.equals("min") || binding.equals("max") ? path + "/" + binding : path;
        if (bound.get("binding").isNull()) {
            typed.propertyNames().forEach(name -> {
                if (name.equals("min") || name.equals("max")) {
                    TypedNumber.at(kitchen, path + "/" + name).ifPresent(number -> both(bound, number, typed, path));
                }
            });
            return;
        }
        TypedNumber.at(kitchen, side).ifPresent(number -> both(bound, number, typed, path));
    }

    private void both(JsonNode bound, TypedNumber number, JsonNode typed, String path) {
        var price = bound.get("shadowPrice");
        if (price == null || price.isNull()) {
            tally.met("bounds without a price");
            return;
        }
        boolean straight = isStraight(typed, path);
        if (price.has("jumpWhenRaised")) {
            jump(price.get("jumpWhenRaised"), number, 1, path);
        } else {
            rate(price.get("whenRaised"), price.get("to"), number, 1, straight, path);
        }
        if (price.has("jumpWhenLowered")) {
            jump(price.get("jumpWhenLowered"), number, -1, path);
        } else {
            rate(price.get("whenLowered"), price.get("from"), number, -1, straight, path);
        }
    }

    /** However little or far the number is moved, the least cost is as much higher. */
    private void jump(JsonNode jump, TypedNumber number, int direction, String path) {
        var from = KitchenDraw.decimal(number.value(), 12, RoundingMode.HALF_EVEN);
        for (var step : new BigDecimal[] {SMALL, new BigDecimal("0.01")}) {
            var after = least(number, from.add(step.multiply(BigDecimal.valueOf(direction))));
            boolean holds = after.filter(cost -> Printed.isNear(cost, least.add(Printed.number(jump))))
                    .isPresent();
            tally.claim("jumps", holds, path + " by " + step + ": " + after.map(Printed::text) + " for " + jump);
        }
    }

    /** Whether the number stands alone on its side, so that the cost is piecewise linear in it. */
    private boolean isStraight(JsonNode typed, String path) {
        boolean isAmount = (typed.has("max") ? typed.get("max") : typed.path("min"))
                .asString()
                .endsWith(" kg");
        boolean isRatio = typed.has("per")
                || (path.startsWith("/stages/") && !path.endsWith("/share"))
                || typed.path("state").asString("").equals("cooked");
        return (isAmount || !isRatio) && !answer.reading().isPerCooked();
    }

    private void rate(
            JsonNode rate, @Nullable JsonNode end, TypedNumber number, int direction, boolean straight, String path) {
        var step = SMALL.multiply(BigDecimal.valueOf(direction));
        var from = KitchenDraw.decimal(number.value(), 12, RoundingMode.HALF_EVEN);
        var after = least(number, from.add(step));
        var by = PlainReading.of(SMALL);
        if (rate.isNull()) {
            tally.claim("ends of rates", after.isEmpty(), path + " moved by " + step + ": " + after.map(Printed::text));
            return;
        }
        if (end != null
                && end.isNumber()
                && Printed.number(end)
                                .subtract(number.value())
                                .abs()
                                .subtract(by)
                                .signum()
                        < 0) {
            tally.met("reaches too short to try");
            return;
        }
        var told = Printed.number(rate);
        boolean holds = after.isPresent() && isRate(after.get().subtract(least).divide(by), told, straight);
        tally.claim(
                "rates",
                holds,
                path + (direction > 0 ? " raised " : " lowered ") + told.doubleValue() + " for "
                        + after.map(cost -> cost.subtract(least).divide(by).doubleValue()));
        if (straight && end != null && end.isNumber() && after.isPresent()) {
            reach(told, Printed.number(end), number, direction, path);
        }
    }

    /** Both one-sided rates are changes for one unit more of the number as it is raised, or lowered. */
    private static boolean isRate(BigFraction seen, BigFraction told, boolean straight) {
        return straight
                ? Printed.isNear(seen, told)
                : Printed.within(seen, told, LOOSE)
                        || seen.subtract(told).abs().subtract(LOOSE).signum() < 0;
    }

    private void reach(BigFraction rate, BigFraction end, TypedNumber number, int direction, String path) {
        var way = end.subtract(number.value()).abs();
        var inside = KitchenDraw.decimal(
                number.value().add(way.multiply(direction).multiply(BigFraction.of(999, 1000))),
                15,
                RoundingMode.HALF_EVEN);
        var promised = promised(rate, inside, number);
        tally.claim(
                "reaches of rates",
                least(number, inside)
                        .filter(found -> Printed.isNear(found, promised))
                        .isPresent(),
                path + " at " + inside + " " + Printed.text(promised));
        var beyond = KitchenDraw.decimal(
                end.add(way.add(BigFraction.of(1, 1000)).multiply(direction).multiply(BigFraction.of(1, 100))),
                15,
                RoundingMode.HALF_EVEN);
        var there = least(number, beyond);
        tally.claim(
                "ends of reaches",
                there.isEmpty() || !Printed.within(there.get(), promised(rate, beyond, number), ROUNDED),
                path + " beyond " + end.doubleValue() + " at " + beyond);
    }

    /** The cost that a rate promises at a number. */
    private BigFraction promised(BigFraction rate, BigDecimal at, TypedNumber number) {
        var by = PlainReading.of(at).subtract(number.value()).abs();
        return least.add(rate.multiply(by));
    }

    private Optional<BigFraction> least(TypedNumber number, BigDecimal at) {
        return new PlainAnswer(number.typed(at)).least();
    }
}
