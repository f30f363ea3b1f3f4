package panade.label.nutrition;

import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Composition;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IsolatedFibre;

/**
 * Fibre that a label in the United States may declare: all that is intact in its plant, and of isolated fibres those
 * that 21 CFR 101.9(c)(6)(i) and FDA's guidance let count. What does not count stays in total carbohydrate, (c)(6), and
 * with it in the calories.
 */
record CountedFibre() implements Content {
    private static final Content FIBRE = Content.of("FIBTG");

    /** Whether an ingredient's fibre is of a sort that does not count. */
    static boolean isLeftOut(Ingredient ingredient) {
        return IsolatedFibre.of(ingredient).filter(fibre -> !fibre.counts()).isPresent();
    }

    @Override
    public Optional<Map<String, BigFraction>> form(Ingredient ingredient, Composition composition) {
        return isLeftOut(ingredient) ? Optional.of(Map.of()) : FIBRE.form(ingredient, composition);
    }

    @Override
    public String needs() {
        return FIBRE.needs();
    }
}
