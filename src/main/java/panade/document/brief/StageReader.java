package panade.document.brief;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import panade.document.selector.Names;
import panade.document.selector.SelectorReader;
import panade.document.syntax.Amounts;
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
import panade.domain.Stage;
import panade.domain.pantry.IngredientSet;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Reads the stages: what may go into each, and what is asked of it. */
final class StageReader {
    /** The stages in order, mix last, and their bounds. */
    record Stages(List<Stage> stages, List<BoundReader.Draft> bounds) {}

    private static final String[] FIELDS = {
        "id", "title", "kinds", "ingredients", "share", "bounds", "method", "weighing"
    };
    private static final String FORM = "a list of stages, such as [{\"id\": \"soak\", \"ingredients\": [\"water\"]}]";

    private final Names names;
    private final Problems problems;
    private final Expect expect;
    private final @Nullable Quantity batch;

    StageReader(Names names, @Nullable Quantity batch) {
        this.names = names;
        this.problems = names.problems();
        this.expect = new Expect(problems);
        this.batch = batch;
    }

    /** The ids of all stages, without telling of any fault. */
    static Set<String> ids(Optional<Node> node) {
        var ids = new LinkedHashSet<String>();
        node.filter(ArrayNode.class::isInstance)
                .ifPresent(list -> ((ArrayNode) list).items().forEach(item -> {
                    if (item instanceof ObjectNode object
                            && object.field("id").map(Field::value).orElse(null) instanceof TextNode id) {
                        ids.add(id.text());
                    }
                }));
        ids.add(Stage.MIX);
        return ids;
    }

    Stages read(Optional<Node> node) {
        var stages = new ArrayList<Stage>();
        var bounds = new ArrayList<BoundReader.Draft>();
        var items = node.flatMap(list -> expect.list(list, FORM))
                .map(ArrayNode::items)
                .orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            var object =
                    expect.object(items.get(i), "a stage, such as {\"id\": \"soak\", \"ingredients\": [\"water\"]}");
            if (object.isPresent()) {
                read(object.get(), "/stages/" + i, stages, bounds);
            }
        }
        return new Stages(withMixLast(stages), bounds);
    }

    private void read(ObjectNode object, String path, List<Stage> stages, List<BoundReader.Draft> bounds) {
        new Fields(object, problems, FIELDS);
        var id = id(object, stages);
        var title = text(object, "title").orElse(id);
        stages.add(new Stage(id, title, ingredients(object), method(object), weighing(object)));
        object.field("share")
                .flatMap(field -> share(field.value(), id, path + "/share"))
                .ifPresent(bounds::add);
        object.field("bounds")
                .ifPresent(field -> bounds.addAll(new BoundReader(names, batch, null, id).readAll(field.value())));
    }

    private String id(ObjectNode object, List<Stage> before) {
        var id = text(object, "id");
        if (object.field("id").isEmpty()) {
            problems.add(object.origin(), "\"id\" is missing", "Expected the stage's name, such as \"id\": \"soak\".");
        }
        id.filter(name -> before.stream().anyMatch(stage -> stage.id().equals(name)))
                .ifPresent(name -> problems.add(
                        object.field("id").orElseThrow().value().origin(),
                        "A stage \"" + name + "\" is there already",
                        "Expected another name for this one."));
        return id.orElse("");
    }

    private Optional<String> text(ObjectNode object, String name) {
        return object.field(name)
                .flatMap(field -> expect.text(field.value(), "a text"))
                .map(TextNode::text);
    }

    private @Nullable Quantity weighing(ObjectNode object) {
        return object.field("weighing")
                .flatMap(field -> new Amounts(problems).weight(field.value(), "0.1 g"))
                .orElse(null);
    }

    private List<String> method(ObjectNode object) {
        return object
                .field("method")
                .map(field -> expect.texts(field.value(), "a list of steps, such as [\"Stir.\"]"))
                .orElse(List.of())
                .stream()
                .map(TextNode::text)
                .toList();
    }

    private Set<String> ingredients(ObjectNode object) {
        var ids = new LinkedHashSet<String>();
        for (var kind : listed(object, "kinds")) {
            if (names.knowsKind(kind.origin(), kind.text())) {
                names.set().ifPresent(set -> ids.addAll(set.ofKind(kind.text())));
            }
        }
        for (var id : listed(object, "ingredients")) {
            if (names.knowsIngredient(id)) {
                names.set().ifPresent(set -> ids.addAll(set.withVariants(id.text())));
            }
        }
        return ids;
    }

    private List<TextNode> listed(ObjectNode object, String name) {
        return object.field(name)
                .map(field -> expect.texts(field.value(), "a list of names, such as [\"water\"]"))
                .orElse(List.of());
    }

    private Optional<BoundReader.Draft> share(Node node, String stage, String path) {
        int faultsBefore = problems.count();
        var object = expect.object(node, "limits, such as {\"min\": \"15 %\", \"max\": \"30 %\"}");
        object.ifPresent(found -> new Fields(found, problems, "min", "max"));
        var form = new LimitForm(
                stage, false, Optional.of(Unit.PERCENT), true, true, false, "a share of the batch, such as \"15 %\"");
        var limits = object.map(found -> new LimitReader(problems, batch, null).read(found, form));
        var mass = SelectorReader.massOf(stage, names);
        return limits.filter(found -> problems.count() == faultsBefore)
                .map(found -> new BoundReader.Draft(
                        new Bound(
                                LimitKind.STAGE,
                                stage + " share",
                                path,
                                mass,
                                null,
                                found.min(),
                                found.max(),
                                "raw",
                                node.origin()),
                        null));
    }

    // What another stage names stays out of the mix unless the mix names it too.
    private List<Stage> withMixLast(List<Stage> read) {
        var others =
                read.stream().filter(stage -> !stage.id().equals(Stage.MIX)).toList();
        var mix = read.stream().filter(stage -> stage.id().equals(Stage.MIX)).findFirst();
        var inMix = new LinkedHashSet<>(names.set()
                .map(IngredientSet::ingredients)
                .map(all -> all.keySet())
                .orElse(Set.of()));
        others.forEach(stage -> inMix.removeAll(stage.ingredients()));
        mix.ifPresent(stage -> inMix.addAll(stage.ingredients()));
        var stages = new ArrayList<>(others);
        stages.add(new Stage(
                Stage.MIX,
                mix.map(Stage::title).orElse(Stage.MIX),
                inMix,
                mix.map(Stage::method).orElse(List.of()),
                mix.map(Stage::weighing).orElse(null)));
        return stages;
    }
}
