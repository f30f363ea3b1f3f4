package panade.document.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import panade.domain.Use;
import panade.domain.origin.Origin;
import panade.domain.trial.Weighed;

/** Reads amounts by stage and ingredient: {@code {"soak": {"water": "158 g"}}}. */
final class WeighedReader {
    private static final String FORM = "weights by stage and ingredient, such as {\"mix\": {\"salt\": \"4.5 g\"}}";
    private static final String EXAMPLE = "158.0 g";

    /** Where a line stands, and its weights by whose goods they are. */
    record Line(Origin origin, List<Portion> portions) {
        private BigFraction kilograms() {
            return portions.stream().map(Portion::kilograms).reduce(BigFraction.ZERO, BigFraction::add);
        }
    }

    /** Some of a line; whose goods it is, where that is told. */
    record Portion(BigFraction kilograms, Optional<TextNode> supplier) {}

    private final Names names;
    private final Expect expect;
    private final Amounts amounts;

    WeighedReader(Names names) {
        this.names = names;
        this.expect = new Expect(names.problems());
        this.amounts = new Amounts(names.problems());
    }

    /** What was weighed; empty when some of it was not understood. */
    Optional<Weighed> read(Node node) {
        int before = names.problems().count();
        var lines = lines(node);
        return names.problems().count() > before ? Optional.empty() : Optional.of(weighed(lines));
    }

    /** What some lines weigh. */
    static Weighed weighed(Map<Use, Line> lines) {
        var kilograms = new LinkedHashMap<Use, BigFraction>();
        lines.forEach((use, line) -> kilograms.put(use, line.kilograms()));
        return new Weighed(kilograms);
    }

    /** The same line by line, as far as it was understood. */
    Map<Use, Line> lines(Node node) {
        int before = names.problems().count();
        var lines = new LinkedHashMap<Use, Line>();
        var stages = expect.object(node, FORM);
        stages.ifPresent(found -> found.fields().forEach(stage -> readStage(stage, lines)));
        if (stages.isPresent() && lines.isEmpty() && names.problems().count() == before) {
            names.problems().add(node.origin(), "Nothing was weighed", "Expected " + FORM + ".");
        }
        return lines;
    }

    private void readStage(Field stage, Map<Use, Line> lines) {
        if (!names.stages().contains(stage.name())) {
            names.problems()
                    .unknown(
                            stage.nameOrigin(),
                            "No stage is called \"" + stage.name() + "\"",
                            stage.name(),
                            names.stages(),
                            "Expected a stage of the brief or \"mix\".");
        }
        expect.object(stage.value(), FORM)
                .ifPresent(found -> found.fields().forEach(each -> readLine(stage.name(), each, lines)));
    }

    private void readLine(String stage, Field field, Map<Use, Line> lines) {
        var id = names.id(field.name());
        var portions = portions(field.value());
        if (!names.knowsIngredient(field.nameOrigin(), id)) {
            return;
        }
        var line = new Line(field.nameOrigin(), portions);
        boolean isRead = !portions.isEmpty();
        if (isRead && (lines.putIfAbsent(new Use(id, stage), line) != null || namesOneTwice(portions))) {
            names.problems()
                    .add(
                            field.nameOrigin(),
                            "\"" + id + "\" is weighed in twice in the stage \"" + stage + "\"",
                            "Expected one weight of it for each stage, or one from each supplier.");
        }
    }

    private static boolean namesOneTwice(List<Portion> portions) {
        var suppliers = portions.stream()
                .map(portion -> portion.supplier().map(TextNode::text).orElse(""))
                .toList();
        return suppliers.stream().distinct().count() < suppliers.size();
    }

    private List<Portion> portions(Node node) {
        var portions = new ArrayList<Portion>();
        var items = node instanceof ArrayNode list ? list.items() : List.of(node);
        items.forEach(item -> portion(item).ifPresent(portions::add));
        return portions.size() < items.size() ? List.of() : portions;
    }

    /** A weight, or an object that has one. */
    private Optional<Portion> portion(Node node) {
        if (node instanceof ObjectNode object) {
            var fields = new Fields(object, names.problems(), "amount", "supplier", "lot");
            var supplier = fields.get("supplier").flatMap(each -> expect.text(each, "the supplier's name"));
            return fields.required("amount", "a weight, such as \"" + EXAMPLE + "\"")
                    .flatMap(amount -> amounts.weight(amount, EXAMPLE))
                    .map(weight -> new Portion(weight.base(), supplier));
        }
        return amounts.weight(node, EXAMPLE).map(weight -> new Portion(weight.base(), Optional.empty()));
    }
}
