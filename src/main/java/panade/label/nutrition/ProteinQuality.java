package panade.label.nutrition;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;

/**
 * How good a blend's protein is for people.
 *
 * @param pdcaas the protein digestibility-corrected amino acid score of 21 CFR 101.9(c)(7)(ii), pattern of 1991
 * @param diaas the digestible indispensable amino acid score, pattern of 2013
 */
public record ProteinQuality(Score pdcaas, Score diaas) {

    /**
     * One score.
     *
     * @param name what it is called
     * @param pattern what the protein is compared with
     * @param value before anything over 1 is cut off; null when it is not known
     * @param limiting the amino acid that there is least of, compared with the pattern; empty when not known
     * @param missing what would have to be known
     * @param atLeast the score if what is not known were none; null when not even that can be said
     */
    public record Score(
            String name,
            AminoPattern pattern,
            @Nullable BigFraction value,
            String limiting,
            List<Missing> missing,
            @Nullable BigFraction atLeast) {
        public Score {
            missing = List.copyOf(missing);
        }

        /** The score with anything over 1 cut off; null when it is not known. */
        public @Nullable BigFraction cut() {
            return value != null && value.compareTo(BigFraction.ONE) > 0 ? BigFraction.ONE : value;
        }
    }

    /** An ingredient that brings protein and lacks a value. */
    public record Missing(String ingredient, List<String> values) {
        public Missing {
            values = List.copyOf(values);
        }
    }

    /** The quality of a blend's protein. */
    public static ProteinQuality of(Brief brief, Blend blend) {
        var protein = new ProteinTally(brief, blend);
        return new ProteinQuality(protein.pdcaas(AminoPattern.FAO_WHO_1991), protein.diaas(AminoPattern.FAO_2013));
    }
}
