package panade.document.kitchen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import panade.document.kitchen.Workbook.Filled;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;

/** Fields that are named by a path with points, such as {@code costs.labour}, put together to objects. */
final class FieldTree {
    private static final int DEEPEST = 3;

    private final Problems problems;
    private final List<Field> leaves = new ArrayList<>();
    private final Map<String, FieldTree> branches = new LinkedHashMap<>();

    FieldTree(Problems problems) {
        this.problems = problems;
    }

    /** Adds a value under its path; a path that is there already is told. */
    void put(Filled name, Node value) {
        put(name.text().split("\\.", DEEPEST), 0, name, value);
    }

    private void put(String[] path, int from, Filled name, Node value) {
        var first = path[from];
        boolean taken = leaves.stream().anyMatch(field -> field.name().equals(first));
        if (from + 1 < path.length && !taken) {
            branches.computeIfAbsent(first, key -> new FieldTree(problems)).put(path, from + 1, name, value);
        } else if (taken || branches.containsKey(first)) {
            problems.add(name.origin(), "\"" + name.text() + "\" is there twice", "Expected each field once.");
        } else {
            leaves.add(new Field(first, name.origin(), value));
        }
    }

    Map<String, Field> fields(Origin origin) {
        var fields = new LinkedHashMap<String, Field>();
        leaves.forEach(field -> fields.put(field.name(), field));
        branches.forEach((name, branch) -> {
            var inside = List.copyOf(branch.fields(origin).values());
            var place = inside.get(0).nameOrigin();
            fields.put(name, new Field(name, place, new ObjectNode(place, inside)));
        });
        return fields;
    }
}
