package panade.document.selector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.domain.Measure;
import panade.quantity.Unit;

/** Reads what a bound is about: one selector, perhaps a sum of them, perhaps within something. */
public final class SelectorReader {
    /** The fields of which a selector has exactly one. */
    static final List<String> SELECTORS = List.of("property", "kind", "ingredient", "stage", "sum");

    private static final String[] ALONE = {"property", "kind", "ingredient", "stage", "sum", "within"};
    private static final String FORM = "Expected one of \"property\", \"kind\", \"ingredient\", \"stage\" or \"sum\".";

    private final Names names;
    private final Expect expect;
    private final PickReader picks;
    private final @Nullable String stage;

    /** A reader for selectors of the whole batch, or of one stage. */
    public SelectorReader(Names names, @Nullable String stage) {
        this.names = names;
        this.expect = new Expect(names.problems());
        this.picks = new PickReader(names);
        this.stage = stage;
    }

    /** A selector that is an object of its own, as under {@code per}. */
    public Optional<Selection> readAlone(Node node) {
        var object = expect.object(node, "a selector, such as {\"kind\": \"binder\"}");
        object.ifPresent(found -> new Fields(found, names.problems(), ALONE));
        return object.flatMap(found -> read(found, Set.of(ALONE)));
    }

    /** The selector among the fields of an object whose fields are looked at elsewhere. */
    public Optional<Selection> read(ObjectNode object, Set<String> known) {
        var chosen = object.fields().stream()
                .filter(field -> SELECTORS.contains(field.name()))
                .toList();
        if (chosen.isEmpty()) {
            tellMissing(object, known);
            return Optional.empty();
        }
        if (chosen.size() > 1) {
            tellSecond(chosen.get(0), chosen.get(1));
            return Optional.empty();
        }
        return select(chosen.get(0)).map(selection -> narrowed(selection, object));
    }

    // A misspelt selector has been told as an unknown field already.
    private void tellMissing(ObjectNode object, Set<String> known) {
        if (object.fields().stream().allMatch(field -> known.contains(field.name()))) {
            names.problems().add(object.origin(), "Nothing says what is meant", FORM);
        }
    }

    private void tellSecond(Field first, Field second) {
        var what = "\"" + second.name() + "\" stands beside \"" + first.name() + "\"";
        names.problems().add(second.nameOrigin(), what, "Expected one selector only; use \"sum\" to add several up.");
    }

    private Optional<Selection> select(Field field) {
        return field.name().equals("sum") ? sum(field.value()) : picks.read(field);
    }

    private Optional<Selection> sum(Node node) {
        var form = "a list of selectors, such as [{\"kind\": \"binder\"}, {\"kind\": \"starch\"}]";
        var items = expect.list(node, form);
        if (items.isPresent() && items.get().items().isEmpty()) {
            names.problems().add(node.origin(), "The sum is empty", "Expected " + form + ".");
            return Optional.empty();
        }
        return items.flatMap(list -> added(list.items()));
    }

    private Optional<Selection> added(List<Node> items) {
        var selections = new ArrayList<Selection>();
        boolean sound = true;
        for (var item : items) {
            var selection = unnarrowedByStage().readAlone(item);
            selection.ifPresent(selections::add);
            sound &= selection.isPresent() && isLike(selections.get(0), selections.get(selections.size() - 1), item);
        }
        return selections.isEmpty() ? Optional.empty() : Optional.of(joined(selections, sound));
    }

    private SelectorReader unnarrowedByStage() {
        return new SelectorReader(names, null);
    }

    private boolean isLike(Selection first, Selection other, Node place) {
        boolean like = first.unit().isEmpty()
                || other.unit().isEmpty()
                || first.unit().get().measuresLike(other.unit().get());
        if (!like) {
            var what = "\"" + other.name() + "\" is not measured like \"" + first.name() + "\"";
            names.problems().add(place.origin(), what, "Expected parts of a sum that are measured alike.");
        }
        return like;
    }

    private static Selection joined(List<Selection> all, boolean sound) {
        var name = all.stream().map(Selection::name).collect(Collectors.joining("+"));
        var parts = all.stream().flatMap(each -> each.parts().stream()).toList();
        boolean plain = all.stream().allMatch(Selection::plainMass);
        boolean allSound = sound && all.stream().allMatch(Selection::sound);
        return new Selection(name, all.get(0).unit(), plain, parts, allSound);
    }

    private Selection narrowed(Selection selection, ObjectNode object) {
        var within = object.field("within").map(Field::value);
        var reader = new WithinReader(names);
        var narrowed = within.isPresent() ? reader.narrow(selection, within.get()) : selection;
        return stage == null ? narrowed : WithinReader.toStage(narrowed, stage);
    }

    /** The mass of everything. */
    public static Measure massOfAll(Names names) {
        return new Measure("batch", Unit.PERCENT, List.of(PickReader.everywhere(names)));
    }

    /** The whole mass of a stage. */
    public static Measure massOf(String stage, Names names) {
        return new Measure(stage, Unit.PERCENT, List.of(PickReader.stagePart(stage, names)));
    }
}
