package panade.document.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import panade.document.offer.CsvTable;
import panade.document.offer.PriceCell;
import panade.document.syntax.Expect;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.document.syntax.References;
import panade.document.syntax.TextFile;
import panade.domain.origin.Origin;
import panade.quantity.Decimal;

/**
 * Puts what stands in tables into the trials that it belongs to, as if it had been written there; each cell keeps its
 * place. One kind of table says what was weighed, {@code trial,stage,ingredient,amount}, the other what was measured,
 * {@code trial,response,value,by}.
 */
final class TrialTables {
    private static final CsvTable.Kind WEIGHED = new CsvTable.Kind(
            "a table of what was weighed",
            List.of("trial", "stage", "ingredient", "amount", "note"),
            List.of("trial", "stage", "ingredient", "amount"));
    private static final CsvTable.Kind MEASURED = new CsvTable.Kind(
            "a table of what was measured",
            List.of("trial", "response", "value", "by", "note"),
            List.of("trial", "response", "value"));

    private final Problems problems;
    private final Map<String, Draft> drafts = new LinkedHashMap<>();

    /** What tables say of a trial, by stage or by response. */
    private record Draft(TextNode id, Map<String, List<Field>> weighed, Map<String, List<Field>> measured) {}

    TrialTables(Problems problems) {
        this.problems = problems;
    }

    /** The trials with what their tables say; those that only tables know come last. */
    List<ObjectNode> merged(List<ObjectNode> trials, Optional<Node> tables) {
        tables.ifPresent(node -> new Expect(problems)
                .oneOrMore(node, "paths of tables, such as [\"trials-weighed.csv\"]")
                .forEach(each -> new References(problems).file(each).ifPresent(this::read)));
        var all = new ArrayList<ObjectNode>();
        for (var trial : trials) {
            var draft = id(trial).map(drafts::remove).orElse(null);
            all.add(draft == null ? trial : with(trial, draft));
        }
        drafts.values()
                .forEach(draft -> all.add(with(
                        new ObjectNode(
                                draft.id().origin(),
                                List.of(new Field("id", draft.id().origin(), draft.id()))),
                        draft)));
        return all;
    }

    private static Optional<String> id(ObjectNode trial) {
        return trial.field("id")
                .map(Field::value)
                .filter(TextNode.class::isInstance)
                .map(node -> ((TextNode) node).text());
    }

    private void read(Path file) {
        boolean measured = TextFile.read(file, file.toString(), problems)
                .filter(text -> text.lines().findFirst().orElse("").contains("response"))
                .isPresent();
        CsvTable.read(file, file.toString(), measured ? MEASURED : WEIGHED, problems)
                .ifPresent(rows -> rows.forEach(row -> add(row, measured)));
    }

    private void add(CsvTable.Row row, boolean measured) {
        var trial = cell(row, "trial");
        var key = cell(row, measured ? "response" : "stage");
        var blank = List.of(trial, key, cell(row, measured ? "value" : "ingredient")).stream()
                .filter(PriceCell::isBlank)
                .findFirst();
        if (blank.isPresent()) {
            // a bench sheet comes back with lines that nobody filled
            if (!measured || !cell(row, "value").isBlank()) {
                problems.add(blank.get().origin(), "This cell is empty", "Expected a name or a figure in it.");
            }
            return;
        }
        var draft = drafts.computeIfAbsent(
                trial.content(), id -> new Draft(text(trial), new LinkedHashMap<>(), new LinkedHashMap<>()));
        var fields = (measured ? draft.measured() : draft.weighed())
                .computeIfAbsent(key.content(), name -> new ArrayList<>());
        fields.add(measured ? measurement(row) : weight(row));
    }

    private static Field weight(CsvTable.Row row) {
        var ingredient = cell(row, "ingredient");
        return new Field(ingredient.content(), ingredient.origin(), text(cell(row, "amount")));
    }

    private static Field measurement(CsvTable.Row row) {
        var value = cell(row, "value");
        var by = row.cells().get("by");
        Node node = Decimal.parse(value.content())
                .<Node>map(number -> new NumberNode(value.origin(), number, value.content()))
                .orElseGet(() -> text(value));
        return new Field(by == null ? "" : by.content(), by == null ? value.origin() : by.origin(), node);
    }

    private static PriceCell cell(CsvTable.Row row, String column) {
        return Objects.requireNonNull(row.cells().get(column));
    }

    private static TextNode text(PriceCell cell) {
        return new TextNode(cell.origin(), cell.content());
    }

    private static ObjectNode with(ObjectNode trial, Draft draft) {
        var fields = new ArrayList<>(trial.fields());
        if (!draft.weighed().isEmpty() && trial.field("weighed").isEmpty()) {
            fields.add(field("weighed", draft.weighed(), draft.id().origin(), false));
        }
        if (!draft.measured().isEmpty() && trial.field("measured").isEmpty()) {
            fields.add(field("measured", draft.measured(), draft.id().origin(), true));
        }
        return new ObjectNode(trial.origin(), fields);
    }

    private static Field field(String name, Map<String, List<Field>> groups, Origin origin, boolean measured) {
        var fields = new ArrayList<Field>();
        groups.forEach((key, group) -> {
            var place = group.get(0).nameOrigin();
            boolean plain =
                    measured && group.stream().allMatch(each -> each.name().isEmpty());
            Node node = plain
                    ? new ArrayNode(place, group.stream().map(Field::value).toList())
                    : new ObjectNode(place, List.copyOf(group));
            fields.add(new Field(key, place, node));
        });
        return new Field(name, origin, new ObjectNode(origin, fields));
    }
}
