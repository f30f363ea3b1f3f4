package panade.document.pantry;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import panade.document.syntax.Circles;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;

/** Checks that every lot of another ingredient names one that exists and is not, by any way, a lot of itself. */
final class VariantChecks {
    /** How many lots of lots there may be in a row: more are a slip, and each limit of use covers all below it. */
    private static final int DEEPEST = 20;

    private final Map<String, IngredientReader.Draft> drafts = new LinkedHashMap<>();
    private final Problems problems;

    VariantChecks(List<IngredientReader.Draft> drafts, Problems problems) {
        drafts.forEach(draft -> this.drafts.put(draft.ingredient().id(), draft));
        this.problems = problems;
    }

    void check() {
        var told = new HashSet<String>();
        drafts.forEach((id, draft) -> draft.variantOf().ifPresent(parent -> {
            checkKnown(parent);
            // A circle is one fault, however many ingredients lie on it.
            Circles.through(id, this::parents)
                    .filter(told::addAll)
                    .ifPresent(circle -> problems.add(
                            parent.origin(),
                            "\"" + id + "\" is a variant of itself: " + Circles.words(circle),
                            "Expected the id of the ingredient that this is another lot of."));
        }));
        if (told.isEmpty()) {
            checkDepth();
        }
    }

    /** One fault for a whole row, however long it is. */
    private void checkDepth() {
        for (var draft : drafts.values()) {
            var parent = draft.variantOf();
            for (int i = 0; i < DEEPEST && parent.isPresent(); i++) {
                parent =
                        Optional.ofNullable(drafts.get(parent.get().text())).flatMap(IngredientReader.Draft::variantOf);
            }
            if (parent.isPresent()) {
                problems.add(
                        draft.variantOf().orElseThrow().origin(),
                        "\"" + draft.ingredient().id() + "\" is a lot of a lot of a lot, more than " + DEEPEST
                                + " times over",
                        "Expected the id of the ingredient itself, which all its lots are variants of.");
                return;
            }
        }
    }

    private void checkKnown(TextNode parent) {
        if (!drafts.containsKey(parent.text())) {
            problems.unknown(
                    parent.origin(),
                    "There is no ingredient \"" + parent.text() + "\" in the set",
                    parent.text(),
                    drafts.keySet(),
                    "Expected the id of the ingredient that this is another lot of.");
        }
    }

    private Collection<String> parents(String id) {
        var draft = drafts.get(id);
        return draft == null
                ? List.of()
                : draft.variantOf().map(TextNode::text).stream().toList();
    }
}
