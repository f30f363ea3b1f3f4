package panade.cli.interview;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import panade.intake.Beginning.Item;
import panade.intake.Beginning.Part;
import panade.intake.table.Slug;

/** What not every kitchen needs: asked only as far as somebody says yes. */
final class GroupQuestions {
    private final Dialogue dialogue;
    private final IngredientQuestions each;

    GroupQuestions(Dialogue dialogue, IngredientQuestions each) {
        this.dialogue = dialogue;
        this.each = each;
    }

    /** The ingredients with what others ask for them. */
    List<Item> offered(List<Item> items) {
        var all = new ArrayList<>(items);
        if (!items.isEmpty() && dialogue.agrees("Does anybody else sell any of these?")) {
            var known = items.stream().map(Known::of).toList();
            for (var id = one(known); !id.isEmpty(); id = one(known)) {
                var wanted = id;
                all.replaceAll(item -> item.id().equals(wanted) ? withOffer(item) : item);
            }
        }
        return all;
    }

    private String one(List<Known> known) {
        return dialogue
                .ask(
                        "Which one (Enter when that is all)",
                        "",
                        "Expected one of " + Known.names(known) + ".",
                        text -> Known.named(text, known).filter(ids -> ids.size() < 2))
                .stream()
                .findFirst()
                .orElse("");
    }

    private Item withOffer(Item item) {
        return each.offer(item.name()).map(item::with).orElse(item);
    }

    /** The ingredients with the kinds they are of. */
    List<Item> kinds(List<Item> items) {
        if (items.isEmpty()
                || !dialogue.agrees("Do you group ingredients by what they do, such as texturate, binder, fat?")) {
            return items;
        }
        dialogue.say("With commas where one does several things; Enter for what stands in brackets, or none.");
        var all = new ArrayList<>(items);
        all.replaceAll(item -> item.ofKinds(each.words("  " + item.name() + " is", String.join(", ", item.kinds()))));
        return all;
    }

    /**
     * A score of the kitchen's own, such as bite from 0 to 10, put into each ingredient's values; its name and title.
     */
    Map<String, String> score(List<Item> items) {
        var scores = new LinkedHashMap<String, String>();
        if (items.isEmpty() || !dialogue.agrees("Do you score texture, such as bite from 0 to 10?")) {
            return scores;
        }
        var name = dialogue.ask(
                "What is the score called?",
                "bite",
                "Expected a name in letters, and none of water, protein, fat, sodium.",
                text -> isOwn(text) ? Optional.of(text) : Optional.empty());
        dialogue.say("Enter where you do not know it; 0 where there is none.");
        var scored = new HashMap<String, BigDecimal>();
        items.forEach(item ->
                each.number("  " + name + " of " + item.name()).ifPresent(number -> scored.put(item.id(), number)));
        items.replaceAll(item -> Optional.ofNullable(scored.get(item.id()))
                .map(number -> item.with(name, number))
                .orElse(item));
        scores.put(name, name + ", scored here");
        return scores;
    }

    /** Tagnames are in capitals; a name in small letters is none of them. */
    private static boolean isOwn(String text) {
        return text.matches("[a-z][a-z -]*")
                && !List.of("water", "protein", "fat", "sodium").contains(text);
    }

    /** Parts that are mixed on their own, before all comes together. */
    List<Part> stages(List<Known> items, WishQuestions wishes) {
        var parts = new ArrayList<Part>();
        if (!dialogue.agrees("Is any part of it mixed on its own first, such as soaked texturate or an emulsion?")) {
            return parts;
        }
        for (var name = part(parts); !name.isEmpty(); name = part(parts)) {
            var members = Known.chosen(dialogue, "  What goes into it? With commas", items, false);
            var inIt =
                    items.stream().filter(item -> members.contains(item.id())).toList();
            var shared =
                    Known.chosen(dialogue, "  Which of these go into the rest as well? Enter for none", inIt, true);
            var share = wishes.limits("of " + name + " in the batch", "%");
            parts.add(new Part(name, members, shared, share.least(), share.most()));
        }
        return parts;
    }

    private String part(List<Part> parts) {
        return dialogue.ask(
                parts.isEmpty() ? "What is the part called?" : "The next part (Enter when that is all)",
                "",
                "Expected a name with letters or digits in it, none that is taken, and not mix.",
                text -> isPart(text, parts) ? Optional.of(text) : Optional.empty());
    }

    private static boolean isPart(String text, List<Part> parts) {
        var id = Slug.of(text);
        boolean taken = id.equals("mix")
                || parts.stream().anyMatch(part -> Slug.of(part.name()).equals(id));
        return text.isEmpty() ? !parts.isEmpty() : !id.isEmpty() && !taken;
    }
}
