package panade.document;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.Node.ArrayNode;
import panade.document.Node.Field;
import panade.document.Node.ObjectNode;

/** Checks the rules about which ingredients are used, without making anything of them. */
final class RuleChecks {
    private static final List<String> FORMS = List.of("whenUsed", "choose", "if", "neverTogether");
    private static final String IDS = "an id or a list of ids, such as [\"konjac\", \"psyllium\"]";

    private final Names names;
    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;

    RuleChecks(Names names) {
        this.names = names;
        this.problems = names.problems();
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems);
    }

    void check(Node node) {
        var form = "a list of rules, such as [{\"neverTogether\": [\"konjac\", \"carrageenan\"]}]";
        expect.list(node, form).map(ArrayNode::items).orElse(List.of()).forEach(this::checkOne);
    }

    private void checkOne(Node node) {
        var form = "a rule with \"whenUsed\", \"choose\", \"if\" or \"neverTogether\"";
        expect.object(node, form).ifPresent(rule -> checkRule(rule, form));
    }

    private void checkRule(ObjectNode rule, String expected) {
        var form =
                rule.fields().stream().map(Field::name).filter(FORMS::contains).findFirst();
        if (form.isEmpty()) {
            problems.add(rule.origin(), "This rule says nothing", "Expected " + expected + ".");
            return;
        }
        switch (form.get()) {
            case "whenUsed" -> checkWhenUsed(rule);
            case "choose" -> checkChoose(rule);
            case "if" -> checkIf(rule);
            default -> checkNeverTogether(rule);
        }
    }

    private void checkWhenUsed(ObjectNode rule) {
        new Fields(rule, problems, "whenUsed", "min");
        checkIds(rule, "whenUsed");
        required(rule, "min", "the least when used, such as \"min\": \"0.3 %\"")
                .ifPresent(min -> amounts.share(min, "0.3 %"));
    }

    private void checkChoose(ObjectNode rule) {
        new Fields(rule, problems, "choose", "min", "max");
        checkChoice(rule.field("choose").orElseThrow().value());
        var min = rule.field("min").map(Field::value).flatMap(node -> amounts.count(node, 0));
        var max = rule.field("max").map(Field::value).flatMap(node -> amounts.count(node, 0));
        if (rule.field("min").isEmpty() && rule.field("max").isEmpty()) {
            problems.add(rule.origin(), "Neither \"min\" nor \"max\" is given", "Expected how many may be used.");
        }
        if (min.isPresent() && max.isPresent() && min.get().compareTo(max.get()) > 0) {
            tellAbove(rule, min.get(), max.get());
        }
    }

    private void tellAbove(ObjectNode rule, BigFraction min, BigFraction max) {
        problems.add(
                rule.field("min").orElseThrow().value().origin(),
                "The least, " + min + ", is above the most, " + max,
                "Expected \"min\" at or below \"max\".");
    }

    private void checkChoice(Node node) {
        var form = "a choice, such as {\"kind\": \"binder\"} or {\"ingredient\": [\"konjac\", \"psyllium\"]}";
        var choice = expect.object(node, form);
        choice.ifPresent(found -> new Fields(found, problems, "kind", "ingredient"));
        if (choice.isPresent() && choice.get().fields().isEmpty()) {
            problems.add(node.origin(), "Nothing to choose from is named", "Expected " + form + ".");
        }
        choice.flatMap(found -> found.field("kind"))
                .ifPresent(field -> expect.oneOrMore(field.value(), "a kind")
                        .forEach(kind -> names.knowsKind(kind.origin(), kind.text())));
        choice.filter(found -> found.field("ingredient").isPresent()).ifPresent(found -> checkIds(found, "ingredient"));
    }

    private void checkIf(ObjectNode rule) {
        new Fields(rule, problems, "if", "then");
        checkIds(rule, "if");
        required(rule, "then", "what must then be used, such as \"then\": \"psyllium\"")
                .ifPresent(node -> checkIds(rule, "then"));
    }

    private void checkNeverTogether(ObjectNode rule) {
        new Fields(rule, problems, "neverTogether");
        var ids = rule.field("neverTogether").orElseThrow().value();
        expect.texts(ids, "a list of ids, such as [\"konjac\", \"carrageenan\"]")
                .forEach(names::knowsIngredient);
    }

    private void checkIds(ObjectNode rule, String field) {
        expect.oneOrMore(rule.field(field).orElseThrow().value(), IDS).forEach(names::knowsIngredient);
    }

    private Optional<Node> required(ObjectNode rule, String field, String expected) {
        var value = rule.field(field).map(Field::value);
        if (value.isEmpty()) {
            problems.add(rule.origin(), "\"" + field + "\" is missing", "Expected " + expected + ".");
        }
        return value;
    }
}
