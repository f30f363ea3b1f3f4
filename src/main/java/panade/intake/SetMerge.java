package panade.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Origin;
import panade.intake.food.IngredientDraft;
import panade.intake.json.Json;
import panade.intake.json.JsonEdits;
import panade.intake.table.Change;
import panade.intake.table.Change.Sort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Puts what is new into the text of an ingredient set, field by field, and notes what that changes. */
final class SetMerge {
    private static final String INGREDIENTS = "/ingredients";
    private static final String ITEM = "    ";

    private final ObjectNode root;
    private final JsonEdits edits;
    private final boolean keeps;
    private final boolean fresh;
    private final List<Change> changes = new ArrayList<>();
    private final Map<String, Origin> origins = new LinkedHashMap<>();
    private final Map<String, Integer> places = new HashMap<>();
    private int count;

    /**
     * A merge into a set.
     *
     * @param keeps whether what is already there stays as it is where the two differ
     * @param fresh whether there was no set before, so that nothing can differ
     */
    SetMerge(String text, boolean keeps, boolean fresh) {
        this.root = (ObjectNode) Json.MAPPER.readTree(text);
        this.edits = new JsonEdits(text);
        this.keeps = keeps && !fresh;
        this.fresh = fresh;
        this.count = root.path("ingredients").size();
        for (int i = 0; i < count; i++) {
            places.put(root.path("ingredients").path(i).path("id").asString(), i);
        }
    }

    /** The text with all that was added. */
    String text() {
        return edits.apply();
    }

    List<Change> changes() {
        return List.copyOf(changes);
    }

    /** Where what stands at a pointer came from, for messages; pointers into ingredients that were touched. */
    Map<String, Origin> origins() {
        return Map.copyOf(origins);
    }

    /** Adds an ingredient, or what is new of one that is there; each id once. */
    void add(IngredientDraft draft) {
        var at = places.get(draft.id());
        int index = at == null ? count : at;
        var pointer = INGREDIENTS + "/" + index;
        draft.origins().forEach((field, origin) -> origins.put(pointer + field, origin));
        if (at != null) {
            merge(draft.id(), "", pointer, (ObjectNode) root.path("ingredients").path(index), draft.json(), "");
        } else {
            count++;
            edits.append(INGREDIENTS, Json.ingredient(draft.json()), ITEM);
            changes.add(new Change(Sort.ADDED, draft.id(), "", "", values(draft)));
        }
    }

    private static String values(IngredientDraft draft) {
        int values = draft.json().path("values").size();
        return values == 1 ? "1 value" : values + " values";
    }

    /**
     * Adds what a set says beside its ingredients: {@code title}, {@code source}, {@code assume} and {@code traits}.
     */
    void addAbout(ObjectNode about) {
        about.properties().forEach(field -> {
            var name = field.getKey();
            if (root.path(name) instanceof ObjectNode old && field.getValue() instanceof ObjectNode values) {
                merge(name, "", "/" + name, old, values, name.equals("traits") ? ITEM : "");
            } else {
                put(name, "", "", name, root.get(name), field.getValue(), "  ");
            }
        });
    }

    private void merge(String of, String path, String pointer, ObjectNode old, ObjectNode wanted, String indent) {
        wanted.properties().forEach(field -> {
            var name = field.getKey();
            var before = old.get(name);
            var deeper = path.isEmpty() ? name : path + " " + name;
            if (before instanceof ObjectNode inner && field.getValue() instanceof ObjectNode values) {
                merge(of, deeper, pointer + "/" + JsonEdits.escaped(name), inner, values, "");
            } else if (!isDefault(name, field.getValue(), old)) {
                put(of, deeper, pointer, name, before, field.getValue(), indent);
            }
        });
    }

    /** A name that only says what goes without saying. */
    private static boolean isDefault(String field, JsonNode value, ObjectNode old) {
        return switch (field) {
            case "name" -> !old.has("name") && value.equals(old.get("id"));
            case "label" -> !old.has("label") && value.equals(old.has("name") ? old.get("name") : old.get("id"));
            case "source" -> old.has("id");
            default -> false;
        };
    }

    private void put(
            String of,
            String path,
            String pointer,
            String name,
            @Nullable JsonNode before,
            JsonNode after,
            String indent) {
        if (before == null) {
            edits.append(pointer, Json.field(name, after), indent);
            changes.add(new Change(Sort.ADDED, of, path, "", Json.text(after)));
        } else if (!Json.same(before, after)) {
            var was = fresh ? "" : Json.text(before);
            changes.add(new Change(fresh ? Sort.ADDED : Sort.CHANGED, of, path, was, Json.text(after)));
            if (!keeps) {
                edits.replace(pointer + "/" + JsonEdits.escaped(name), Json.text(after));
            }
        }
    }
}
