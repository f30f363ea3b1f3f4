package panade.resolve;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.resolve.TypedKitchen.Offer;
import tools.jackson.databind.JsonNode;

/** Conflicts and cures, each tried by taking members out and by typing what is told. */
final class ConflictClaims {
    private final TypedKitchen kitchen;
    private final Tally tally;

    ConflictClaims(TypedKitchen kitchen, Tally tally) {
        this.kitchen = kitchen;
        this.tally = tally;
    }

    void check(JsonNode json) {
        for (var conflict : json.path("conflicts")) {
            irreducible(conflict);
        }
        for (var cure : json.path("cures")) {
            cure(cure);
        }
        var combined = json.path("combined");
        if (combined.isObject()) {
            combined(combined);
        }
    }

    private void irreducible(JsonNode conflict) {
        var paths = new TreeSet<String>();
        conflict.forEach(path -> paths.add(path.asString()));
        if (kitchen.lists().size() > 1 && paths.toString().contains("/available")) {
            tally.met("conflicts over what several lists have");
            return;
        }
        var all = only(paths);
        tally.claim("conflicts", all.isPresent() && all.get().isEmpty(), paths.toString());
        for (var path : paths) {
            var rest = new HashSet<>(paths);
            rest.remove(path);
            var left = only(rest);
            tally.claim("members of conflicts", left.isPresent() && left.get().isPresent(), paths + " without " + path);
        }
    }

    /** The least cost with those members alone; empty where one of them is not found. */
    private Optional<Optional<BigFraction>> only(Set<String> paths) {
        var found = new HashSet<String>();
        var left = kitchen;
        var bounds = kitchen.brief().path("bounds");
        for (int i = 0; i < bounds.size(); i++) {
            left = sides(left, "/bounds/" + i, paths, found);
        }
        var stages = kitchen.brief().path("stages");
        for (int s = 0; s < stages.size(); s++) {
            left = sides(left, "/stages/" + s + "/share", paths, found);
            for (int i = 0; i < stages.get(s).path("bounds").size(); i++) {
                left = sides(left, "/stages/" + s + "/bounds/" + i, paths, found);
            }
        }
        left = rules(left, paths, found);
        left = offers(left, paths, found);
        return found.equals(paths) ? Optional.of(new PlainAnswer(left).least()) : Optional.empty();
    }

    private TypedKitchen sides(TypedKitchen from, String path, Set<String> paths, Set<String> found) {
        var left = from;
        boolean whole = paths.contains(path);
        if (whole) {
            found.add(path);
        }
        for (var side : new String[] {"/min", "/max"}) {
            if (paths.contains(path + side)) {
                found.add(path + side);
            } else if (!whole && !kitchen.brief().at(path + side).isMissingNode()) {
                left = left.typed(path + side, null);
            }
        }
        return left;
    }

    private TypedKitchen rules(TypedKitchen from, Set<String> paths, Set<String> found) {
        var left = from;
        var rules = kitchen.brief().path("rules");
        // a least use has no say without rules that ask for use, so it goes with the rest
        for (int i = rules.size() - 1; i >= 0; i--) {
            if (paths.contains("/rules/" + i)) {
                found.add("/rules/" + i);
            } else {
                left = left.typed("/rules/" + i, null);
            }
        }
        if (paths.contains("/maxIngredients")) {
            found.add("/maxIngredients");
        } else if (kitchen.brief().has("maxIngredients")) {
            left = left.typed("/maxIngredients", null);
        }
        return left;
    }

    private TypedKitchen offers(TypedKitchen from, Set<String> paths, Set<String> found) {
        var left = from;
        for (var offer : kitchen.pooled()) {
            // what is out of stock is left out, and no member of a conflict
            if (offer.available() == null || offer.available().signum() == 0) {
                continue;
            }
            var path = path(offer);
            if (paths.contains(path)) {
                found.add(path);
            } else {
                left = left.typed(offer, new Offer(offer.ingredient(), offer.supplier(), offer.price(), null));
            }
        }
        return left;
    }

    /** Rows of a price list are told by their number; with several lists a path alone does not say which. */
    private String path(Offer offer) {
        return "/" + kitchen.lists().get(0).indexOf(offer) + "/available";
    }

    private void cure(JsonNode cure) {
        var cured = typed(kitchen, cure);
        if (cured.isEmpty()) {
            tally.met("cures of what these tests do not type");
            return;
        }
        var least = new PlainAnswer(cured.get()).least();
        tally.claim("cures", least.isPresent(), cure.toString());
        typedIn(cured.get(), cure);
        if (least.isPresent() && cure.path("costPerKg").isNumber()) {
            tally.claim(
                    "costs of cures",
                    Printed.is(cure.get("costPerKg"), least.get()),
                    cure + " for " + Printed.text(least.get()));
        }
    }

    /** The program itself must take the number as it told it. */
    private void typedIn(TypedKitchen cured, JsonNode told) {
        var answered = Answered.to(cured, "blend", Answered.BRIEF);
        tally.claim("cures typed in", answered.status() == 0, told + " " + answered.messages());
    }

    private void combined(JsonNode combined) {
        var cured = Optional.of(kitchen);
        for (var move : combined.get("moves")) {
            cured = cured.flatMap(each -> typed(each, move));
        }
        if (cured.isEmpty()) {
            tally.met("cures of what these tests do not type");
            return;
        }
        var least = new PlainAnswer(cured.get()).least();
        boolean holds = least.isPresent()
                && (!combined.get("costPerKg").isNumber() || Printed.is(combined.get("costPerKg"), least.get()));
        typedIn(cured.get(), combined);
        tally.claim("joint cures", holds, combined + " for " + least.map(Printed::text));
    }

    private Optional<TypedKitchen> typed(TypedKitchen from, JsonNode cure) {
        var path = cure.get("path").asString();
        if (cure.get("to").isNumber()) {
            for (var offer : kitchen.pooled()) {
                if (offer.available() != null && path.equals(path(offer))) {
                    return cure.path("unit").asString().equals("kg")
                            ? Optional.of(from.typed(
                                    offer,
                                    new Offer(
                                            offer.ingredient(),
                                            offer.supplier(),
                                            offer.price(),
                                            cure.get("to").decimalValue())))
                            : Optional.empty();
                }
            }
            return TypedNumber.at(from, path)
                    .map(number -> number.typed(cure.get("to").decimalValue()));
        }
        boolean isDropped = cure.get("to").asString().equals("dropped");
        return isDropped && !from.brief().at(path).isMissingNode()
                ? Optional.of(from.typed(path, null))
                : Optional.empty();
    }
}
