package panade.domain.pantry;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What a label needs to know of an ingredient beyond its composition.
 *
 * @param madeOf names of what it is made of, in descending order by weight; empty when it is a single thing, null when
 *     nobody says
 * @param energyFactors its own kilocalories per gram of protein, fat, carbohydrate and so on by tagname; empty when the
 *     general ones are to be used
 * @param digestibility fractions of the protein ({@code PROCNT}, true faecal) and of single amino acids (true ileal)
 *     that are digested; what is absent is unknown
 * @param marks what laws say of it
 */
public record Labelling(
        @Nullable List<String> madeOf,
        Map<String, BigFraction> energyFactors,
        Map<String, BigFraction> digestibility,
        LabelMarks marks) {
    public Labelling {
        madeOf = madeOf == null ? null : List.copyOf(madeOf);
        energyFactors = Map.copyOf(energyFactors);
        digestibility = Map.copyOf(digestibility);
    }

    /** What it is made of, as far as that is stated. */
    public List<String> parts() {
        return madeOf == null ? List.of() : madeOf;
    }
}
