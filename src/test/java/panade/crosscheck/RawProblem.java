package panade.crosscheck;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A blending problem as numbers.
 *
 * @param batch kilograms
 * @param uses where each ingredient may go; forms and shares follow this order
 * @param hidden a blend that meets every bound
 */
record RawProblem(
        BigDecimal batch,
        List<RawIngredient> ingredients,
        List<RawOffer> offers,
        List<RawUse> uses,
        List<RawBound> bounds,
        List<BigFraction> hidden) {
    /** The one sub-mix that a problem may have. */
    static final String SOAK = "soak";

    boolean hasStage() {
        return uses.stream().anyMatch(use -> use.stage().equals(SOAK));
    }

    RawIngredient ingredient(String id) {
        return ingredients.stream()
                .filter(ingredient -> ingredient.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    List<RawBound> boundsUnder(String path) {
        return bounds.stream().filter(bound -> bound.path().startsWith(path)).toList();
    }

    RawProblem dearer(int times) {
        var dearer = offers.stream().map(offer -> offer.dearer(times)).toList();
        return new RawProblem(batch, ingredients, dearer, uses, bounds, hidden);
    }

    RawProblem backwards() {
        var reversed = new ArrayList<>(ingredients);
        Collections.reverse(reversed);
        return new RawProblem(batch, reversed, offers, uses, bounds, hidden);
    }

    RawProblem replacing(RawBound changed) {
        var replaced = bounds.stream()
                .map(bound -> bound.path().equals(changed.path()) ? changed : bound)
                .toList();
        return new RawProblem(batch, ingredients, offers, uses, replaced, hidden);
    }

    @Override
    public String toString() {
        return RawDocuments.of(this).toString();
    }
}
