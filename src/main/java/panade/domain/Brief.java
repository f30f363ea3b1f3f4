package panade.domain;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import panade.quantity.Quantity;

/**
 * Everything asked of one blend, ready to compute with: references resolved, lots of an ingredient expanded, what may
 * not be used left out.
 *
 * @param title the product's name
 * @param file the document it was read from
 * @param set the pantry
 * @param composition what the ingredients hold, assumptions applied
 * @param currency the money's code; empty when no document states one
 * @param batch the weight made at once
 * @param candidates ids of ingredients that can be bought, are not avoided and are allowed
 * @param offers offers for candidates only, in the order of the price lists
 * @param bounds the brief's bounds, then the stages' shares and bounds, then ceilings on use from the set
 * @param stages in order; the last is {@link Stage#MIX}
 * @param target the price per kilogram hoped for, as written; null when there is none
 * @param practice the rest of the brief: rules, cooking, costs, scale and serving
 * @param remarks things worth saying that are no fault
 */
public record Brief(
        String title,
        String file,
        IngredientSet set,
        Composition composition,
        String currency,
        Quantity batch,
        Set<String> candidates,
        List<Offer> offers,
        List<Bound> bounds,
        List<Stage> stages,
        @Nullable TargetPrice target,
        Practice practice,
        List<String> remarks) {

    /** Every place where a candidate may be weighed in, stage by stage. */
    public List<Use> uses() {
        return stages.stream()
                .flatMap(stage -> stage.ingredients().stream()
                        .filter(candidates::contains)
                        .sorted()
                        .map(ingredient -> new Use(ingredient, stage.id())))
                .toList();
    }

    /** The offers for one candidate, in the order of the price lists. */
    public List<Offer> offersFor(String ingredient) {
        return offers.stream()
                .filter(offer -> offer.ingredient().equals(ingredient))
                .toList();
    }
}
