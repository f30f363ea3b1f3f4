package panade.document.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import panade.document.kitchen.Workbook;
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
 * {@code trial,response,value,by}; a workbook has a sheet for each. What nobody filled in is no trial yet.
 */
final class TrialTables {
    private static final CsvTable.Kind WEIGHED = new CsvTable.Kind(
            "a table of what was weighed",
            "Weighed",
            List.of("trial", "block", "date", "stage", "ingredient", "plan", "amount", "unit", "note"),
            List.of("trial", "stage", "ingredient", "amount"));
    private static final CsvTable.Kind MEASURED = new CsvTable.Kind(
            "a table of what was measured",
            "Measured",
            List.of("trial", "response", "by", "value", "unit", "note"),
            List.of("trial", "response", "value"));

    private final Problems problems;
    private final Map<String, Draft> drafts = new LinkedHashMap<>();

    /**
     * What tables say of a trial.
     *
     * @param about its block and date
     * @param blank weights that nobody filled in
     * @param places where a stage or a response is named first
     */
    private record Draft(
            TextNode id,
            Map<String, Field> about,
            Map<String, List<Field>> weighed,
            Map<String, List<Field>> measured,
            List<PriceCell> blank,
            Map<String, Origin> places) {
        private boolean isEmpty() {
            return weighed.isEmpty() && measured.isEmpty();
        }
    }

    TrialTables(Problems problems) {
        this.problems = problems;
    }

    /**
     * The trials with what their tables say; those that only tables know come last.
     *
     * @param more tables beside those that the document names
     */
    List<ObjectNode> merged(List<ObjectNode> trials, Optional<Node> tables, List<Path> more) {
        tables.ifPresent(node -> new Expect(problems)
                .oneOrMore(node, "paths of tables, such as [\"trials-weighed.csv\"]")
                .forEach(each -> new References(problems).file(each).ifPresent(this::read)));
        more.forEach(this::read);
        tellBlank();
        drafts.values().removeIf(Draft::isEmpty);
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
        if (Workbook.isNamed(file)) {
            readSheets(file);
            return;
        }
        boolean measured = TextFile.read(file, file.toString(), problems)
                .filter(text -> text.lines().findFirst().orElse("").contains("response"))
                .isPresent();
        CsvTable.read(file, file.toString(), measured ? MEASURED : WEIGHED, problems)
                .ifPresent(rows -> rows.forEach(row -> add(row, measured)));
    }

    private void readSheets(Path file) {
        var weighed = CsvTable.read(file, file.toString(), WEIGHED, problems).orElse(List.of());
        var measured = CsvTable.read(file, file.toString(), MEASURED, problems).orElse(List.of());
        weighed.forEach(row -> add(row, false));
        measured.forEach(row -> add(row, true));
        if (weighed.isEmpty() && measured.isEmpty() && problems.none()) {
            problems.add(
                    new Origin(file.toString(), 0, 0, ""),
                    "There is no trial in this workbook",
                    "Expected a sheet \"Weighed\", \"Measured\", or both, as panade batch --trial --xlsx writes them.");
        }
    }

    /** Of a trial that was weighed each line is needed; of one that was not, none. */
    private void tellBlank() {
        drafts.values().stream()
                .filter(draft -> !draft.weighed().isEmpty())
                .flatMap(draft -> draft.blank().stream())
                .forEach(cell -> problems.add(
                        cell.origin(),
                        "This weight is not filled in, and others of the trial are",
                        "Expected what was weighed, such as 158.0 g, or 0 g where none went in."));
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
                trial.content(),
                id -> new Draft(
                        text(trial),
                        new LinkedHashMap<>(),
                        new LinkedHashMap<>(),
                        new LinkedHashMap<>(),
                        new ArrayList<>(),
                        new HashMap<>()));
        if (!measured) {
            List.of("block", "date").forEach(name -> about(row, name, draft));
            if (cell(row, "amount").isBlank()) {
                draft.blank().add(cell(row, "amount"));
                return;
            }
        }
        draft.places().putIfAbsent(key.content(), key.origin());
        var fields = (measured ? draft.measured() : draft.weighed())
                .computeIfAbsent(key.content(), name -> new ArrayList<>());
        fields.add(measured ? measurement(row) : weight(row));
    }

    private static void about(CsvTable.Row row, String name, Draft draft) {
        Optional.ofNullable(row.cells().get(name))
                .filter(cell -> !cell.isBlank())
                .ifPresent(cell -> draft.about().putIfAbsent(name, new Field(name, cell.origin(), text(cell))));
    }

    private static Field weight(CsvTable.Row row) {
        var ingredient = cell(row, "ingredient");
        var amount = cell(row, "amount");
        boolean plain = Decimal.parse(amount.content()).isPresent();
        return new Field(
                ingredient.content(),
                ingredient.origin(),
                new TextNode(amount.origin(), plain ? withUnit(row, amount) : amount.content()));
    }

    /** A number with what stands under unit, if anything does. */
    private static String withUnit(CsvTable.Row row, PriceCell number) {
        var unit = row.cells().get("unit");
        return unit == null ? number.content() : (number.content() + " " + unit.content()).strip();
    }

    private static Field measurement(CsvTable.Row row) {
        var value = cell(row, "value");
        var by = row.cells().get("by");
        var written = Decimal.parse(value.content()).isPresent() ? withUnit(row, value) : value.content();
        Node node = Decimal.parse(written)
                .<Node>map(number -> new NumberNode(value.origin(), number, written))
                .orElseGet(() -> new TextNode(value.origin(), written));
        return new Field(by == null ? "" : by.content(), by == null ? value.origin() : by.origin(), node);
    }

    private static PriceCell cell(CsvTable.Row row, String column) {
        return Objects.requireNonNull(row.cells().get(column));
    }

    private static TextNode text(PriceCell cell) {
        return new TextNode(cell.origin(), cell.content());
    }

    private ObjectNode with(ObjectNode trial, Draft draft) {
        var fields = new ArrayList<>(trial.fields());
        draft.about().values().stream()
                .filter(field -> trial.field(field.name()).isEmpty())
                .forEach(fields::add);
        if (!draft.weighed().isEmpty()) {
            put(trial, field("weighed", draft.weighed(), draft, false), fields);
        }
        if (!draft.measured().isEmpty()) {
            put(trial, field("measured", draft.measured(), draft, true), fields);
        }
        return new ObjectNode(trial.origin(), fields);
    }

    /** Adds a field; where the document has it already nothing says which of both is meant. */
    private void put(ObjectNode trial, Field field, List<Field> fields) {
        if (trial.field(field.name()).isEmpty()) {
            fields.add(field);
        } else {
            problems.add(
                    field.nameOrigin(),
                    "What was " + field.name() + " of this trial stands in the document already",
                    "Expected it there or in a table, and a name of its own for each trial.");
        }
    }

    private static Field field(String name, Map<String, List<Field>> groups, Draft draft, boolean measured) {
        var origin = draft.id().origin();
        var fields = new ArrayList<Field>();
        groups.forEach((key, group) -> {
            var place = draft.places().getOrDefault(key, origin);
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
