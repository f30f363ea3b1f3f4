package panade.document;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import panade.document.kitchen.BriefSheets;
import panade.document.kitchen.Workbook;
import panade.document.syntax.Expect;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.document.syntax.References;

/** Reads a brief with the briefs it is based on, merged into one object whose nodes remember their own files. */
final class BriefChain {
    /** How many briefs may be based on each other in a row. */
    private static final int LONGEST = 50;

    private final Problems problems;
    private final Expect expect;
    private final Set<Path> open = new LinkedHashSet<>();
    private boolean whole = true;

    BriefChain(Problems problems) {
        this.problems = problems;
        this.expect = new Expect(problems);
    }

    /** The merged brief; empty when nothing of it can be read. */
    Optional<ObjectNode> read(Path file, String shownAs) {
        problems.opened(shownAs);
        open.add(identity(file));
        var brief = Workbook.isNamed(file)
                ? BriefSheets.read(file, shownAs, problems)
                : JsonDocument.read(file, shownAs, problems)
                        .flatMap(
                                root -> expect.object(root, "a brief, such as {\"batch\": \"10 kg\", \"bounds\": []}"));
        return brief.map(this::onItsBasis);
    }

    /** Whether every brief of the chain could be read. */
    boolean isWhole() {
        return whole;
    }

    private static Path identity(Path file) {
        return file.toAbsolutePath().normalize();
    }

    private ObjectNode onItsBasis(ObjectNode brief) {
        var reference = brief.field("basedOn")
                .flatMap(field -> expect.text(field.value(), "the path of another brief, such as \"basis.json\""));
        var file = reference.flatMap(node -> new References(problems).file(node));
        if (file.isPresent() && open.contains(identity(file.get()))) {
            var what = "\"" + file.get() + "\" is based on itself in a circle";
            problems.add(reference.get().origin(), what, "Expected a brief that is not based on this one.");
            whole = false;
            return brief;
        }
        if (file.isPresent() && open.size() >= LONGEST) {
            var what = "This is the brief number " + LONGEST + " in a row that is based on another";
            problems.add(reference.get().origin(), what, "Expected a shorter row of briefs.");
            whole = false;
            return brief;
        }
        var basis = file.flatMap(path -> read(path, path.toString()));
        whole &= brief.field("basedOn").isEmpty() || basis.isPresent();
        return basis.map(parent -> merged(parent, brief)).orElse(brief);
    }

    private static ObjectNode merged(ObjectNode parent, ObjectNode child) {
        var fields = new ArrayList<Field>();
        for (var field : child.fields()) {
            var below = parent.field(field.name()).map(Field::value);
            boolean bounds = field.name().equals("bounds") && below.isPresent();
            fields.add(bounds ? mergedBounds(field, below.get()) : field);
        }
        parent.fields().stream()
                .filter(field -> child.field(field.name()).isEmpty())
                .forEach(fields::add);
        return new ObjectNode(child.origin(), List.copyOf(fields));
    }

    private static Field mergedBounds(Field field, Node below) {
        if (!(field.value() instanceof ArrayNode own) || !(below instanceof ArrayNode parent)) {
            return field;
        }
        var bounds = new ArrayList<>(parent.items());
        for (var bound : own.items()) {
            int place = placeOf(bound, parent.items());
            if (place >= 0) {
                bounds.set(place, bound);
            } else {
                bounds.add(bound);
            }
        }
        return new Field(field.name(), field.nameOrigin(), new ArrayNode(own.origin(), List.copyOf(bounds)));
    }

    private static int placeOf(Node bound, List<Node> among) {
        var name = name(bound);
        for (int i = 0; i < among.size(); i++) {
            if (name.isPresent() && name.equals(name(among.get(i)))) {
                return i;
            }
        }
        return -1;
    }

    private static Optional<String> name(Node bound) {
        return bound instanceof ObjectNode object
                ? object.field("name")
                        .map(Field::value)
                        .filter(TextNode.class::isInstance)
                        .map(node -> ((TextNode) node).text())
                : Optional.empty();
    }
}
