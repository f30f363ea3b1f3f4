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
        for (var segment : json.get("segments")) {
            if (!segment.get("from").isNumber() || !segment.get("to").isNumber()) {
                tally.met("segments without an end");
                continue;
            }
            var from = Printed.number(segment.get("from"));
            var to = Printed.number(segment.get("to"));
            var middle = from.add(to).divide(2);
            var least = new PlainAnswer(moved.at(middle)).least();
            var told = start(json.get("points"), from, to).add(rise(segment, middle.subtract(from)));
            boolean holds = least.isPresent() && Printed.isNear(least.get(), told);
            tally.claim(
                    sort + ", between points",
                    holds,
                    middle.doubleValue() + ": " + Printed.text(told) + " for " + least.map(Printed::text));
            blend(sort, segment, new PlainAnswer(moved.at(middle)), least);
        }
        for (var point : json.get("points")) {
            var least = new PlainAnswer(moved.at(place(point))).least();
            boolean holds = least.isEmpty() || Printed.isNear(least.get(), Printed.number(point.get("costPerKg")));
            tally.claim(sort + ", at points", holds, point + " for " + least.map(Printed::text));
        }
    }

    /** Where a point is true: a hair beside its place for what the cost jumps to. */
    private static BigFraction place(JsonNode point) {
        var kind = point.path("kind").asString("");
        var hair = BigFraction.of(1, 1_000_000_000);
        var at = Printed.number(point.get("at"));
        return kind.equals("just above") ? at.add(hair) : kind.equals("just below") ? at.subtract(hair) : at;
    }

    /** The rise along a segment: slope k / (1 - bend k). */
    private static BigFraction rise(JsonNode segment, BigFraction k) {
        var slope = Printed.number(segment.get("slope"));
        var bend = Printed.number(segment.get("bend"));
        return slope.multiply(k).divide(BigFraction.ONE.subtract(bend.multiply(k)));
    }

    /** The cost at which a segment begins: of the point that is followed by its end. */
    private static BigFraction start(JsonNode points, BigFraction from, BigFraction to) {
        for (int i = 0; i + 1 < points.size(); i++) {
            var a = points.get(i);
            if (Printed.number(a.get("at")).equals(from)
                    && Printed.number(points.get(i + 1).get("at")).equals(to)) {
                return Printed.number(a.get("costPerKg"));
            }
        }
        throw new AssertionError("no points of a segment from " + from);
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
