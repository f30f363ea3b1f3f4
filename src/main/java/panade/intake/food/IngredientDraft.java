package panade.intake.food;

import java.util.Map;
import panade.domain.origin.Origin;
import tools.jackson.databind.node.ObjectNode;

/**
 * An ingredient as it would stand in an ingredient set.
 *
 * @param json its fields
 * @param origins where they came from, by pointer from the ingredient; the empty pointer is all of it
 */
public record IngredientDraft(String id, ObjectNode json, Map<String, Origin> origins) {
    public IngredientDraft {
        origins = Map.copyOf(origins);
    }
}
