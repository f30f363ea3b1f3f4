package panade.document.pantry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IngredientSet;

/** Reads an ingredient set as a whole: its traits, its ingredients, and how ingredients refer to each other. */
public final class SetReader {
    private static final String[] FIELDS = {"title", "source", "assume", "traits", "ingredients"};
    private static final String INGREDIENT =
            "an ingredient, such as {\"id\": \"water\", \"values\": {\"WATER\": 100}, \"others\": 0}";

    private final Problems problems;
    private final Expect expect;

    private SetReader(Problems problems) {
        this.problems = problems;
        this.expect = new Expect(problems);
    }

    /**
     * The set. Where single values are at fault the rest is still returned, so that names can be looked up in it; empty
     * when the document is no set at all.
     */
    public static Optional<IngredientSet> read(Node root, Problems problems) {
        var reader = new SetReader(problems);
        return reader.expect
                .object(root, "an ingredient set, such as {\"ingredients\": [...]}")
                .map(reader::set);
    }

    private IngredientSet set(ObjectNode root) {
        var fields = new Fields(root, problems, FIELDS);
        var traits = new TraitReader(problems).read(fields.get("traits"));
        var assume = new ValueReader(traits, problems).read(fields.get("assume"), "assume");
        var drafts = ingredients(fields, new IngredientReader(traits, problems));
        new VariantChecks(drafts, problems).check();
        var ingredients = new LinkedHashMap<String, Ingredient>();
        drafts.forEach(draft -> ingredients.put(draft.ingredient().id(), draft.ingredient()));
        return new IngredientSet(
                text(fields, "title"), text(fields, "source"), assume, traits.properties(), ingredients);
    }

    private List<IngredientReader.Draft> ingredients(Fields fields, IngredientReader reader) {
        var items = fields.required("ingredients", "a list of ingredients, \"ingredients\": [...]")
                .flatMap(node -> expect.list(node, "a list of ingredients, such as [{\"id\": \"water\", ...}]"))
                .map(ArrayNode::items)
                .orElse(List.of());
        var drafts = new LinkedHashMap<String, IngredientReader.Draft>();
        items.stream()
                .flatMap(item -> expect.object(item, INGREDIENT).stream())
                .flatMap(object -> reader.read(object).stream())
                .forEach(draft -> add(draft, drafts));
        return new ArrayList<>(drafts.values());
    }

    private void add(IngredientReader.Draft draft, Map<String, IngredientReader.Draft> drafts) {
        var id = draft.ingredient().id();
        var first = drafts.putIfAbsent(id, draft);
        if (first != null) {
            problems.add(
                    draft.idOrigin(),
                    "The id \"" + id + "\" is already taken in "
                            + first.idOrigin().spot(),
                    "Expected an id of its own for each ingredient, such as \"" + id + "-2\".");
        }
    }

    private String text(Fields fields, String name) {
        return fields.get(name)
                .flatMap(node -> expect.text(node, "a text"))
                .map(TextNode::text)
                .orElse("");
    }
}
