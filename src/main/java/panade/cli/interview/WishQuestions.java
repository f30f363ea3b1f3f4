package panade.cli.interview;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import panade.intake.Beginning;
import panade.intake.Beginning.Wish;
import panade.quantity.Quantity;

/** What the product must hold. */
final class WishQuestions {
    /** A least and a most, each empty where it is left open. */
    record Limits(String least, String most) {
        boolean isOpen() {
            return least.isEmpty() && most.isEmpty();
        }
    }

    private final Dialogue dialogue;
    private final boolean full;
    private final List<Wish> wishes = new ArrayList<>();

    WishQuestions(Dialogue dialogue, boolean full) {
        this.dialogue = dialogue;
        this.full = full;
    }

    /** The wishes about those ingredients; scores are about the mean of a kind where there are kinds. */
    List<Wish> ask(List<Known> items, Collection<String> scores) {
        dialogue.say("");
        dialogue.say("Now what all of it together must hold. Enter leaves a number open.");
        for (var asked : Component.asked(full)) {
            if (isKnown(asked.name(), asked.words(), items)) {
                wish("property", asked.name(), asked.words(), asked.share());
            }
        }
        var kinds = new TreeSet<String>();
        items.forEach(item -> kinds.addAll(item.kinds()));
        scores.forEach(score -> score(score, items, kinds));
        if (full
                && !kinds.isEmpty()
                && dialogue.agrees("Is there a least or a most of any kind (" + String.join(", ", kinds) + ")?")) {
            kinds.forEach(kind -> wish("kind", kind, kind, "%"));
        }
        var limited =
                Known.chosen(dialogue, "Of which ingredients is there a least or a most? Enter for none", items, true);
        items.stream()
                .filter(item -> limited.contains(item.id()))
                .forEach(item -> wish("ingredient", item.id(), item.name(), "%"));
        return wishes;
    }

    private boolean isKnown(String value, String words, List<Known> items) {
        var unknown = items.stream().filter(item -> !item.knows(value)).toList();
        if (!unknown.isEmpty()) {
            dialogue.say("(No question about " + words + ": it is not known of " + Known.names(unknown) + ".)");
        }
        return unknown.isEmpty();
    }

    private void score(String score, List<Known> items, Set<String> kinds) {
        var kind = kinds.isEmpty()
                ? ""
                : dialogue.ask(
                        "Whose mean " + score + " counts, of " + String.join(", ", kinds) + "? Enter for all of it",
                        "",
                        "Expected one of these kinds, or nothing.",
                        text -> text.isEmpty() || kinds.contains(text) ? Optional.of(text) : Optional.empty());
        var counted = items.stream()
                .filter(item -> kind.isEmpty() || item.kinds().contains(kind))
                .toList();
        if (isKnown(score, score, counted)) {
            var limits = limits(score, "");
            if (!limits.isOpen()) {
                wishes.add(new Wish("property", score, score, kind, limits.least(), limits.most()));
            }
        }
    }

    private void wish(String selector, String of, String words, String unit) {
        var limits = limits(words, unit);
        if (!limits.isOpen()) {
            var name = selector.equals("property") ? words : "";
            wishes.add(new Wish(selector, of, name, "", limits.least(), limits.most()));
        }
    }

    /** A least and a most, asked again where they are crossed. */
    Limits limits(String words, String unit) {
        while (true) {
            var comma = unit.isEmpty() ? "" : ", " + unit;
            var limits = new Limits(share("Least " + words + comma, unit), share("Most " + words + comma, unit));
            boolean crossed = !limits.least().isEmpty()
                    && !limits.most().isEmpty()
                    && base(limits.least()).compareTo(base(limits.most())) > 0;
            if (!crossed) {
                return limits;
            }
            dialogue.say("  The least is above the most. Once more:");
        }
    }

    private String share(String question, String unit) {
        return dialogue.ask(
                question,
                "",
                "Expected a number" + (unit.isEmpty() ? "" : " of " + unit + " between nothing and all")
                        + ", or nothing to leave it open.",
                text -> text.isEmpty() || text.equals("?") ? Optional.of("") : written(text, unit));
    }

    private static Optional<String> written(String text, String unit) {
        var number = text.endsWith(unit)
                ? text.substring(0, text.length() - unit.length()).strip()
                : text;
        return Beginning.amount(number)
                .map(amount -> (amount.toPlainString() + " " + unit).strip())
                .filter(share -> unit.isEmpty() || base(share).compareTo(BigDecimal.ONE) <= 0);
    }

    private static BigDecimal base(String share) {
        return Quantity.parse(share)
                .map(quantity -> quantity.base().bigDecimalValue(12, RoundingMode.HALF_EVEN))
                .or(() -> Beginning.amount(share))
                .orElseThrow();
    }
}
