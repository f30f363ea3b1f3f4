package panade.document.trial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import panade.document.selector.Names;
import panade.document.selector.Selection;
import panade.document.selector.SelectorReader;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.domain.trial.Lever;
import panade.quantity.Unit;

/** Reads levers by name: selectors as in bounds, perhaps per another one, and settings of the process. */
final class LeverReader {
    private static final String FORM = "levers by name, such as {\"ether\": {\"kind\": \"cellulose-ether\"}}";
    private static final String[] FIELDS = {"property", "kind", "ingredient", "stage", "sum", "within", "per", "process"
    };

    private final Names names;
    private final Expect expect;

    LeverReader(Names names) {
        this.names = names;
        this.expect = new Expect(names.problems());
    }

    List<Lever> read(Node node) {
        var levers = new ArrayList<Lever>();
        expect.object(node, FORM)
                .ifPresent(found -> found.fields().forEach(each -> lever(each).ifPresent(levers::add)));
        return levers;
    }

    private Optional<Lever> lever(Field field) {
        var object = expect.object(field.value(), FORM);
        object.ifPresent(found -> new Fields(found, names.problems(), FIELDS));
        return object.flatMap(found ->
                found.field("process").isPresent() ? process(field.name(), found) : ofBlend(field.name(), found));
    }

    private Optional<Lever> process(String name, ObjectNode object) {
        if (object.fields().size() > 1) {
            names.problems()
                    .add(
                            object.origin(),
                            "A setting of the process stands beside something else",
                            "Expected {\"process\": \"rest, min\"} alone.");
        }
        return expect.text(object.field("process").orElseThrow().value(), "the name of a setting in the trials")
                .map(setting -> new Lever.OfProcess(name, setting.text(), object.origin()));
    }

    private Optional<Lever> ofBlend(String name, ObjectNode object) {
        var reader = new SelectorReader(names, null);
        var selection = reader.read(object, new HashSet<>(Set.of(FIELDS)));
        var measure = selection.flatMap(Selection::measure);
        var per = object.field("per");
        if (per.isEmpty()) {
            return measure.map(found ->
                    new Lever.OfBlend(name, found, selection.orElseThrow().plainMass(), object.origin()));
        }
        var below = reader.readAlone(per.get().value()).flatMap(Selection::measure);
        return measure.flatMap(
                found -> below.map(other -> new Lever.OfRatio(name, found, other, Unit.NUMBER, object.origin())));
    }
}
