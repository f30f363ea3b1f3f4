package panade.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.Node.ArrayNode;
import panade.document.Node.Field;
import panade.document.Node.ObjectNode;
import panade.document.Node.TextNode;
import panade.domain.Practice;

/** Reads what a brief says beyond the blend: rules, cooking, costs, shelf, scale and serving. */
final class PracticeReader {
    private static final List<String> BASES = List.of("raw", "cooked");

    private final Names names;
    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;

    PracticeReader(Names names) {
        this.names = names;
        this.problems = names.problems();
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems);
    }

    Practice read(ObjectNode brief) {
        var rules = value(brief, "rules");
        var most = value(brief, "maxIngredients");
        rules.ifPresent(node -> new RuleChecks(names).check(node));
        most.ifPresent(node -> amounts.count(node, 1));
        value(brief, "costs").ifPresent(this::checkCosts);
        return new Practice(
                rules.isPresent() || most.isPresent(),
                rules.or(() -> most).map(Node::origin).orElse(null),
                value(brief, "cooking").map(this::cookingLoss).orElse(Map.of()),
                value(brief, "costBasis").map(this::costBasis).orElse("raw"),
                value(brief, "shelf").map(this::margins).orElse(List.of()),
                value(brief, "weighing")
                        .flatMap(node -> amounts.weight(node, "1 g"))
                        .orElse(null),
                value(brief, "serving")
                        .flatMap(node -> amounts.weight(node, "113 g"))
                        .orElse(null));
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

    private void checkCosts(Node node) {
        var costs = expect.object(node, "costs, such as {\"packaging\": \"0.31/lb\"}");
        if (costs.isPresent()) {
            new Fields(costs.get(), problems, "labour", "packaging", "overhead", "processLoss");
            value(costs.get(), "labour").ifPresent(this::checkLabour);
            value(costs.get(), "packaging").ifPresent(amounts::price);
            value(costs.get(), "overhead").ifPresent(amounts::price);
            value(costs.get(), "processLoss").ifPresent(loss -> amounts.share(loss, "3 %"));
        }
    }

    private void checkLabour(Node node) {
        var labour = expect.object(node, "labour, such as {\"minutes\": 25, \"perHour\": 21.84}");
        if (labour.isPresent()) {
            new Fields(labour.get(), problems, "minutes", "minutesPerLb", "perHour");
            for (var name : List.of("minutes", "minutesPerLb", "perHour")) {
                value(labour.get(), name).ifPresent(number -> amounts.notNegative(number, "a number, such as 25"));
            }
        }
    }

    private List<BigFraction> margins(Node node) {
        var shelf = expect.object(node, "a shelf price, such as {\"price\": \"6.99/lb\", \"margins\": [\"35 %\"]}");
        shelf.ifPresent(found -> new Fields(found, problems, "price", "margins"));
        shelf.flatMap(found -> value(found, "price")).ifPresent(amounts::price);
        var margins = new ArrayList<BigFraction>();
        shelf.flatMap(found -> value(found, "margins"))
                .flatMap(found -> expect.list(found, "a list of margins, such as [\"35 %\", \"18 %\"]"))
                .map(ArrayNode::items)
                .orElse(List.of())
                .forEach(item -> amounts.share(item, "35 %").ifPresent(margin -> margins.add(margin.base())));
        return margins;
    }
}
