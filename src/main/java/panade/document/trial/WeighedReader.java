package panade.document.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.selector.Names;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.domain.Use;
import panade.domain.trial.Weighed;
import panade.quantity.Quantity;

/** Reads amounts by stage and ingredient: {@code {"soak": {"water": "158 g"}}}. */
final class WeighedReader {
    private static final String FORM = "weights by stage and ingredient, such as {\"mix\": {\"salt\": \"4.5 g\"}}";
    private static final String EXAMPLE = "158.0 g";

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
        var kilograms = new LinkedHashMap<Use, BigFraction>();
        var stages = expect.object(node, FORM);
        stages.ifPresent(found -> found.fields().forEach(stage -> readStage(stage, kilograms)));
        if (stages.isPresent() && kilograms.isEmpty() && names.problems().count() == before) {
            names.problems().add(node.origin(), "Nothing was weighed", "Expected " + FORM + ".");
        }
        return names.problems().count() > before ? Optional.empty() : Optional.of(new Weighed(kilograms));
    }

    private void readStage(Field stage, Map<Use, BigFraction> kilograms) {
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
                .ifPresent(found -> found.fields().forEach(each -> readAmount(stage.name(), each, kilograms)));
    }

    private void readAmount(String stage, Field field, Map<Use, BigFraction> kilograms) {
        var id = names.id(field.name());
        var weight = weight(field.value());
        if (!names.knowsIngredient(field.nameOrigin(), id)) {
            return;
        }
        boolean twice = weight.filter(found -> kilograms.putIfAbsent(new Use(id, stage), found.base()) != null)
                .isPresent();
        if (twice) {
            names.problems()
                    .add(
                            field.nameOrigin(),
                            "\"" + id + "\" is weighed in twice in the stage \"" + stage + "\"",
                            "Expected one weight of it for each stage.");
        }
    }

    /** A weight, or an object that has one: whoever sold it does not matter here. */
    private Optional<Quantity> weight(Node node) {
        if (node instanceof ObjectNode object) {
            var fields = new Fields(object, names.problems(), "amount", "supplier", "lot");
            return fields.required("amount", "a weight, such as \"" + EXAMPLE + "\"")
                    .flatMap(amount -> amounts.weight(amount, EXAMPLE));
        }
        return amounts.weight(node, EXAMPLE);
    }
}
