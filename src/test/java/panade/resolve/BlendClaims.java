package panade.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;

/** What {@code blend} says of one kitchen, solved again figure by figure. */
final class BlendClaims {
    /** The cost within which there is room is cut to twelve digits, so its ends are a hair further in. */
    private static final BigFraction CUT = BigFraction.of(1, 100_000_000);

    private final TypedKitchen kitchen;
    private final PlainAnswer answer;
    private final Tally tally;

    BlendClaims(TypedKitchen kitchen, Tally tally) {
        this.kitchen = kitchen;
        this.answer = new PlainAnswer(kitchen);
        this.tally = tally;
    }

    /** Checks an answer; gives whether it was a blend. */
    boolean check(Answered answered) {
        var json = answered.json();
        var least = answer.least();
        var status = json.path("status").asString("no status, exit " + answered.status());
        if (!List.of("optimal", "infeasible").contains(status)) {
            tally.claim("answers", status.equals("undecided"), status + answered.messages());
            return false;
        }
        boolean isOptimal = status.equals("optimal");
        tally.claim("answers", isOptimal == least.isPresent(), status + ", " + least.map(Printed::text));
        if (!isOptimal || least.isEmpty()) {
            new ConflictClaims(kitchen, tally).check(json);
            return false;
        }
        optimum(json, least.get());
        return true;
    }

    private void optimum(JsonNode json, BigFraction least) {
        tally.claim(
                "least costs",
                Printed.is(json.at("/cost/perKg"), least),
                json.at("/cost/perKg") + " for " + Printed.text(least));
        var shares = new Shares(answer.reading(), json.get("blend"));
        lines(json.get("blend"), shares);
        new BoundClaims(kitchen, answer, least, tally).check(json.get("bounds"), shares);
        if (!kitchen.brief().has("rules") && !kitchen.brief().has("maxIngredients")) {
            new PriceClaims(kitchen, answer, least, tally).check(json, shares);
            room(json.path("room"), least);
        }
    }

    private void lines(JsonNode blend, Shares shares) {
        var total = shares.all().stream().reduce(BigFraction.ZERO, BigFraction::add);
        tally.claim("blends that are whole", Printed.isNear(total, BigFraction.ONE), Printed.text(total));
        for (var row : answer.reading().rows()) {
            var margin = PlainReading.dot(row.form(), shares.all())
                    .subtract(row.right())
                    .multiply(row.sign());
            tally.claim("limits kept by blends", margin.add(Printed.NEAR).signum() >= 0, row.path());
        }
        boolean isAllowed = answer.leastWith(holding(shares)).isPresent();
        tally.claim("rules kept by blends", isAllowed, blend.toString());
    }

    /** Rows that hold each ingredient within a hair of its share, none of it where it has none. */
    private List<PlainSimplex.Row> holding(Shares shares) {
        var rows = new ArrayList<PlainSimplex.Row>();
        for (var id : shares.ids()) {
            var form =
                    answer.reading().form(v -> PlainReading.one(v.ingredient().equals(id)));
            var share = shares.of(id);
            var hair = share.signum() == 0 ? BigFraction.ZERO : Printed.NEAR;
            rows.add(new PlainSimplex.Row(form, share.add(hair)));
            rows.add(new PlainSimplex.Row(PlainAnswer.negated(form), hair.subtract(share)));
        }
        return rows;
    }

    private void room(JsonNode room, BigFraction least) {
        var within = List.of(answer.costingAtMost(least.multiply(BigFraction.of(101, 100))));
        for (var each : room) {
            var id = each.get("ingredient").asString();
            var form =
                    answer.reading().form(v -> PlainReading.one(v.ingredient().equals(id)));
            claimEnd("room", each.get("min"), answer.least(form, within), id);
            claimEnd("room", each.get("max"), answer.most(form, within), id);
        }
    }

    private void claimEnd(String sort, JsonNode printed, Optional<BigFraction> exact, String id) {
        boolean holds = exact.filter(end -> end.subtract(Printed.number(printed))
                                .abs()
                                .subtract(CUT)
                                .signum()
                        <= 0)
                .isPresent();
        tally.claim(sort, holds, id + " " + printed + " for " + exact.map(Printed::text));
    }
}
