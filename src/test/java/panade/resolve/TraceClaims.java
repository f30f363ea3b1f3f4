package panade.resolve;

import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;

/** Curves of {@code trace}, solved again at their points and halfway between. */
final class TraceClaims {
    private final TypedKitchen kitchen;
    private final Tally tally;

    TraceClaims(TypedKitchen kitchen, Tally tally) {
        this.kitchen = kitchen;
        this.tally = tally;
    }

    /** The kitchen with the traced number in another place. */
    private interface Moved {
        TypedKitchen at(BigFraction place);
    }

    void price(Answered answered) {
        var json = answered.json();
        if (!json.has("segments")) {
            tally.claim("price curves", false, answered.toString());
            return;
        }
        var offer = kitchen.pooled().stream()
                .filter(each -> each.ingredient().equals(json.at("/of/price").asString())
                        && each.supplier().equals(json.at("/of/supplier").asString()))
                .findFirst()
                .orElseThrow();
        curve(
                "price curves",
                json,
                at -> kitchen.typed(
                        offer,
                        new TypedKitchen.Offer(
                                offer.ingredient(),
                                offer.supplier(),
                                KitchenDraw.decimal(at, 20, RoundingMode.HALF_EVEN),
                                offer.available())));
    }

    void bound(Answered answered, String path) {
        var json = answered.json();
        var number = TypedNumber.at(kitchen, path);
        if (!json.has("segments") || number.isEmpty()) {
            tally.claim("bound curves", false, answered.toString());
            return;
        }
        curve("bound curves", json, at -> number.get().typed(KitchenDraw.decimal(at, 15, RoundingMode.HALF_EVEN)));
    }

    private void curve(String sort, JsonNode json, Moved moved) {
        boolean bent = json.at("/of/bent").asBoolean(false);
        for (var segment : json.get("segments")) {
            if (!segment.get("from").isNumber() || !segment.get("to").isNumber()) {
                tally.met("segments without an end");
                continue;
            }
            var from = Printed.number(segment.get("from"));
            var to = Printed.number(segment.get("to"));
            var middle = from.add(to).divide(2);
            var least = new PlainAnswer(moved.at(middle)).least();
            var told = between(json.get("points"), from, to);
            if (told.isEmpty() || bent) {
                tally.met("segments that are bent");
            } else {
                boolean holds = least.isPresent() && Printed.isNear(least.get(), told.get());
                tally.claim(
                        sort + ", between points",
                        holds,
                        middle.doubleValue() + ": " + Printed.text(told.get()) + " for " + least.map(Printed::text));
            }
            blend(sort, segment, new PlainAnswer(moved.at(middle)), least);
        }
        for (var point : json.get("points")) {
            var least = new PlainAnswer(moved.at(Printed.number(point.get("at")))).least();
            boolean holds = least.isEmpty() || Printed.isNear(least.get(), Printed.number(point.get("costPerKg")));
            tally.claim(sort + ", at points", holds, point + " for " + least.map(Printed::text));
        }
    }

    /** The cost halfway between the two points that a segment joins. */
    private static Optional<BigFraction> between(JsonNode points, BigFraction from, BigFraction to) {
        for (int i = 0; i + 1 < points.size(); i++) {
            var a = points.get(i);
            var b = points.get(i + 1);
            if (Printed.number(a.get("at")).equals(from)
                    && Printed.number(b.get("at")).equals(to)) {
                return Optional.of(Printed.number(a.get("costPerKg"))
                        .add(Printed.number(b.get("costPerKg")))
                        .divide(2));
            }
        }
        return Optional.empty();
    }

    private void blend(String sort, JsonNode segment, PlainAnswer answer, Optional<BigFraction> least) {
        if (sort.startsWith("price")
                && segment.has("blend")
                && least.isPresent()
                && !answer.reading().isPerCooked()) {
            var shares = new Shares(answer.reading(), segment.get("blend"));
            var cost = PlainReading.dot(answer.reading().costs(), shares.all());
            tally.claim(
                    sort + ", blends",
                    Printed.isNear(cost, least.get()),
                    segment.get("from") + ": " + Printed.text(cost) + " for " + Printed.text(least.get()));
        }
    }
}
