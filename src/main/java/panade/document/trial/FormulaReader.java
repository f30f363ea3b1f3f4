package panade.document.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.selector.Names;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problems;
import panade.document.trial.WeighedReader.Line;
import panade.document.trial.WeighedReader.Portion;
import panade.domain.Brief;
import panade.domain.Use;
import panade.domain.purchase.Offer;
import panade.domain.trial.Formula;
import panade.domain.trial.Weighed;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Reads what is made of the product of a brief. */
public final class FormulaReader {
    private static final int BATCH_DIGITS = 6;

    private final Brief brief;
    private final Overrides overrides;
    private final Problems problems;
    private final Expect expect;
    private final Names names;

    /**
     * A reader of formulas.
     *
     * @param overrides with which the brief was read
     */
    public FormulaReader(Brief brief, Overrides overrides, Problems problems) {
        this.brief = brief;
        this.overrides = overrides;
        this.problems = problems;
        this.expect = new Expect(problems);
        this.names = Names.of(brief, problems);
    }

    /**
     * The formula, in the batch that its weights add up to unless another is asked for; empty when there are faults.
     */
    public Optional<Formula> read(ObjectNode root, String shownAs) {
        var fields = new Fields(root, problems, "title", "brief", "made", "note");
        var title = fields.get("title").flatMap(node -> expect.text(node, "a text"));
        var lines = fields.required("made", "what is weighed, such as {\"mix\": {\"salt\": \"45 g\"}}")
                .map(node -> new WeighedReader(names).lines(node));
        lines.ifPresent(found -> found.forEach(this::check));
        return lines.filter(found -> problems.none())
                .map(found -> formula(overrides.titled(title.map(TextNode::text).orElse(shownAs)), found));
    }

    private Formula formula(String title, Map<Use, Line> lines) {
        var weighed = WeighedReader.weighed(lines);
        var suppliers = new LinkedHashMap<Use, Map<String, BigFraction>>();
        lines.forEach((use, line) -> suppliers.put(use, parts(use, line, weighed)));
        var made = overrides.batch() == null ? brief.withBatch(batch(weighed)) : brief;
        return new Formula(title, made.remarking(problems.remarks()), weighed, suppliers);
    }

    private static Quantity batch(Weighed weighed) {
        var grams = Unit.GRAM.fromBase(weighed.total());
        return Quantity.of(
                grams, Unit.GRAM, Decimal.significant(grams, BATCH_DIGITS).toPlainString() + " g");
    }

    private Map<String, BigFraction> parts(Use use, Line line, Weighed weighed) {
        var parts = new LinkedHashMap<String, BigFraction>();
        line.portions()
                .forEach(portion -> parts.merge(
                        seller(use, portion),
                        portion.kilograms().divide(weighed.kilograms().get(use)),
                        BigFraction::add));
        return parts;
    }

    /** Whose goods a portion counts as; empty for whoever is cheapest. */
    private String seller(Use use, Portion portion) {
        return portion.supplier()
                .map(TextNode::text)
                .filter(name -> sells(name, use.ingredient()))
                .orElse("");
    }

    private boolean sells(String supplier, String ingredient) {
        return brief.listedFor(ingredient).stream()
                .anyMatch(offer -> offer.supplier().equals(supplier));
    }

    private void check(Use use, Line line) {
        if (brief.listedFor(use.ingredient()).isEmpty()) {
            problems.remark(
                    line.origin(),
                    "No list sells " + name(use) + ", so what the formula costs is not known. Put a price for \""
                            + use.ingredient() + "\" into the price list.");
        } else if (!brief.candidates().contains(use.ingredient())) {
            problems.remark(
                    line.origin(),
                    "The brief leaves " + name(use) + " out, or it is out of stock: no blend to compare with holds any."
                            + " Its price in the list counts here.");
        } else if (!brief.uses().contains(use)) {
            problems.remark(
                    line.origin(),
                    "The brief has no place for " + name(use) + " in \"" + use.stage() + "\", only in " + stages(use)
                            + ": no blend to compare with has it there. Name it under \"stages\" in the brief, or"
                            + " weigh it in there.");
        }
        line.portions().forEach(portion -> portion.supplier().ifPresent(supplier -> check(use, supplier)));
    }

    private String name(Use use) {
        return brief.set().ingredient(use.ingredient()).name();
    }

    private String stages(Use use) {
        return brief.uses().stream()
                .filter(each -> each.ingredient().equals(use.ingredient()))
                .map(each -> "\"" + each.stage() + "\"")
                .collect(Collectors.joining(", "));
    }

    /** A supplier that nobody heard of is a slip; one that sells this no longer, or not on other lists, is told. */
    private void check(Use use, TextNode supplier) {
        var sellers = brief.listedFor(use.ingredient());
        var known = Stream.concat(brief.offers().stream(), brief.otherOffers().stream())
                .map(Offer::supplier)
                .collect(Collectors.toSet());
        if (sellers.isEmpty() || sells(supplier.text(), use.ingredient())) {
            return;
        }
        if (known.contains(supplier.text()) || !overrides.prices().isEmpty()) {
            problems.remark(
                    supplier.origin(),
                    name(use) + " from " + supplier.text() + " cannot be had on these lists: it counts at the cheapest"
                            + " offer there is. Those who sell it: " + String.join(", ", suppliers(sellers)) + ".");
        } else {
            problems.unknown(
                    supplier.origin(),
                    "No list has a supplier called \"" + supplier.text() + "\"",
                    supplier.text(),
                    known,
                    "Expected one that sells it: \"" + String.join("\", \"", suppliers(sellers)) + "\".");
        }
    }

    private static Set<String> suppliers(Iterable<Offer> offers) {
        var names = new TreeSet<String>();
        offers.forEach(offer -> names.add(offer.supplier()));
        return names;
    }
}
