package panade.cli.interview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import panade.domain.pantry.IngredientSet;
import panade.intake.Beginning;
import panade.intake.Beginning.Item;
import panade.intake.table.Slug;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.UnitPrice;

/** The questions that a first pantry and brief are made of, or a further brief for a pantry that is there. */
public final class Interview {
    private final Dialogue dialogue;
    private final Function<String, Optional<IngredientSet>> pantries;
    private final Predicate<String> productIsThere;

    /**
     * Questions.
     *
     * @param pantries the pantry of a name, if it is there already
     * @param productIsThere whether a product of a name is there already, and so not to be taken
     */
    public Interview(
            Dialogue dialogue, Function<String, Optional<IngredientSet>> pantries, Predicate<String> productIsThere) {
        this.dialogue = dialogue;
        this.pantries = pantries;
        this.productIsThere = productIsThere;
    }

    /** All answers together. */
    public Beginning hold() {
        return dialogue.hold(this::ask);
    }

    private Beginning ask() {
        dialogue.say("A few questions; Enter takes what stands in brackets, or leaves a thing open. Answer back for the"
                + " question before. Answers are kept as you give them.");
        dialogue.say("");
        var pantry = named("What is your pantry called?", "my pantry", name -> false);
        var there = pantries.apply(pantry)
                .map(set -> set.ingredients().values().stream().map(Known::of).toList())
                .orElse(List.of());
        var product = named("What do you want to make?", "my mince", productIsThere);
        var currency = dialogue.text("Which money do you pay in?", "USD");
        var batch = dialogue.ask(
                "How much do you make at once?",
                "20 lb",
                "Expected a weight, such as 20 lb or 5 kg.",
                Interview::weight);
        var groups = new GroupQuestions(dialogue);
        var only = there.isEmpty() ? List.<String>of() : chosen(there, groups);
        var items = new ArrayList<>(groups.kinds(groups.offered(items(there))));
        var scores = groups.score(items);
        var in = Stream.concat(
                        there.stream().filter(known -> only.isEmpty() || only.contains(known.id())),
                        items.stream().map(Known::of))
                .toList();
        var wishing = new WishQuestions(dialogue);
        var wishes = wishing.ask(in, scores.keySet());
        var stages = groups.stages(in, wishing);
        var ids = only.isEmpty() ? only : in.stream().map(Known::id).toList();
        return new Beginning(pantry, product, currency, batch, items, scores, ids, wishes, stages, target());
    }

    private String target() {
        return dialogue.ask(
                "What may a pound of ingredients cost, such as 1.50/lb?",
                "",
                "Expected a price per weight, such as 1.50/lb, or nothing.",
                text -> text.isEmpty() || UnitPrice.perKg(text).isPresent() ? Optional.of(text) : Optional.empty());
    }

    private String named(String question, String usual, Predicate<String> there) {
        return dialogue.ask(
                question,
                usual,
                "Expected a name with letters or digits in it, and nothing that is already there.",
                text -> Slug.of(text).isEmpty() || there.test(text) ? Optional.empty() : Optional.of(text));
    }

    private static Optional<String> weight(String text) {
        return Quantity.parse(text)
                .filter(weight -> weight.unit().dimension() == Dimension.MASS
                        && weight.base().signum() > 0)
                .map(weight -> text);
    }

    /** What of a pantry may go in; empty for all. */
    private List<String> chosen(List<Known> there, GroupQuestions groups) {
        dialogue.say("");
        dialogue.say("The pantry is there already, with " + Known.names(there) + ".");
        return groups.several("Which of these may go in? With commas; Enter for all", there, true);
    }

    private List<Item> items(List<Known> there) {
        var items = new LinkedHashMap<String, Item>();
        var questions = new IngredientQuestions(dialogue);
        dialogue.say("");
        dialogue.say(
                there.isEmpty()
                        ? "Now the ingredients, water too. Numbers are for 100 g of it; leave open what you do not know."
                        : "Now what is not in the pantry yet. Numbers are for 100 g of it.");
        while (true) {
            boolean none = items.isEmpty() && there.isEmpty();
            var name = dialogue.ask(
                    none ? "First ingredient" : "Next ingredient (Enter when that is all)",
                    "",
                    none
                            ? "Expected a name with letters or digits in it: a mince has at least one ingredient."
                            : "Expected a name with letters or digits in it, and none that is taken.",
                    text -> isName(text, none, items.keySet(), there) ? Optional.of(text) : Optional.empty());
            if (name.isEmpty()) {
                return List.copyOf(items.values());
            }
            items.put(Slug.of(name), questions.item(name));
        }
    }

    private static boolean isName(String text, boolean needed, Set<String> taken, List<Known> there) {
        var id = Slug.of(text);
        boolean isThere = there.stream().anyMatch(known -> known.id().equals(id));
        return text.isEmpty() ? !needed : !id.isEmpty() && !taken.contains(id) && !isThere;
    }
}
