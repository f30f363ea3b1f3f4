package panade.resolve;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;

/** What {@code reach} says of one kitchen and a target, tried by typing each move and each price. */
final class ReachClaims {
    private final TypedKitchen kitchen;
    private final BigFraction target;
    private final BigFraction least;
    private final boolean hasRules;
    private final Tally tally;

    /**
     * The claims.
     *
     * @param target money per kilogram, as typed
     * @param least the least cost of the kitchen
     */
    ReachClaims(TypedKitchen kitchen, BigDecimal target, BigFraction least, Tally tally) {
        this.kitchen = kitchen;
        this.target = PlainReading.of(target);
        this.least = least;
        this.hasRules = kitchen.brief().has("rules") || kitchen.brief().has("maxIngredients");
        this.tally = tally;
    }

    void check(Answered answered) {
        var json = answered.json();
        if (!json.has("met")) {
            tally.claim("targets", false, answered.toString());
            return;
        }
        boolean met = PlainAnswer.compare(least, target) <= 0;
        tally.claim("targets", json.get("met").asBoolean() == met, json.get("met") + " for " + met);
        var gap = Printed.number(json.get("gapPerKg"));
        tally.claim("gaps", Printed.isNear(gap.abs(), least.subtract(target).abs()), gap + "");
        json.path("moves").forEach(this::move);
        var pair = json.path("pair");
        if (!pair.isEmpty()) {
            pair(pair);
        }
        json.path("prices").forEach(this::price);
        json.path("atTarget").forEach(this::extreme);
    }

    private void move(JsonNode move) {
        var number = TypedNumber.at(kitchen, move.get("path").asString());
        if (number.isEmpty()) {
            tally.met("moves of what these tests do not type");
            return;
        }
        if (!move.get("to").isNumber()) {
            if (!hasRules) {
                var without = new PlainAnswer(number.get().removed()).least();
                boolean holds = without.isPresent() && PlainAnswer.compare(without.get(), target) > 0;
                tally.claim("moves that can't alone", holds, move + " for " + without.map(Printed::text));
            }
            return;
        }
        var to = move.get("to").decimalValue();
        var there = new PlainAnswer(number.get().typed(to)).least();
        tally.claim("moves", isEnough(there), move + " for " + there.map(Printed::text));
        cost("costs of moves", move, there);
        var answered = Answered.to(number.get().typed(to), "blend", Answered.BRIEF);
        tally.claim("moves typed in", answered.status() == 0, move + " " + answered.messages());
        // numbers are told to six digits, so that two of the last may be more than is needed
        var way = number.get().value().subtract(PlainReading.of(to));
        var digits = PlainReading.of(to).abs().multiply(BigFraction.of(2, 100_000));
        var back = PlainReading.of(to).add(digits.multiply(way.signum()));
        if (!hasRules && way.abs().subtract(digits).signum() > 0) {
            var less =
                    new PlainAnswer(number.get().typed(KitchenDraw.decimal(back, 15, RoundingMode.HALF_EVEN))).least();
            tally.claim("moves that are least", !isEnough(less), move + " at " + back.doubleValue());
        }
    }

    private boolean isEnough(Optional<BigFraction> cost) {
        return cost.isPresent() && PlainAnswer.compare(cost.get(), target) <= 0;
    }

    private void cost(String sort, JsonNode told, Optional<BigFraction> cost) {
        if (!hasRules && told.path("costPerKg").isNumber() && cost.isPresent()) {
            tally.claim(sort, Printed.is(told.get("costPerKg"), cost.get()), told + " for " + Printed.text(cost.get()));
        }
    }

    private void pair(JsonNode pair) {
        var both = Optional.of(kitchen);
        for (var move : pair) {
            both = both.flatMap(each -> TypedNumber.at(each, move.get("path").asString())
                    .map(number -> number.typed(move.get("to").decimalValue())));
        }
        if (both.isPresent()) {
            var cost = new PlainAnswer(both.get()).least();
            tally.claim("pairs", isEnough(cost), pair + " for " + cost.map(Printed::text));
        }
    }

    private void price(JsonNode told) {
        var offer = kitchen.pooled().stream()
                .filter(each -> each.ingredient().equals(told.get("ingredient").asString())
                        && each.supplier().equals(told.get("supplier").asString()))
                .findFirst()
                .orElseThrow();
        boolean can = told.get("to").isNumber();
        // rounded once to fifteen digits, a price may be a hair too dear
        var price = can
                ? Printed.number(told.get("to")).multiply(BigFraction.ONE.subtract(BigFraction.of(1, 1_000_000_000)))
                : BigFraction.ZERO;
        var typed = new TypedKitchen.Offer(
                offer.ingredient(),
                offer.supplier(),
                KitchenDraw.decimal(price, 20, RoundingMode.FLOOR),
                offer.available());
        var cost = new PlainAnswer(kitchen.typed(offer, typed)).least();
        if (can || !hasRules) {
            tally.claim("prices", isEnough(cost) == can, told + " for " + cost.map(Printed::text));
        }
    }

    private void extreme(JsonNode told) {
        var answer = new PlainAnswer(kitchen);
        var property = told.get("property").asString();
        if (!List.of("WATER", "PROCNT", "FAT", "NA", "bite").contains(property) || hasRules) {
            return;
        }
        var within = List.of(answer.costingAtMost(target));
        var form = answer.reading().content(property);
        var end = told.get("sense").asString().equals("max") ? answer.most(form, within) : answer.least(form, within);
        int factor = property.equals("NA") ? 100_000 : property.equals("bite") ? 1 : 100;
        boolean holds = end.isPresent()
                && Printed.isNear(Printed.number(told.get("value")), end.get().multiply(factor));
        tally.claim("what spare money buys", holds, told + " for " + end.map(Printed::text));
    }
}
