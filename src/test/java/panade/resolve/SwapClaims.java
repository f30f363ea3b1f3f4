package panade.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;

/** What {@code swap} says of one kitchen with an ingredient out, tried by taking ingredients off the price lists. */
final class SwapClaims {
    private final TypedKitchen kitchen;
    private final String out;
    private final Tally tally;

    SwapClaims(TypedKitchen kitchen, String out, Tally tally) {
        this.kitchen = kitchen;
        this.out = out;
        this.tally = tally;
    }

    void check(Answered answered) {
        var json = answered.json();
        if (!json.has("after")) {
            tally.claim("swaps", false, answered.toString());
            return;
        }
        outcome("costs after a swap", json.get("after"), new PlainAnswer(kitchen.without(List.of(out))).least());
        var rivals = StreamSupport.stream(json.path("standIns").spliterator(), false)
                .map(each -> each.get("ingredient").asString())
                .filter(this::sharesAKind)
                .toList();
        json.path("standIns").forEach(each -> standIn(each, rivals));
    }

    private void outcome(String sort, JsonNode told, Optional<BigFraction> least) {
        var status = told.path("status").asString("");
        if (status.equals("optimal")) {
            boolean holds = least.isPresent() && Printed.is(told.at("/cost/perKg"), least.get());
            tally.claim(sort, holds, told.at("/cost/perKg") + " for " + least.map(Printed::text));
        } else {
            tally.claim(
                    sort, status.equals("infeasible") && least.isEmpty(), status + " for " + least.map(Printed::text));
        }
    }

    private boolean sharesAKind(String id) {
        var mine = kinds(out);
        return kinds(id).stream().anyMatch(mine::contains);
    }

    private List<String> kinds(String id) {
        for (var one : kitchen.set().get("ingredients")) {
            if (one.get("id").asString().equals(id)) {
                return StreamSupport.stream(one.get("kinds").spliterator(), false)
                        .map(JsonNode::asString)
                        .toList();
            }
        }
        return List.of();
    }

    private void standIn(JsonNode told, List<String> rivals) {
        var id = told.get("ingredient").asString();
        var without = new ArrayList<>(rivals);
        without.remove(id);
        without.add(out);
        var alone = kitchen.without(without);
        var least = new PlainAnswer(alone).least();
        if (told.path("costPerKg").isNumber()) {
            boolean holds = least.isPresent() && Printed.is(told.get("costPerKg"), least.get());
            tally.claim("costs of stand-ins", holds, told + " for " + least.map(Printed::text));
            return;
        }
        tally.claim("stand-ins that fail", least.isEmpty(), told + " for " + least.map(Printed::text));
        var fails = told.path("fails");
        var number = TypedNumber.at(alone, fails.path("path").asString(""));
        if (fails.path("reaches").isNumber() && number.isPresent()) {
            var there = new PlainAnswer(number.get().typed(fails.get("reaches").decimalValue())).least();
            tally.claim("how far stand-ins reach", there.isPresent(), told.toString());
        }
    }
}
