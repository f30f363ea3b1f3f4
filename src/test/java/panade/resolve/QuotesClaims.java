package panade.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.resolve.PlainSimplex.Row;
import tools.jackson.databind.JsonNode;

/** What {@code quotes} says of one kitchen under several lists. */
final class QuotesClaims {
    /** What shares printed to fifteen digits leave open where one of them is all that can be had. */
    private static final BigFraction LOOSE = BigFraction.of(1, 100_000_000);

    private final TypedKitchen kitchen;
    private final List<PlainAnswer> answers;
    private final Tally tally;

    QuotesClaims(TypedKitchen kitchen, Tally tally) {
        this.kitchen = kitchen;
        this.answers = kitchen.lists().stream()
                .map(list -> new PlainAnswer(kitchen.withLists(List.of(list))))
                .toList();
        this.tally = tally;
    }

    void check(Answered answered) {
        var json = answered.json();
        if (answered.status() == 3 && answers.get(0).reading().isPerCooked()) {
            tally.met("quotes that refuse a cost per cooked weight");
            return;
        }
        if (!json.has("best")) {
            tally.claim("quotes", false, answered.toString());
            return;
        }
        var least = new ArrayList<BigFraction>();
        for (int i = 0; i < answers.size(); i++) {
            var best = answers.get(i).least();
            cost("costs under a list", json.get("best").get(i), best);
            best.ifPresent(least::add);
        }
        cost("costs under all lists", json.get("pooled"), new PlainAnswer(kitchen).least());
        for (int i = 0; i < answers.size(); i++) {
            for (int j = 0; j < answers.size(); j++) {
                costOf(json, i, j);
            }
        }
        if (least.size() == answers.size()
                && json.path("regret").path("worstPerKg").isNumber()) {
            regret(json, least);
        }
    }

    private void cost(String sort, JsonNode told, Optional<BigFraction> least) {
        var printed = told.at("/cost/perKg");
        boolean holds = printed.isNumber()
                ? least.isPresent() && Printed.is(printed, least.get())
                : least.isEmpty() && told.path("status").asString("").equals("infeasible");
        tally.claim(sort, holds, printed + " for " + least.map(Printed::text));
    }

    /** What the best blend of one list costs under another: each ingredient from whoever sells it cheapest there. */
    private void costOf(JsonNode json, int i, int j) {
        var blend = json.get("best").get(i).path("blend");
        if (blend.isMissingNode()) {
            return;
        }
        var told = json.get("costOf").get(i).get(j);
        var reading = answers.get(j).reading();
        var rows = new ArrayList<Row>();
        for (var row : reading.rows()) {
            if (row.path().startsWith("available")) {
                rows.add(new Row(row.form(), row.right().add(Printed.NEAR)));
            }
        }
        boolean isSold = true;
        for (var id : new Shares(answers.get(i).reading(), blend).ids()) {
            var share = new Shares(answers.get(i).reading(), blend).of(id);
            var form = reading.form(v -> PlainReading.one(v.ingredient().equals(id)));
            isSold &= share.signum() == 0 || form.contains(BigFraction.ONE);
            rows.add(new Row(form, share));
            rows.add(new Row(PlainAnswer.negated(form), share.negate()));
        }
        var cheapest = isSold ? PlainSimplex.minimise(reading.costs(), rows) : Optional.<List<BigFraction>>empty();
        var cost = cheapest.map(point -> PlainReading.dot(point, reading.costs()));
        boolean holds = told.isNumber()
                ? cost.isPresent() && Printed.within(Printed.number(told), cost.get(), LOOSE)
                : cost.isEmpty();
        if (!reading.isPerCooked()) {
            tally.claim(
                    "blends under other lists",
                    holds,
                    i + " under " + j + ": " + told + " for " + cost.map(Printed::text));
        }
    }

    /** One program over what each list would sell for the same blend. */
    private void regret(JsonNode json, List<BigFraction> least) {
        if (kitchen.brief().has("rules")
                || kitchen.brief().has("maxIngredients")
                || answers.get(0).reading().isPerCooked()) {
            tally.met("single blends under rules or per cooked weight");
            return;
        }
        int width = answers.stream()
                        .mapToInt(each -> each.reading().variables().size())
                        .sum()
                + 1;
        var rows = new ArrayList<Row>();
        var average = new ArrayList<>(Collections.nCopies(width, BigFraction.ZERO));
        int offset = 0;
        for (int j = 0; j < answers.size(); j++) {
            for (var row : answers.get(j).rows()) {
                rows.add(new Row(placed(row.form(), offset, width), row.right()));
            }
            var costs = answers.get(j).reading().costs();
            var row = placed(costs, offset, width);
            row.set(width - 1, BigFraction.ONE.negate());
            rows.add(new Row(row, least.get(j)));
            for (int k = 0; k < costs.size(); k++) {
                average.set(offset + k, costs.get(k).divide(answers.size()));
            }
            link(rows, j, offset, width);
            offset += costs.size();
        }
        var worst = new ArrayList<>(Collections.nCopies(width, BigFraction.ZERO));
        worst.set(width - 1, BigFraction.ONE);
        single("least regrets", json.at("/regret/worstPerKg"), worst, rows);
        single("least averages", json.at("/average/perKg"), average, rows);
    }

    /** What goes in is the same whichever list sells it. */
    private void link(List<Row> rows, int j, int offset, int width) {
        var first = answers.get(0).reading();
        var mine = answers.get(j).reading();
        var uses = new ArrayList<List<String>>();
        first.variables().forEach(v -> uses.add(List.of(v.ingredient(), v.stage())));
        mine.variables().forEach(v -> uses.add(List.of(v.ingredient(), v.stage())));
        for (var use : uses.stream().distinct().toList()) {
            var there =
                    placed(first.form(v -> PlainReading.one(use.equals(List.of(v.ingredient(), v.stage())))), 0, width);
            var here = placed(
                    mine.form(v -> PlainReading.one(use.equals(List.of(v.ingredient(), v.stage())))), offset, width);
            var difference = PlainReading.plus(there, PlainAnswer.negated(here));
            rows.add(new Row(difference, BigFraction.ZERO));
            rows.add(new Row(PlainAnswer.negated(difference), BigFraction.ZERO));
        }
    }

    private static List<BigFraction> placed(List<BigFraction> form, int offset, int width) {
        var all = new ArrayList<>(Collections.nCopies(width, BigFraction.ZERO));
        for (int k = 0; k < form.size(); k++) {
            all.set(offset + k, form.get(k));
        }
        return all;
    }

    private void single(String sort, JsonNode told, List<BigFraction> form, List<Row> rows) {
        var least = PlainSimplex.minimise(form, rows).map(point -> PlainReading.dot(form, point));
        boolean holds = least.isPresent() && told.isNumber() && Printed.isNear(Printed.number(told), least.get());
        tally.claim(sort, holds, told + " for " + least.map(Printed::text));
    }
}
