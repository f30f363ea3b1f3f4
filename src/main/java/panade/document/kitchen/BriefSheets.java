package panade.document.kitchen;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import panade.document.kitchen.Workbook.Filled;
import panade.document.kitchen.Workbook.Row;
import panade.document.kitchen.Workbook.Table;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;

/** Reads the sheets Brief, Bounds and Stages as a brief would be written. */
public final class BriefSheets {
    private static final String MIX = "mix";

    private final Workbook book;
    private final Problems problems;
    private final CellValues values;

    private BriefSheets(Workbook book, Problems problems) {
        this.book = book;
        this.problems = problems;
        this.values = new CellValues(problems);
    }

    /** The brief of a workbook; it buys from the workbook's own sheets unless it names other documents. */
    public static Optional<ObjectNode> read(Path file, String shownAs, Problems problems) {
        return Workbook.open(file, shownAs, problems)
                .flatMap(book -> new BriefSheets(book, problems).brief(Path.of(shownAs)));
    }

    private Optional<ObjectNode> brief(Path file) {
        var table = book.table(Sheets.BRIEF);
        if (table.isEmpty()) {
            book.tellMissing(Sheets.BRIEF);
            return Optional.empty();
        }
        var origin = table.get().origin();
        var fields = fields(table.get());
        var self = Objects.requireNonNull(file.getFileName()).toString();
        fields.computeIfAbsent("ingredients", name -> new Field(name, origin, new TextNode(origin, self)));
        fields.computeIfAbsent(
                "prices", name -> new Field(name, origin, new ArrayNode(origin, List.of(new TextNode(origin, self)))));
        var stages = new Stages();
        book.table(Sheets.STAGES).ifPresent(stages::read);
        var bounds = new ArrayList<Node>();
        book.table(Sheets.BOUNDS).ifPresent(found -> found.rows().forEach(row -> bound(row, bounds, stages)));
        if (!bounds.isEmpty()) {
            fields.put("bounds", new Field("bounds", origin, new ArrayNode(origin, List.copyOf(bounds))));
        }
        stages.node(origin).ifPresent(node -> fields.put("stages", new Field("stages", origin, node)));
        return Optional.of(new ObjectNode(origin, List.copyOf(fields.values())));
    }

    private Map<String, Field> fields(Table table) {
        var tree = new FieldTree(problems);
        var rules = new ArrayList<Node>();
        for (var row : table.rows()) {
            var name = row.cell(Sheets.FIELD);
            var value = row.cell(Sheets.VALUE);
            if (name.isEmpty() && value.isPresent()) {
                problems.add(value.get().origin(), "No field is named beside this", "Expected its name before it.");
            }
            if (name.isEmpty() || value.isEmpty()) {
                continue; // a field without a value is not given
            }
            if (name.get().text().equals(Sheets.RULE)) {
                rules.add(values.of(Sheets.RULE, value.get(), "/rules/" + rules.size()));
            } else if (!name.get().text().startsWith(Sheets.PANTRY + ".")) {
                var path = name.get().text().equals("ingredients")
                        ? "ingredients.path"
                        : name.get().text();
                var pointer = "/" + name.get().text().replace('.', '/');
                tree.put(name.get(), values.of(path, value.get(), pointer));
            }
        }
        var fields = tree.fields(table.origin());
        if (!rules.isEmpty()) {
            fields.put("rules", new Field("rules", table.origin(), new ArrayNode(table.origin(), List.copyOf(rules))));
        }
        return fields;
    }

    private void bound(Row row, List<Node> bounds, Stages stages) {
        var stage = row.cell(Sheets.IN_STAGE);
        var list = stage.map(stages::bounds).orElse(bounds);
        var pointer = stage.map(stages::pointer).orElse("") + "/bounds/" + list.size();
        var fields = new ArrayList<Field>();
        row.cells().forEach((head, cell) -> {
            if (!head.equals(Sheets.IN_STAGE)) {
                var place = CellValues.at(cell.origin(), pointer + "/" + head);
                fields.add(new Field(head, place, values.of(head, cell, pointer + "/" + head)));
            }
        });
        list.add(new ObjectNode(CellValues.at(row.origin(), pointer), List.copyOf(fields)));
    }

    /** The stages, with the bounds inside each. */
    private final class Stages {
        private final List<List<Field>> fields = new ArrayList<>();
        private final List<Origin> origins = new ArrayList<>();
        private final Map<String, Integer> places = new LinkedHashMap<>();
        private final Map<Integer, List<Node>> bounds = new LinkedHashMap<>();

        private void read(Table table) {
            table.rows().forEach(this::read);
        }

        private void read(Row row) {
            var pointer = "/stages/" + fields.size();
            var stage = new ArrayList<Field>();
            var share = new ArrayList<Field>();
            row.cells().forEach((head, cell) -> {
                boolean isShare = head.equals(Sheets.SHARE_MIN) || head.equals(Sheets.SHARE_MAX);
                var name = isShare ? head.substring(head.indexOf(' ') + 1) : head;
                var path = pointer + (isShare ? "/share/" : "/") + name;
                var field = new Field(name, CellValues.at(cell.origin(), path), values.of(name, cell, path));
                (isShare ? share : stage).add(field);
            });
            if (!share.isEmpty()) {
                var place = CellValues.at(share.get(0).nameOrigin(), pointer + "/share");
                stage.add(new Field("share", place, new ObjectNode(place, List.copyOf(share))));
            }
            row.cell("id").ifPresent(id -> places.putIfAbsent(id.text(), fields.size()));
            fields.add(stage);
            origins.add(CellValues.at(row.origin(), pointer));
        }

        private List<Node> bounds(Filled stage) {
            if (!places.containsKey(stage.text()) && !stage.text().equals(MIX)) {
                problems.unknown(
                        stage.origin(),
                        "There is no stage \"" + stage.text() + "\"",
                        stage.text(),
                        places.keySet(),
                        "Expected the id of a row of the sheet Stages, or nothing for the whole batch.");
                return new ArrayList<>();
            }
            return bounds.computeIfAbsent(place(stage), place -> new ArrayList<>());
        }

        private String pointer(Filled stage) {
            return "/stages/" + places.getOrDefault(stage.text(), 0);
        }

        /** The mix is always there and needs no row. */
        private int place(Filled stage) {
            return places.computeIfAbsent(stage.text(), id -> {
                fields.add(new ArrayList<>(
                        List.of(new Field("id", stage.origin(), new TextNode(stage.origin(), stage.text())))));
                origins.add(CellValues.at(stage.origin(), "/stages/" + (fields.size() - 1)));
                return fields.size() - 1;
            });
        }

        private Optional<Node> node(Origin origin) {
            var stages = new ArrayList<Node>();
            for (int i = 0; i < fields.size(); i++) {
                var place = origins.get(i);
                var inside = bounds.get(i);
                if (inside != null) {
                    fields.get(i).add(new Field("bounds", place, new ArrayNode(place, List.copyOf(inside))));
                }
                stages.add(new ObjectNode(place, List.copyOf(fields.get(i))));
            }
            return stages.isEmpty() ? Optional.empty() : Optional.of(new ArrayNode(origin, List.copyOf(stages)));
        }
    }
}
