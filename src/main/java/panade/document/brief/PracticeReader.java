package panade.document.brief;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.purchase.CostReader;
import panade.document.selector.Names;
import panade.document.selector.SelectorReader;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Cooking;
import panade.domain.Measure;
import panade.domain.Practice;

/** Reads what a brief says beyond the blend: rules, cooking, costs, shelf, scale and serving. */
final class PracticeReader {
    private static final List<String> BASES = List.of("raw", "cooked");

    private final Names names;
    private final String currency;
    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;

    PracticeReader(Names names, String currency) {
        this.currency = currency;
        this.names = names;
        this.problems = names.problems();
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems);
    }

    Practice read(ObjectNode brief) {
        var loss = value(brief, "cooking").map(this::cookingLoss).orElse(Map.of());
        boolean perCooked =
                value(brief, "costBasis").map(this::costBasis).orElse("raw").equals("cooked");
        return new Practice(
                new RuleReader(names).read(value(brief, "rules"), value(brief, "maxIngredients")),
                loss,
                perCooked,
                loss.isEmpty() && !perCooked ? null : cookedWeight(loss),
                value(brief, "costs")
                        .flatMap(new CostReader(problems, currency)::costs)
                        .orElse(null),
                value(brief, "shelf")
                        .flatMap(new CostReader(problems, currency)::shelf)
                        .orElse(null),
                value(brief, "weighing")
                        .flatMap(node -> amounts.weight(node, "1 g"))
                        .orElse(null),
                value(brief, "serving")
                        .flatMap(node -> amounts.weight(node, "113 g"))
                        .orElse(null),
                value(brief, "sameLabel")
                        .flatMap(new SameLabelReader(names)::read)
                        .orElse(null));
    }

    private @Nullable Measure cookedWeight(Map<String, BigFraction> loss) {
        return names.set()
                .map(set -> new Cooking(loss, set).cooked(SelectorReader.massOfAll(names)))
                .orElse(null);
    }

    private static Optional<Node> value(ObjectNode object, String name) {
        return object.field(name).map(Field::value);
    }

    private Map<String, BigFraction> cookingLoss(Node node) {
        var form = "losses, such as {\"lose\": {\"WATER\": \"12 %\"}}";
        var cooking = expect.object(node, form);
        cooking.ifPresent(found -> new Fields(found, problems, "lose"));
        var lose = cooking.flatMap(found -> value(found, "lose"))
                .flatMap(found -> expect.object(found, "shares of components, such as {\"WATER\": \"12 %\"}"));
        var loss = new LinkedHashMap<String, BigFraction>();
        lose.ifPresent(found -> found.fields().forEach(field -> putLoss(loss, field)));
        return Map.copyOf(loss);
    }

    private void putLoss(Map<String, BigFraction> loss, Field field) {
        if (names.knowsProperty(field.nameOrigin(), field.name())) {
            amounts.share(field.value(), "12 %").ifPresent(share -> loss.put(field.name(), share.base()));
        }
    }

    private String costBasis(Node node) {
        var text = expect.text(node, "\"raw\" or \"cooked\"").map(TextNode::text);
        text.filter(basis -> !BASES.contains(basis))
                .ifPresent(basis -> problems.unknown(
                        node.origin(),
                        "There is no cost basis \"" + basis + "\"",
                        basis,
                        BASES,
                        "Expected \"raw\" or \"cooked\"."));
        return text.orElse("raw");
    }
}
