package panade.cli.interview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import panade.domain.pantry.IngredientSet;
import panade.intake.Beginning;
import panade.intake.Beginning.Item;
import panade.intake.CommonIngredients;
import panade.intake.table.Slug;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.UnitPrice;

/** The questions that a first pantry and brief are made of, or what is added to a pantry that is there. */
public final class Interview {
    /** What the questions are for. */
    public enum Purpose {
        /** A pantry, there already or new, and a product. */
        KITCHEN,
        /** A further product of a pantry that is there. */
        PRODUCT,
        /** Further ingredients of a pantry that is there. */
        INGREDIENT
    }

    private final Dialogue dialogue;
    private final Purpose purpose;
    private final List<String> there;
    private final Function<String, Optional<IngredientSet>> pantries;
    private final Predicate<String> productIsThere;

    /**
     * Questions.
     *
     * @param there names of the pantries that are there; at least one where something is added
     * @param pantries the pantry of a name, if it is there already
     * @param productIsThere whether a product of a name is there already, and so not to be taken
     */
    public Interview(
            Dialogue dialogue,
            Purpose purpose,
            List<String> there,
            Function<String, Optional<IngredientSet>> pantries,
            Predicate<String> productIsThere) {
        this.dialogue = dialogue;
        this.purpose = purpose;
        this.there = List.copyOf(there);
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
        boolean full = isFull();
        var pantry = pantry();
        var known = pantries.apply(pantry)
                .map(set -> set.ingredients().values().stream().map(Known::of).toList())
                .orElse(List.of());
        var each = new IngredientQuestions(dialogue, full);
        var groups = new GroupQuestions(dialogue, each);
        return purpose == Purpose.INGREDIENT
                ? new Beginning(
                        pantry,
                        "",
                        "",
                        "",
                        grouped(items(known, each), full, groups),
                        Map.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        "")
                : product(pantry, known, full, each, groups);
    }

    private Beginning product(
            String pantry, List<Known> known, boolean full, IngredientQuestions each, GroupQuestions groups) {
        var product = named("What do you want to make?", "my mince", productIsThere);
        var currency = dialogue.text("Which money do you pay in?", "USD");
        var batch = dialogue.ask(
                "How much do you make at once?",
                "20 lb",
                "Expected a weight, such as 20 lb or 5 kg.",
                Interview::weight);
        var only = known.isEmpty() ? List.<String>of() : chosen(known);
        var items = new ArrayList<>(grouped(items(known, each), full, groups));
        var scores = full ? groups.score(items) : Map.<String, String>of();
        var in = Stream.concat(
                        known.stream().filter(one -> only.isEmpty() || only.contains(one.id())),
                        items.stream().map(Known::of))
                .toList();
        var wishing = new WishQuestions(dialogue, full);
        var wishes = wishing.ask(in, scores.keySet());
        var stages = full ? groups.stages(in, wishing) : List.<Beginning.Part>of();
        var ids = only.isEmpty() ? only : in.stream().map(Known::id).toList();
        return new Beginning(pantry, product, currency, batch, items, scores, ids, wishes, stages, target());
    }

    private boolean isFull() {
        return dialogue.ask(
                "Short or full? Full also asks about suppliers, packs, kinds, texture and parts mixed on their own",
                "short",
                "Expected short or full.",
                text -> switch (text.toLowerCase(Locale.ROOT)) {
                    case "s", "short" -> Optional.of(false);
                    case "f", "full" -> Optional.of(true);
                    default -> Optional.empty();
                });
    }

    private String pantry() {
        if (purpose == Purpose.KITCHEN) {
            return named("What is your pantry called?", "my pantry", name -> false);
        }
        if (there.size() == 1) {
            dialogue.say("The pantry is " + there.get(0) + ".");
            return there.get(0);
        }
        var names = String.join(", ", there);
        return dialogue.ask(
                "Which pantry, of " + names + "?",
                there.get(0),
                "Expected one of these: " + names + ".",
                text -> Optional.of(Slug.of(text)).filter(there::contains));
    }

    private static List<Item> grouped(List<Item> items, boolean full, GroupQuestions groups) {
        return full ? groups.kinds(groups.offered(items)) : items;
    }

    private String target() {
        return dialogue.ask(
                "What may a pound of ingredients cost, such as 1.50/lb?",
                "",
                "Expected a price per weight, such as 1.50/lb, or nothing.",
                text -> text.isEmpty() || UnitPrice.perKg(text).isPresent() ? Optional.of(text) : Optional.empty());
    }

    private String named(String question, String usual, Predicate<String> taken) {
        return dialogue.ask(
                question,
                usual,
                "Expected a name with letters or digits in it, and nothing that is already there.",
                text -> Slug.of(text).isEmpty() || taken.test(text) ? Optional.empty() : Optional.of(text));
    }

    /** A weight above nothing, as it was written. */
    static Optional<String> weight(String text) {
        return Quantity.parse(text)
                .filter(weight -> weight.unit().dimension() == Dimension.MASS
                        && weight.base().signum() > 0)
                .map(weight -> text);
    }

    /** What of a pantry may go in; empty for all. */
    private List<String> chosen(List<Known> known) {
        dialogue.say("");
        dialogue.say("The pantry is there already, with " + Known.names(known) + ".");
        return Known.chosen(dialogue, "Which of these may go in? With commas; Enter for all", known, true);
    }

    private List<Item> items(List<Known> known, IngredientQuestions each) {
        var items = new LinkedHashMap<String, Item>();
        common(known, each).forEach(item -> items.put(item.id(), item));
        dialogue.say("");
        dialogue.say(
                known.isEmpty()
                        ? "Now what else goes in, water too. Numbers are for 100 g of it; leave open what you do not know."
                        : "Now what else is not in the pantry yet. Numbers are for 100 g of it.");
        while (true) {
            boolean none = items.isEmpty() && (known.isEmpty() || purpose == Purpose.INGREDIENT);
            var name = dialogue.ask(
                    none ? "First ingredient" : "Next ingredient (Enter when that is all)",
                    "",
                    none
                            ? "Expected a name with letters or digits in it: there is at least one ingredient."
                            : "Expected a name with letters or digits in it, and none that is taken.",
                    text -> isName(text, none, items.keySet(), known) ? Optional.of(text) : Optional.empty());
            if (name.isEmpty()) {
                return List.copyOf(items.values());
            }
            items.put(Slug.of(name), each.item(name));
        }
    }

    /** Those whose composition need not be asked. */
    private List<Item> common(List<Known> known, IngredientQuestions each) {
        var all = CommonIngredients.all().stream()
                .filter(item -> known.stream().noneMatch(one -> one.id().equals(item.id())))
                .toList();
        dialogue.say("");
        dialogue.say("What these hold is known from a public table:");
        all.stream()
                .collect(Collectors.groupingBy(
                        item -> item.kinds().get(0),
                        LinkedHashMap::new,
                        Collectors.mapping(Item::name, Collectors.joining(", "))))
                .forEach((kind, names) -> dialogue.say("  " + kind + ": " + names));
        var chosen = Known.chosen(
                dialogue,
                "Which of these do you use? With commas; Enter for none",
                all.stream().map(Known::of).toList(),
                true);
        return all.stream()
                .filter(item -> chosen.contains(item.id()))
                .map(each::common)
                .toList();
    }

    private static boolean isName(String text, boolean needed, Set<String> taken, List<Known> known) {
        var id = Slug.of(text);
        boolean isThere = known.stream().anyMatch(one -> one.id().equals(id));
        return text.isEmpty() ? !needed : !id.isEmpty() && !taken.contains(id) && !isThere;
    }
}
