package panade.document.selector;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.domain.Measure.Part;
import panade.domain.pantry.IngredientSet;

/** Narrows a selection to what lies within one kind, ingredient or stage. */
record WithinReader(Names names) {
    private static final String FORM = "one kind, ingredient or stage, such as {\"kind\": \"texturate\"}";
    private static final Set<String> KNOWN = Set.of("kind", "ingredient", "stage");

    Selection narrow(Selection selection, Node node) {
        var object = new Expect(names.problems()).object(node, FORM);
        return object.map(found -> narrow(selection, found)).orElseGet(() -> unsound(selection));
    }

    private Selection narrow(Selection selection, ObjectNode object) {
        new Fields(object, names.problems(), "kind", "ingredient", "stage");
        var known = object.fields().stream()
                .filter(field -> KNOWN.contains(field.name()))
                .toList();
        if (known.size() != 1) {
            tellCount(object, known);
            return unsound(selection);
        }
        var name = new Expect(names.problems()).text(known.get(0).value(), "one name");
        return name.map(text -> narrow(selection, known.get(0), text.text())).orElseGet(() -> unsound(selection));
    }

    private void tellCount(ObjectNode object, List<Field> known) {
        if (known.size() > 1) {
            names.problems()
                    .add(
                            known.get(1).nameOrigin(),
                            "\"" + known.get(1).name() + "\" stands beside \""
                                    + known.get(0).name() + "\"",
                            "Expected " + FORM + ".");
        } else if (object.fields().isEmpty()) {
            names.problems().add(object.origin(), "Nothing says within what", "Expected " + FORM + ".");
        }
    }

    private Selection narrow(Selection selection, Field field, String name) {
        var origin = field.value().origin();
        return switch (field.name()) {
            case "stage" -> names.knowsStage(origin, name) ? toStage(selection, name) : unsound(selection);
            case "kind" ->
                names.knowsKind(origin, name)
                        ? toIngredients(
                                selection,
                                names.set().map(set -> set.ofKind(name)).orElse(Set.of()))
                        : unsound(selection);
            default ->
                names.knowsIngredient(origin, name)
                        ? toIngredients(
                                selection,
                                names.set().map(set -> lots(set, name)).orElse(Set.of()))
                        : unsound(selection);
        };
    }

    private static Set<String> lots(IngredientSet set, String id) {
        return new HashSet<>(set.withVariants(id));
    }

    /** The same seen in one stage alone; what was asked of another stage is nothing there. */
    static Selection toStage(Selection selection, String stage) {
        return with(
                selection,
                selection.parts().stream()
                        .map(part -> part.stage() == null || part.stage().equals(stage)
                                ? new Part(part.properties(), part.ingredients(), stage)
                                : new Part(part.properties(), Map.of(), stage))
                        .toList());
    }

    private static Selection toIngredients(Selection selection, Set<String> ids) {
        return with(
                selection,
                selection.parts().stream()
                        .map(part -> new Part(
                                part.properties(),
                                part.ingredients().entrySet().stream()
                                        .filter(entry -> ids.contains(entry.getKey()))
                                        .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue)),
                                part.stage()))
                        .toList());
    }

    private static Selection with(Selection selection, List<Part> parts) {
        return new Selection(selection.name(), selection.unit(), selection.plainMass(), parts, selection.sound());
    }

    private static Selection unsound(Selection selection) {
        return new Selection(selection.name(), selection.unit(), selection.plainMass(), selection.parts(), false);
    }
}
