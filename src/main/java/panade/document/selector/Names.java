package panade.document.selector;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.domain.origin.Origin;
import panade.domain.pantry.IngredientSet;
import panade.domain.pantry.PropertyWords;

/** Looks up the names a brief uses, and tells those that mean nothing; without a set it lets all of them pass. */
public record Names(Optional<IngredientSet> set, Set<String> stages, Problems problems) {

    public Names {
        stages = Set.copyOf(stages);
    }

    /** What a brief that was read knows by name. */
    public static Names of(Brief brief, Problems problems) {
        var stages = brief.stages().stream().map(Stage::id).collect(Collectors.toSet());
        return new Names(Optional.of(brief.set()), stages, problems);
    }

    public boolean knowsIngredient(Origin origin, String id) {
        var namesakes = set.map(found -> found.called(id)).orElse(List.of());
        if (namesakes.size() > 1) {
            problems.add(
                    origin,
                    "Several ingredients are called \"" + id + "\"",
                    "Expected the id of one: \"" + String.join("\", \"", namesakes) + "\".");
            return false;
        }
        return set.isEmpty()
                || known(origin, "ingredient", id, set.get().ingredients().keySet());
    }

    public boolean knowsIngredient(TextNode node) {
        return knowsIngredient(node.origin(), node.text());
    }

    public boolean knowsKind(Origin origin, String kind) {
        return set.isEmpty() || known(origin, "kind", kind, kinds(set.get()));
    }

    public boolean knowsProperty(Origin origin, String id) {
        if (set.isEmpty() || set.get().properties().containsKey(id)) {
            return true;
        }
        var advice = PropertyWords.advice(id);
        advice.ifPresent(words -> problems.add(origin, "No property is called \"" + id + "\"", words));
        return advice.isEmpty()
                && known(origin, "property", id, set.get().properties().keySet());
    }

    /** The id that is meant by an id or by the name of one ingredient; as it was where neither is known. */
    public String id(String idOrName) {
        return set.flatMap(found -> found.idOf(idOrName)).orElse(idOrName);
    }

    boolean knowsStage(Origin origin, String id) {
        return known(origin, "stage", id, stages);
    }

    private boolean known(Origin origin, String sort, String name, Collection<String> valid) {
        if (valid.contains(name)) {
            return true;
        }
        var where = sort.equals("stage") ? "a stage of this brief or \"mix\"" : "the name of one in the ingredient set";
        problems.unknown(origin, "No " + sort + " is called \"" + name + "\"", name, valid, "Expected " + where + ".");
        return false;
    }

    private static Set<String> kinds(IngredientSet set) {
        var kinds = new LinkedHashSet<String>();
        set.ingredients().values().forEach(ingredient -> kinds.addAll(ingredient.kinds()));
        return kinds;
    }
}
