package panade.whatif;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import panade.document.Documents;
import panade.document.offer.PriceListText;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.TypedField;
import panade.domain.origin.Origin;
import panade.domain.purchase.Offer;

/**
 * The documents that say what was changed: a brief that is based on the one opened, and price lists with other prices.
 * A brief that is based on another cannot take a bound off it, nor a target, nor change a bound without a name; then it
 * is written out whole.
 */
final class DerivedBrief {
    private static final Origin HERE = new Origin("", 1, 1, "");
    private static final Set<String> PATHS = Set.of("ingredients", "prices", "trials");

    private final ChangedBrief brief;
    private final Changes changes;
    private final Path target;
    private final ObjectNode root;

    private DerivedBrief(ChangedBrief brief, Changes changes, Path target, ObjectNode root) {
        this.brief = brief;
        this.changes = changes;
        this.target = target;
        this.root = root;
    }

    /**
     * The texts by file, the brief first.
     *
     * @param target where the brief is to stand
     * @return empty where the documents cannot be read or prices do not stand in CSV files
     */
    static Optional<Map<Path, String>> of(ChangedBrief brief, Changes changes, Path target) {
        return Documents.written(brief.file(), brief.overriding(changes))
                .flatMap(root -> new DerivedBrief(brief, changes, target, root).texts());
    }

    private Optional<Map<Path, String>> texts() {
        var lists = new LinkedHashMap<Path, Path>();
        var texts = new LinkedHashMap<Path, String>();
        texts.put(target, "");
        for (var list : changedCells().entrySet()) {
            var file = target.resolveSibling(
                    stem() + "-prices" + (lists.isEmpty() ? "" : "-" + (lists.size() + 1)) + ".csv");
            var text = PriceListText.of(list.getKey(), list.getValue());
            if (text.isEmpty() || list.getKey().toString().endsWith(".xlsx")) {
                return Optional.empty();
            }
            lists.put(list.getKey().toAbsolutePath().normalize(), file);
            texts.put(file, text.get());
        }
        texts.put(target, NodeText.document(isDerivable() ? derived(lists) : whole(lists)));
        return Optional.of(texts);
    }

    private String stem() {
        return Objects.requireNonNull(target.getFileName()).toString().replaceFirst("\\.json$", "");
    }

    /** Cells of price lists that are written anew, by list and line. */
    private Map<Path, Map<Integer, Map<String, String>>> changedCells() {
        var cells = new LinkedHashMap<Path, Map<Integer, Map<String, String>>>();
        for (Offer offer : ChangedBrief.offers(brief.start())) {
            var row = new TreeMap<String, String>();
            var price = changes.prices().get(offer.id());
            if (price != null) {
                int slash = price.indexOf('/');
                row.put("price", price.substring(0, slash).strip());
                row.put("per", price.substring(slash + 1).strip());
            }
            if (changes.out().contains(offer.id())) {
                row.put("available", "0 kg");
            }
            if (!row.isEmpty()) {
                cells.computeIfAbsent(Path.of(offer.origin().file()), list -> new TreeMap<>())
                        .put(offer.id().row(), row);
            }
        }
        return cells;
    }

    private boolean isDerivable() {
        return !"".equals(changes.target() == null ? null : changes.target().strip())
                && changes.limits().stream()
                        .allMatch(typed -> isStage(typed) || named(typed).isPresent());
    }

    private static boolean isStage(TypedField typed) {
        return typed.pointer().startsWith("/stages/");
    }

    /** The bound as it is now, if it is still there and has a name. */
    private Optional<Node> named(TypedField typed) {
        return items("bounds")
                .filter(node -> node.origin().file().equals(typed.file())
                        && node.origin().pointer().equals(typed.pointer()))
                .filter(node ->
                        node instanceof ObjectNode bound && bound.field("name").isPresent())
                .findFirst();
    }

    private Stream<Node> items(String field) {
        return root.field(field)
                .map(Field::value)
                .filter(ArrayNode.class::isInstance)
                .map(list -> ((ArrayNode) list).items().stream())
                .orElse(Stream.of());
    }

    private List<Field> derived(Map<Path, Path> lists) {
        var fields = new ArrayList<Field>();
        fields.add(field("basedOn", new TextNode(HERE, from(brief.file()))));
        Stream.of("batch", "target")
                .flatMap(name -> root.field(name).stream())
                .filter(field -> field.value().origin().line() == 0)
                .forEach(fields::add);
        avoided().ifPresent(fields::add);
        root.field("prices")
                .filter(field -> !lists.isEmpty() || field.value().origin().line() == 0)
                .ifPresent(field -> fields.add(field("prices", moved(field.value(), lists))));
        var bounds = changes.limits().stream()
                .filter(typed -> !isStage(typed))
                .flatMap(typed -> named(typed).stream())
                .distinct()
                .toList();
        if (!bounds.isEmpty()) {
            fields.add(field("bounds", new ArrayNode(HERE, bounds)));
        }
        if (changes.limits().stream().anyMatch(DerivedBrief::isStage)) {
            root.field("stages").ifPresent(fields::add);
        }
        return fields;
    }

    private List<Field> whole(Map<Path, Path> lists) {
        var avoided = avoided();
        return root.fields().stream()
                .filter(field -> !field.name().equals("basedOn"))
                .filter(field -> avoided.isEmpty() || !field.name().equals("avoid"))
                .map(field -> PATHS.contains(field.name()) ? field(field.name(), moved(field.value(), lists)) : field)
                .collect(() -> new ArrayList<>(avoided.stream().toList()), List::add, List::addAll);
    }

    /** What is kept out, where the command line keeps out more than the brief. */
    private Optional<Field> avoided() {
        var more = brief.overriding(changes).without();
        if (more.isEmpty()) {
            return Optional.empty();
        }
        var avoid = root.field("avoid").map(Field::value).orElse(new ObjectNode(HERE, List.of()));
        var fields = new ArrayList<>(avoid instanceof ObjectNode object ? object.fields() : List.<Field>of());
        var ids = new ArrayList<Node>();
        fields.stream()
                .filter(each -> each.name().equals("ingredients") && each.value() instanceof ArrayNode)
                .forEach(each -> ids.addAll(((ArrayNode) each.value()).items()));
        more.forEach(id -> ids.add(new TextNode(HERE, id)));
        fields.removeIf(each -> each.name().equals("ingredients"));
        fields.add(field("ingredients", new ArrayNode(HERE, ids)));
        return Optional.of(field("avoid", new ObjectNode(HERE, fields)));
    }

    private static Field field(String name, Node value) {
        return new Field(name, HERE, value);
    }

    /** Paths as they are written in the folder of the target, with some lists in the place of others. */
    private Node moved(Node node, Map<Path, Path> lists) {
        if (node instanceof ArrayNode list) {
            return new ArrayNode(
                    HERE, list.items().stream().map(item -> moved(item, lists)).toList());
        }
        if (!(node instanceof TextNode text)) {
            return node;
        }
        var path = Path.of(text.origin().file()).resolveSibling(text.text());
        var other = lists.get(path.toAbsolutePath().normalize());
        return new TextNode(HERE, from(other == null ? path : other));
    }

    /** A path from the folder of the target, with slashes as documents have them. */
    private String from(Path file) {
        @Nullable Path folder = target.toAbsolutePath().normalize().getParent();
        var whole = file.toAbsolutePath().normalize();
        return (folder == null ? whole : folder.relativize(whole)).toString().replace('\\', '/');
    }
}
