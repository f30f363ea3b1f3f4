package panade.cli.interview;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.domain.pantry.AllergenWords;
import panade.intake.Beginning;
import panade.intake.Beginning.Item;
import panade.intake.Beginning.Price;
import panade.intake.table.Slug;
import panade.quantity.Decimal;
import panade.quantity.UnitPrice;
import panade.sheet.WordList;

/** What is asked of one ingredient. */
final class IngredientQuestions {
    private static final String NUMBER = "Expected a number with a decimal point, or nothing if you do not know.";
    private static final String USUAL_SUPPLIER = "market";
    private static final BigDecimal WHOLE = BigDecimal.valueOf(101);

    private final Dialogue dialogue;
    private final boolean full;

    /**
     * Questions.
     *
     * @param full whether to ask for what not every kitchen needs: water, supplier, pack
     */
    IngredientQuestions(Dialogue dialogue, boolean full) {
        this.dialogue = dialogue;
        this.full = full;
    }

    /** The ingredient, as far as it is known. */
    Item item(String name) {
        var values = values();
        var offers = offer(name).stream().toList();
        return new Item(name, values, allergens(""), List.of(), offers, "");
    }

    /** One of the common ingredients, of which only the kitchen's own has to be asked. */
    Item common(Item item) {
        dialogue.say(item.name() + ": " + item.source());
        var offered = offer(item.name()).map(item::with).orElse(item);
        var words = item.allergens();
        var usual = words == null ? "" : words.isEmpty() ? "none" : String.join(", ", words);
        return full ? offered.carrying(allergens(usual)) : offered;
    }

    /** Who sells it at what price; nothing where that is not known. */
    Optional<Price> offer(String name) {
        var supplier = full ? dialogue.text("  From whom?", USUAL_SUPPLIER) : USUAL_SUPPLIER;
        var price = dialogue.ask(
                "  At what price, such as 4.20/lb or 85/20 kg? Enter if you do not know",
                "",
                "Expected a price per weight, such as 4.20/lb, or nothing if you do not know.",
                IngredientQuestions::price);
        if (price.isEmpty()) {
            dialogue.say("  No offer is noted then: until a price list has one, nothing is made with it.");
            return Optional.empty();
        }
        int slash = price.indexOf('/');
        var money = price.substring(0, slash).strip();
        var pack = full ? pack() : "";
        return Optional.of(new Price(
                Slug.of(name), supplier, money, price.substring(slash + 1).strip(), pack));
    }

    private String pack() {
        return dialogue.ask(
                "  In packs of what, such as 25 kg? Enter if any weight is sold",
                "",
                "Expected a weight, such as 25 kg, or nothing.",
                text -> text.isEmpty() ? Optional.of("") : Interview.weight(text));
    }

    private static Optional<String> price(String text) {
        var price = text.equals("?") ? "" : text.replaceFirst("^[$\u20ac\u00a3]\\s*", "");
        return price.isEmpty() ? Optional.of("") : Optional.of(price).filter(IngredientQuestions::isPrice);
    }

    private static boolean isPrice(String price) {
        int slash = price.indexOf('/');
        return slash > 0
                && Decimal.parse(price.substring(0, slash).strip()).isPresent()
                && UnitPrice.perKg(price).filter(found -> found.signum() >= 0).isPresent();
    }

    /** Null where nobody knows. */
    private @Nullable List<String> allergens(String usual) {
        return dialogue.ask(
                        "  Which allergens does it carry? With commas; none if it carries none, "
                                + (usual.isEmpty() ? "Enter" : "?") + " if you do not know",
                        usual,
                        "On no law's list. Expected names such as soy, wheat, milk; none; or \"other: kiwi\" for what is on no"
                                + " list. ",
                        text -> text.isEmpty() || text.equals("?")
                                ? Optional.of(new Stated(null))
                                : Optional.of(AllergenWords.read(text))
                                        .filter(words -> words.stream().allMatch(AllergenWords::isKnown))
                                        .map(Stated::new))
                .words();
    }

    /** Allergens, or that nobody knows them. */
    private record Stated(@Nullable List<String> words) {}

    private Map<String, BigDecimal> values() {
        while (true) {
            var values = new LinkedHashMap<String, BigDecimal>();
            for (var asked : Component.asked(full)) {
                number("  " + asked.words() + ", " + asked.unit()).ifPresent(found -> values.put(asked.name(), found));
            }
            var whole = values.entrySet().stream()
                    .filter(value -> !value.getKey().equals(Component.NA.name()))
                    .map(Map.Entry::getValue)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            if (whole.compareTo(WHOLE) <= 0) {
                return values;
            }
            dialogue.say("  That is more than 100 g in 100 g. Once more:");
        }
    }

    /** A number of at least nothing, if it is known. */
    Optional<BigDecimal> number(String question) {
        return Beginning.amount(dialogue.ask(
                question,
                "",
                NUMBER,
                text -> text.isEmpty()
                                || text.equals("?")
                                || Beginning.amount(text).isPresent()
                        ? Optional.of(text)
                        : Optional.empty()));
    }

    /** Words with commas between them. */
    List<String> words(String question, String usual) {
        return dialogue.ask(question, usual, "", text -> Optional.of(WordList.read(text.replace(',', ';'))));
    }
}
