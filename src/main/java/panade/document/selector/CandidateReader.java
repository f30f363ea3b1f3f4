package panade.document.selector;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Overriding;
import panade.document.syntax.Problems;
import panade.domain.pantry.AllergenWords;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;

/** Finds which ingredients may be used: those that can be bought, are allowed and are not avoided. */
public final class CandidateReader {
    private static final String IDS = "a list of ids, such as [\"carrageenan\"]";

    private final Names names;
    private final Problems problems;
    private final Expect expect;
    private final List<Reason> reasons = new ArrayList<>();

    /** Something that keeps ingredients out. */
    record Reason(String name, String path, Set<String> ids) {}

    public CandidateReader(Names names) {
        this.names = names;
        this.problems = names.problems();
        this.expect = new Expect(problems);
    }

    /** Everything that is kept out. */
    public Set<String> keptOut() {
        var ids = new LinkedHashSet<String>();
        reasons.forEach(reason -> ids.addAll(reason.ids()));
        return ids;
    }

    /** What keeps ingredients out, each with all it keeps out. */
    public List<Reason> reasons() {
        return List.copyOf(reasons);
    }

    /** Ids of all ingredients that may be used. */
    public Set<String> read(ObjectNode brief, List<String> without, List<Offer> offers) {
        var candidates = new LinkedHashSet<String>();
        offers.stream().filter(CandidateReader::isToBeHad).forEach(offer -> candidates.add(offer.ingredient()));
        brief.field("only").ifPresent(field -> keepOnly(field.value(), candidates));
        dropWithout(without, candidates);
        var avoid = brief.field("avoid")
                .flatMap(field -> expect.object(field.value(), "an object, such as {\"allergens\": [\"soy\"]}"));
        avoid.ifPresent(object -> new Fields(object, problems, "allergens", "ingredients"));
        avoid.flatMap(object -> object.field("ingredients")).ifPresent(field -> dropAvoided(field.value(), candidates));
        avoid.flatMap(object -> object.field("allergens")).ifPresent(field -> dropCarriers(field, candidates));
        return candidates;
    }

    /** Whether any of the goods can be had at all. */
    public static boolean isToBeHad(Offer offer) {
        var available = offer.available();
        return available == null || available.base().signum() > 0;
    }

    private void keepOnly(Node node, Set<String> candidates) {
        if (expect.list(node, IDS).isPresent() && names.set().isPresent()) {
            var kept = named(node);
            var rest = new LinkedHashSet<>(names.set().get().ingredients().keySet());
            rest.removeAll(kept);
            drop("what \"only\" leaves out", node.origin().pointer(), rest, candidates);
        } else if (node instanceof Node.ArrayNode) {
            named(node);
        }
    }

    private void dropWithout(List<String> without, Set<String> candidates) {
        for (var written : without) {
            var id = names.id(written);
            if (names.knowsIngredient(Overriding.optionOrigin("--without"), id)) {
                names.set().ifPresent(set -> drop(id, "--without", set.withVariants(id), candidates));
            }
        }
    }

    private void drop(String name, String path, Set<String> ids, Set<String> candidates) {
        reasons.add(new Reason(name, path, ids));
        candidates.removeAll(ids);
    }

    private void dropAvoided(Node node, Set<String> candidates) {
        for (var id : expect.texts(node, IDS)) {
            if (names.knowsIngredient(id)) {
                names.set()
                        .ifPresent(
                                set -> drop(id.text(), id.origin().pointer(), set.withVariants(id.text()), candidates));
            }
        }
    }

    private Set<String> named(Node node) {
        var ids = new LinkedHashSet<String>();
        for (var id : expect.texts(node, IDS)) {
            if (names.knowsIngredient(id)) {
                names.set().ifPresent(set -> ids.addAll(set.withVariants(id.text())));
            }
        }
        return ids;
    }

    private void dropCarriers(Field field, Set<String> candidates) {
        var allergens = expect.texts(field.value(), "a list of allergens, such as [\"soy\"]");
        var set = names.set();
        if (set.isPresent() && !allergens.isEmpty()) {
            tellUnknown(field.value(), candidates, set.get());
            allergens.forEach(allergen ->
                    AllergenWords.read(allergen.text()).forEach(word -> remarkOn(allergen, word, set.get())));
            allergens.forEach(allergen ->
                    drop(allergen.text(), allergen.origin().pointer(), carriers(set.get(), allergen), candidates));
        }
    }

    private static Optional<Ingredient> ingredient(IngredientSet set, String id) {
        return Optional.ofNullable(set.ingredients().get(id));
    }

    private static Set<String> carriers(IngredientSet set, TextNode allergen) {
        var words = AllergenWords.read(allergen.text());
        var ids = new LinkedHashSet<String>();
        set.ingredients().keySet().stream()
                .filter(id -> words.stream().anyMatch(word -> carries(ingredient(set, id), word)))
                .forEach(ids::add);
        return ids;
    }

    private static boolean carries(Optional<Ingredient> ingredient, String allergen) {
        return ingredient
                .flatMap(found -> Optional.ofNullable(found.allergens()))
                .filter(carried -> carried.stream().anyMatch(word -> AllergenWords.mayBe(word, allergen)))
                .isPresent();
    }

    private void tellUnknown(Node place, Set<String> candidates, IngredientSet set) {
        var unknown = new TreeSet<String>();
        candidates.stream()
                .filter(id -> ingredient(set, id)
                        .filter(found -> found.allergens() == null)
                        .isPresent())
                .forEach(unknown::add);
        if (!unknown.isEmpty()) {
            problems.add(
                    place.origin(),
                    "Nobody says which allergens these carry: \"" + String.join("\", \"", unknown) + "\"",
                    "Expected \"allergens\": [] in the ingredient set for what carries none.");
        }
    }

    private void remarkOn(TextNode place, String allergen, IngredientSet set) {
        boolean carried =
                set.ingredients().values().stream().anyMatch(ingredient -> carries(Optional.of(ingredient), allergen));
        if (!carried) {
            problems.remark(
                    place.origin(),
                    "No ingredient of the set carries the allergen \"" + allergen
                            + "\", so this keeps nothing out. Write it as the set does, or leave it out.");
        } else if (!AllergenWords.isKnown(allergen)) {
            problems.remark(
                    place.origin(),
                    "No law's list knows the allergen \"" + allergen + "\"; what carries \""
                            + AllergenWords.nearest(allergen).orElse(allergen) + "\" is kept out. Write \""
                            + AllergenWords.nearest(allergen).orElse(allergen) + "\" if that is meant.");
        }
    }
}
