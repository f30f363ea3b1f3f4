package panade.document.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import panade.document.selector.Names;
import panade.document.selector.Selection;
import panade.document.selector.SelectorReader;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Bound;
import panade.domain.LimitKind;
import panade.domain.Measure;
import panade.domain.origin.Origin;
import panade.quantity.Quantity;

/** Reads the bounds of a brief or of one stage. */
final class BoundReader {
    /** A bound with where its ratio was written, for what can be checked only when all is read. */
    record Draft(Bound bound, @Nullable Origin perOrigin) {}

    private static final String[] FIELDS = {
        "name", "property", "kind", "ingredient", "stage", "sum", "within", "per", "min", "max", "state", "sure"
    };
    private static final List<String> STATES = List.of("raw", "cooked");

    private final Names names;
    private final Problems problems;
    private final Expect expect;
    private final LimitReader limits;
    private final @Nullable String stage;

    /** A reader for bounds of the whole batch, or of a stage. */
    BoundReader(Names names, @Nullable Quantity batch, @Nullable Quantity serving, @Nullable String stage) {
        this.names = names;
        this.problems = names.problems();
        this.expect = new Expect(problems);
        // A share of a stage and a weight in the batch do not compare.
        this.limits = new LimitReader(problems, stage == null ? batch : null, serving);
        this.stage = stage;
    }

    /** All bounds of a list; results point to where each is written, in this brief or in the one it is based on. */
    List<Draft> readAll(Node node) {
        var form = "a list of bounds, such as [{\"property\": \"FAT\", \"max\": \"10 %\"}]";
        var items = expect.list(node, form).map(ArrayNode::items).orElse(List.of());
        var drafts = new ArrayList<Draft>();
        items.forEach(item -> read(item).ifPresent(drafts::add));
        return drafts;
    }

    private Optional<Draft> read(Node node) {
        var object = expect.object(node, "a bound, such as {\"property\": \"FAT\", \"max\": \"10 %\"}");
        return object.flatMap(this::read);
    }

    private Optional<Draft> read(ObjectNode object) {
        var path = object.origin().pointer();
        int faultsBefore = problems.count();
        new Fields(object, problems, FIELDS);
        var per = object.field("per").map(Field::value);
        var of = new SelectorReader(names, stage).read(object, Set.of(FIELDS));
        var against = per.flatMap(node -> new SelectorReader(names, stage).readAlone(node));
        var read = form(object, of, per.isPresent(), against).map(form -> limits.read(object, form));
        var name = name(object, of, against);
        var state = state(object);
        var sure = read.flatMap(limits -> new SurenessReader(problems).read(object, of, against, limits));
        var base = per.isPresent() ? against.flatMap(Selection::measure) : wholeStage();
        boolean sound = problems.count() == faultsBefore && (per.isEmpty() || base.isPresent());
        return of.flatMap(Selection::measure)
                .filter(measure -> sound)
                .flatMap(measure -> read.map(found -> new Bound(
                        stage == null ? LimitKind.BRIEF : LimitKind.STAGE,
                        name,
                        path,
                        measure,
                        base.orElse(null),
                        found.min(),
                        found.max(),
                        state,
                        object.origin())))
                .map(bound -> bound.withSureness(sure.orElse(null)))
                .map(bound -> new Draft(bound, per.map(Node::origin).orElse(null)));
    }

    private Optional<Measure> wholeStage() {
        return Optional.ofNullable(stage).map(id -> SelectorReader.massOf(id, names));
    }

    private Optional<LimitForm> form(
            ObjectNode object, Optional<Selection> of, boolean ratio, Optional<Selection> per) {
        if (!ratio) {
            return Optional.of(of.map(LimitForm::of).orElseGet(() -> LimitForm.anything("", true)));
        }
        if (of.isEmpty() || per.isEmpty()) {
            return Optional.of(LimitForm.anything("", false));
        }
        var form = LimitForm.ratio(of.get(), per.get());
        if (form.isEmpty()) {
            tellIncomparable(object, of.get(), per.get());
        }
        return form;
    }

    private void tellIncomparable(ObjectNode object, Selection of, Selection per) {
        problems.add(
                object.field("per").orElseThrow().value().origin(),
                "\"" + of.name() + "\" cannot be measured per \"" + per.name() + "\"",
                "Expected a mass per mass, a property per kind, ingredient or stage, or a score per score or mass.");
    }

    private String name(ObjectNode object, Optional<Selection> of, Optional<Selection> per) {
        var given = object.field("name")
                .flatMap(field -> expect.text(field.value(), "a text to call the bound by"))
                .map(TextNode::text);
        return given.orElseGet(() -> of.map(Selection::name).orElse("")
                + per.map(selection -> " per " + selection.name()).orElse("")
                + limitNamed(object, "min")
                + limitNamed(object, "max"));
    }

    private static String limitNamed(ObjectNode object, String side) {
        return object.field(side)
                .map(field -> " " + side + " " + Expect.spelling(field.value()))
                .orElse("");
    }

    private String state(ObjectNode object) {
        var form = "\"raw\" or \"cooked\"";
        var text = object.field("state").flatMap(field -> expect.text(field.value(), form));
        text.filter(found -> !STATES.contains(found.text()))
                .ifPresent(found -> problems.unknown(
                        found.origin(),
                        "There is no state \"" + found.text() + "\"",
                        found.text(),
                        STATES,
                        "Expected " + form + "."));
        return text.map(TextNode::text).orElse("raw");
    }
}
