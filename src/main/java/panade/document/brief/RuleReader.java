package panade.document.brief;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.selector.Names;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Rule;

/** Reads the rules about which ingredients are used. */
final class RuleReader {
    private static final List<String> FORMS = List.of("whenUsed", "choose", "if", "neverTogether");
    private static final String IDS = "an id or a list of ids, such as [\"konjac\", \"psyllium\"]";

    private final Names names;
    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;

    RuleReader(Names names) {
        this.names = names;
        this.problems = names.problems();
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems);
    }

    /** The rules, and the ceiling on names as the last; what is wrong with one is told and the rest read on. */
    List<Rule> read(Optional<Node> rules, Optional<Node> mostNames) {
        var found = new ArrayList<Rule>();
        var form = "a list of rules, such as [{\"neverTogether\": [\"konjac\", \"carrageenan\"]}]";
        var items = rules.flatMap(node -> expect.list(node, form))
                .map(ArrayNode::items)
                .orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            read(items.get(i), "/rules/" + i).ifPresent(found::add);
        }
        mostNames.ifPresent(node -> amounts.count(node, 1)
                .ifPresent(most -> found.add(new Rule.MostNames(most.intValue(), "/maxIngredients", node.origin()))));
        return List.copyOf(found);
    }

    private Optional<Rule> read(Node node, String path) {
        var form = "a rule with \"whenUsed\", \"choose\", \"if\" or \"neverTogether\"";
        return expect.object(node, form).flatMap(rule -> read(rule, path, form));
    }

    private Optional<Rule> read(ObjectNode rule, String path, String expected) {
        var form =
                rule.fields().stream().map(Field::name).filter(FORMS::contains).findFirst();
        if (form.isEmpty()) {
            problems.add(rule.origin(), "This rule says nothing", "Expected " + expected + ".");
            return Optional.empty();
        }
        return switch (form.get()) {
            case "whenUsed" -> whenUsed(rule, path);
            case "choose" -> Optional.of(choose(rule, path));
            case "if" -> Optional.of(ifThen(rule, path));
            default -> Optional.of(neverTogether(rule, path));
        };
    }

    private Optional<Rule> whenUsed(ObjectNode rule, String path) {
        new Fields(rule, problems, "whenUsed", "min");
        var each = new LinkedHashSet<String>();
        options(rule, "whenUsed").forEach(each::addAll);
        return required(rule, "min", "the least when used, such as \"min\": \"0.3 %\"")
                .flatMap(min -> amounts.share(min, "0.3 %"))
                .map(min -> new Rule.WhenUsed(each, min, path, rule.origin()));
    }

    private Rule choose(ObjectNode rule, String path) {
        new Fields(rule, problems, "choose", "min", "max");
        var options = choice(rule.field("choose").orElseThrow().value());
        var min = rule.field("min").map(Field::value).flatMap(node -> amounts.count(node, 0));
        var max = rule.field("max").map(Field::value).flatMap(node -> amounts.count(node, 0));
        if (rule.field("min").isEmpty() && rule.field("max").isEmpty()) {
            problems.add(rule.origin(), "Neither \"min\" nor \"max\" is given", "Expected how many may be used.");
        }
        if (min.isPresent() && max.isPresent() && min.get().compareTo(max.get()) > 0) {
            tellAbove(rule, min.get(), max.get());
        }
        return new Rule.Choose(
                options,
                min.map(BigFraction::intValue).orElse(null),
                max.map(BigFraction::intValue).orElse(null),
                path,
                rule.origin());
    }

    private void tellAbove(ObjectNode rule, BigFraction min, BigFraction max) {
        problems.add(
                rule.field("min").orElseThrow().value().origin(),
                "The least, " + min + ", is above the most, " + max,
                "Expected \"min\" at or below \"max\".");
    }

    private List<Set<String>> choice(Node node) {
        var form = "a choice, such as {\"kind\": \"binder\"} or {\"ingredient\": [\"konjac\", \"psyllium\"]}";
        var choice = expect.object(node, form);
        choice.ifPresent(found -> new Fields(found, problems, "kind", "ingredient"));
        if (choice.isPresent() && choice.get().fields().isEmpty()) {
            problems.add(node.origin(), "Nothing to choose from is named", "Expected " + form + ".");
        }
        var options = new LinkedHashSet<Set<String>>();
        choice.flatMap(found -> found.field("kind")).ifPresent(field -> options.addAll(ofKinds(field)));
        choice.filter(found -> found.field("ingredient").isPresent())
                .ifPresent(found -> options.addAll(options(found, "ingredient")));
        return List.copyOf(options);
    }

    /** Every ingredient of the kinds, each lot on its own. */
    private Set<Set<String>> ofKinds(Field field) {
        var options = new LinkedHashSet<Set<String>>();
        for (var kind : expect.oneOrMore(field.value(), "a kind")) {
            boolean known = names.knowsKind(kind.origin(), kind.text());
            names.set()
                    .filter(set -> known)
                    .ifPresent(set -> set.ofKind(kind.text()).forEach(id -> options.add(Set.of(id))));
        }
        return options;
    }

    private Rule ifThen(ObjectNode rule, String path) {
        new Fields(rule, problems, "if", "then");
        var when = options(rule, "if");
        var then = required(rule, "then", "what must then be used, such as \"then\": \"psyllium\"")
                .map(node -> options(rule, "then"))
                .orElse(List.of());
        return new Rule.IfThen(when, then, path, rule.origin());
    }

    private Rule neverTogether(ObjectNode rule, String path) {
        new Fields(rule, problems, "neverTogether");
        var ids = rule.field("neverTogether").orElseThrow().value();
        var named = expect.texts(ids, "a list of ids, such as [\"konjac\", \"carrageenan\"]");
        return new Rule.NeverTogether(lots(named), path, rule.origin());
    }

    private List<Set<String>> options(ObjectNode rule, String field) {
        return lots(expect.oneOrMore(rule.field(field).orElseThrow().value(), IDS));
    }

    /** Each named ingredient with its other lots. */
    private List<Set<String>> lots(List<TextNode> named) {
        return named.stream()
                .filter(names::knowsIngredient)
                .flatMap(id -> names.set().map(set -> set.withVariants(id.text())).stream())
                .distinct()
                .toList();
    }

    private Optional<Node> required(ObjectNode rule, String field, String expected) {
        var value = rule.field(field).map(Field::value);
        if (value.isEmpty()) {
            problems.add(rule.origin(), "\"" + field + "\" is missing", "Expected " + expected + ".");
        }
        return value;
    }
}
