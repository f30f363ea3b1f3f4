package panade.resolve;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;

/** Entering prices and the range in which a price leaves the blend the best, each tried by typing another price. */
final class PriceClaims {
    private static final BigFraction HAIR = BigFraction.of(1, 1_000_000_000);
    private static final BigFraction DISCOUNTED = BigFraction.of(95, 100);

    private final TypedKitchen kitchen;
    private final PlainAnswer answer;
    private final BigFraction least;
    private final Tally tally;

    PriceClaims(TypedKitchen kitchen, PlainAnswer answer, BigFraction least, Tally tally) {
        this.kitchen = kitchen;
        this.answer = answer;
        this.least = least;
        this.tally = tally;
    }

    void check(JsonNode json, Shares shares) {
        for (var unused : json.path("unused")) {
            entry(unused);
        }
        for (var used : json.path("prices")) {
            range(used, shares);
        }
    }

    private TypedKitchen.Offer offer(JsonNode told) {
        var id = told.get("ingredient").asString();
        var supplier = told.path("supplier").asString("");
        return kitchen.pooled().stream()
                .filter(offer -> offer.ingredient().equals(id))
                .filter(offer -> supplier.isEmpty() || offer.supplier().equals(supplier))
                .min(Comparator.comparing(TypedKitchen.Offer::price))
                .orElseThrow();
    }

    private Optional<BigFraction> leastAt(TypedKitchen.Offer offer, BigFraction price) {
        return new PlainAnswer(at(offer, price)).least();
    }

    private TypedKitchen at(TypedKitchen.Offer offer, BigFraction price) {
        var number = KitchenDraw.decimal(price, 20, RoundingMode.HALF_EVEN);
        return kitchen.typed(
                offer, new TypedKitchen.Offer(offer.ingredient(), offer.supplier(), number, offer.available()));
    }

    private boolean isUnchanged(Optional<BigFraction> cost) {
        return cost.isPresent() && Printed.isNear(cost.get(), least);
    }

    private void entry(JsonNode unused) {
        var offer = offer(unused);
        if (unused.get("entersAt").isNull()) {
            tally.claim("never entering", isUnchanged(leastAt(offer, BigFraction.ZERO)), unused.toString());
            return;
        }
        var at = Printed.number(unused.get("entersAt"));
        tally.claim("entering prices, above", isUnchanged(leastAt(offer, at)), unused.toString());
        if (at.signum() == 0) {
            return;
        }
        var below = at.multiply(BigFraction.ONE.subtract(BigFraction.of(1, 1000)));
        var cheaper = leastAt(offer, below);
        tally.claim(
                "entering prices, below",
                cheaper.isPresent() && PlainAnswer.compare(cheaper.get(), least) < 0,
                unused.toString());
        saving(unused, offer, at);
        share(unused, offer, at);
    }

    private void saving(JsonNode unused, TypedKitchen.Offer offer, BigFraction at) {
        var saved = unused.path("savingPerKg");
        if (saved.isNumber()) {
            var after = leastAt(offer, at.multiply(DISCOUNTED));
            boolean holds = after.isPresent() && Printed.isNear(least.subtract(after.get()), Printed.number(saved));
            tally.claim(
                    "savings of entering",
                    holds,
                    unused + " for " + after.map(cost -> Printed.text(least.subtract(cost))));
        }
    }

    /** The share told is that of a blend that is best just below the price. */
    private void share(JsonNode unused, TypedKitchen.Offer offer, BigFraction at) {
        var told = unused.path("share");
        if (!told.isNumber()) {
            return;
        }
        var below = new PlainAnswer(at(offer, at.multiply(BigFraction.ONE.subtract(HAIR))));
        var cost = below.least().orElseThrow();
        var form = below.reading().form(v -> PlainReading.one(v.ingredient().equals(offer.ingredient())));
        var slack = java.util.List.of(below.costingAtMost(cost));
        boolean holds = below.least(form, slack)
                        .filter(min -> min.subtract(Printed.NEAR)
                                        .subtract(Printed.number(told))
                                        .signum()
                                <= 0)
                        .isPresent()
                && below.most(form, slack)
                        .filter(max -> max.add(Printed.NEAR)
                                        .subtract(Printed.number(told))
                                        .signum()
                                >= 0)
                        .isPresent();
        tally.claim(
                "shares on entering",
                holds,
                unused + " between " + below.least(form, slack).map(Printed::text) + " and "
                        + below.most(form, slack).map(Printed::text));
    }

    private void range(JsonNode used, Shares shares) {
        var offer = offer(used);
        end(used, "from", offer, shares, -1);
        end(used, "to", offer, shares, 1);
    }

    private void end(JsonNode used, String name, TypedKitchen.Offer offer, Shares shares, int direction) {
        var told = used.path(name);
        if (!told.isNumber()) {
            var far = direction > 0 ? PlainReading.of(offer.price()).multiply(1000) : BigFraction.ZERO;
            keeps(used, offer, shares, far);
            return;
        }
        var at = Printed.number(told);
        keeps(used, offer, shares, at);
        var way = at.subtract(PlainReading.of(offer.price())).abs();
        var beyond = at.add(way.add(BigFraction.of(1, 100)).multiply(BigFraction.of(direction, 100)));
        if (beyond.signum() > 0) {
            var cost = leastAt(offer, beyond);
            boolean holds = cost.isPresent() && PlainAnswer.compare(cost.get(), costOf(shares, offer, beyond)) < 0;
            tally.claim("ends of price ranges", holds, used + " " + name);
        }
    }

    private void keeps(JsonNode used, TypedKitchen.Offer offer, Shares shares, BigFraction price) {
        var cost = leastAt(offer, price);
        boolean holds = cost.isPresent()
                && Printed.within(cost.get(), costOf(shares, offer, price), PlainReading.of(new BigDecimal("1e-11")));
        tally.claim("price ranges", holds, used + " at " + price.doubleValue() + ": " + cost.map(Printed::text));
    }

    /** What the printed blend costs at another price. */
    private BigFraction costOf(Shares shares, TypedKitchen.Offer offer, BigFraction price) {
        var reading = new PlainAnswer(at(offer, price)).reading();
        var cost = PlainReading.dot(reading.costs(), shares.all());
        return reading.isPerCooked()
                ? cost.divide(PlainReading.dot(answer.reading().cookedWeight(), shares.all()))
                : cost;
    }
}
