package panade.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import panade.intake.Beginning;
import panade.intake.Beginning.Item;
import panade.intake.Beginning.Wish;
import panade.intake.Slug;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.UnitPrice;

/** The questions that a first pantry and brief are made of. */
final class Interview {
    private static final String NUMBER = "Expected a number with a decimal point, or nothing if you do not know.";
    private static final BigDecimal WHOLE = BigDecimal.valueOf(101);

    /** A component that is asked for, and how its bound is written. */
    private enum Asked {
        WATER("water", "g", "%"),
        PROCNT("protein", "g", "%"),
        FAT("fat", "g", "%"),
        NA("sodium", "mg", "mg/100g");

        private final String words;
        private final String unit;
        private final String share;

        Asked(String words, String unit, String share) {
            this.words = words;
            this.unit = unit;
            this.share = share;
        }
    }

    private final Dialogue dialogue;
    private final Predicate<String> pantryIsThere;
    private final Predicate<String> productIsThere;

    /** Questions; names that are there already are not taken. */
    Interview(Dialogue dialogue, Predicate<String> pantryIsThere, Predicate<String> productIsThere) {
        this.dialogue = dialogue;
        this.pantryIsThere = pantryIsThere;
        this.productIsThere = productIsThere;
    }

    /** All answers together. */
    Beginning hold() {
        dialogue.say("A few questions; Enter takes what stands in brackets, or leaves a thing open.");
        dialogue.say("");
        var pantry = named("What is your pantry called?", "my pantry", pantryIsThere);
        var product = named("What do you want to make?", "my mince", productIsThere);
        var currency = dialogue.text("Which money do you pay in?", "USD");
        var batch = dialogue.ask(
                "How much do you make at once?",
                "20 lb",
                "Expected a weight, such as 20 lb or 5 kg.",
                Interview::weight);
        var items = items();
        var wishes = wishes(items);
        var target = dialogue.ask(
                "What may a pound of ingredients cost, such as 1.50/lb?",
                "",
                "Expected a price per weight, such as 1.50/lb, or nothing.",
                text -> text.isEmpty() || UnitPrice.perKg(text).isPresent() ? Optional.of(text) : Optional.empty());
        return new Beginning(pantry, product, currency, batch, items, wishes, target);
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

    private List<Item> items() {
        var items = new ArrayList<Item>();
        dialogue.say("");
        dialogue.say("Now the ingredients, water too. Numbers are for 100 g of it; leave open what you do not know.");
        while (true) {
            var name = dialogue.ask(
                    items.isEmpty() ? "First ingredient" : "Next ingredient (Enter when that is all)",
                    "",
                    items.isEmpty()
                            ? "Expected a name with letters or digits in it: a mince has at least one ingredient."
                            : "Expected a name with letters or digits in it, and none that is taken.",
                    text -> isName(text, items) ? Optional.of(text) : Optional.empty());
            if (name.isEmpty()) {
                return items;
            }
            items.add(item(name));
        }
    }

    private static boolean isName(String text, List<Item> items) {
        var id = Slug.of(text);
        boolean taken = items.stream().anyMatch(item -> item.id().equals(id));
        return text.isEmpty() ? !items.isEmpty() : !id.isEmpty() && !taken;
    }

    private Item item(String name) {
        var values = values();
        var supplier = dialogue.text("  From whom?", "market");
        var price = dialogue.ask(
                "  At what price, such as 4.20/lb or 85/20 kg?",
                "",
                "Expected a price per weight, such as 4.20/lb.",
                text -> UnitPrice.perKg(text)
                        .filter(found -> found.signum() >= 0)
                        .map(found -> text));
        int slash = price.indexOf('/');
        var allergens = dialogue.text("  Which allergens does it carry? With commas; none if it carries none", "");
        return new Item(
                name,
                values,
                allergens(allergens),
                supplier,
                price.substring(0, slash).strip(),
                price.substring(slash + 1).strip());
    }

    private static @Nullable List<String> allergens(String answer) {
        if (answer.isEmpty()) {
            return null;
        }
        return answer.equalsIgnoreCase("none")
                ? List.of()
                : Arrays.stream(answer.split(",", -1))
                        .map(String::strip)
                        .filter(each -> !each.isEmpty())
                        .toList();
    }

    private Map<String, BigDecimal> values() {
        while (true) {
            var values = new LinkedHashMap<String, BigDecimal>();
            for (var asked : Asked.values()) {
                var number =
                        dialogue.ask("  " + asked.words + ", " + asked.unit, "", NUMBER, Interview::amountOrNothing);
                Beginning.amount(number).ifPresent(found -> values.put(asked.name(), found));
            }
            var whole = values.entrySet().stream()
                    .filter(value -> !value.getKey().equals(Asked.NA.name()))
                    .map(Map.Entry::getValue)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            if (whole.compareTo(WHOLE) <= 0) {
                return values;
            }
            dialogue.say("  That is more than 100 g in 100 g. Once more:");
        }
    }

    private static Optional<String> amountOrNothing(String text) {
        return text.isEmpty() || Beginning.amount(text).isPresent() ? Optional.of(text) : Optional.empty();
    }

    private List<Wish> wishes(List<Item> items) {
        var wishes = new ArrayList<Wish>();
        dialogue.say("");
        dialogue.say("Now what all of it together must hold. Enter leaves a number open.");
        for (var asked : Asked.values()) {
            var unknown = items.stream()
                    .filter(item -> !item.values().containsKey(asked.name()))
                    .map(Item::name)
                    .toList();
            if (unknown.isEmpty()) {
                wish("property", asked.name(), asked.words, asked.share).ifPresent(wishes::add);
            } else {
                dialogue.say("(No question about " + asked.words + ": it is not known of " + String.join(", ", unknown)
                        + ".)");
            }
        }
        dialogue.say("And how much of each ingredient goes in.");
        items.forEach(item -> wish("ingredient", item.id(), item.name(), "%").ifPresent(wishes::add));
        return wishes;
    }

    private Optional<Wish> wish(String selector, String of, String words, String unit) {
        while (true) {
            var least = share("Least " + words + ", " + unit, unit);
            var most = share("Most " + words + ", " + unit, unit);
            boolean crossed = !least.isEmpty() && !most.isEmpty() && base(least).compareTo(base(most)) > 0;
            if (!crossed) {
                var name = selector.equals("property") ? words : "";
                return least.isEmpty() && most.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Wish(selector, of, name, least, most));
            }
            dialogue.say("  The least is above the most. Once more:");
        }
    }

    private String share(String question, String unit) {
        return dialogue.ask(
                question,
                "",
                "Expected a number of " + unit + " between nothing and all, or nothing to leave it open.",
                text -> text.isEmpty() ? Optional.of("") : written(text, unit));
    }

    private static Optional<String> written(String text, String unit) {
        var number = text.endsWith(unit)
                ? text.substring(0, text.length() - unit.length()).strip()
                : text;
        return Beginning.amount(number)
                .map(amount -> amount.toPlainString() + " " + unit)
                .filter(share -> base(share).compareTo(BigDecimal.ONE) <= 0);
    }

    private static BigDecimal base(String share) {
        return Quantity.parse(share).orElseThrow().base().bigDecimalValue(12, RoundingMode.HALF_EVEN);
    }
}
