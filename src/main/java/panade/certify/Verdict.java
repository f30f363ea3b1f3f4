package panade.certify;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.simplex.Dictionary;
import panade.certify.simplex.SparseDictionary;
import panade.certify.simplex.Tableau;
import panade.model.Basis;
import panade.model.LinearModel;

/**
 * What has been proved of a model. Only a {@link Certifier} makes one, so an unproved number cannot pass for proved.
 */
public sealed interface Verdict {
    /** A least-cost point, exact, with the multipliers that prove it. */
    final class Optimum implements Verdict {
        private final LinearModel model;
        private final List<BigFraction> point;
        private final List<BigFraction> multipliers;
        private final OptimalityProof proof;
        private final @Nullable Basis basis;
        private final Supplier<Tableau> source;
        private @Nullable Tableau tableau;
        private Optional<SparseDictionary> sparse = Optional.empty();
        private boolean looked;

        Optimum(
                LinearModel model,
                List<BigFraction> point,
                List<BigFraction> multipliers,
                OptimalityProof proof,
                @Nullable Basis basis,
                Supplier<Tableau> source) {
            this.model = model;
            this.point = List.copyOf(point);
            this.multipliers = List.copyOf(multipliers);
            this.proof = proof;
            this.basis = basis;
            this.source = source;
        }

        /** The model it solves. */
        public LinearModel model() {
            return model;
        }

        /** The value of each column. */
        public List<BigFraction> point() {
            return point;
        }

        /** The dual multiplier of each row. */
        public List<BigFraction> multipliers() {
            return multipliers;
        }

        /** What was checked of it. */
        public OptimalityProof proof() {
            return proof;
        }

        /** Which engine found it. */
        public String engine() {
            return proof.engine();
        }

        /** The basis that gives the point and the multipliers. */
        public Basis basis() {
            return basis == null ? tableau().basis() : basis;
        }

        /** The basis that was claimed and found right as it is; empty where pivots led there. */
        public Optional<Basis> claimedBasis() {
            return Optional.ofNullable(basis);
        }

        /**
         * What a question finds out by pivots from the optimum: on the sparse system of its basis, or on the dense
         * dictionary where that is not known or was lost.
         */
        public <T> T pivoting(Function<Dictionary, T> question) {
            var start = sparse();
            try {
                return question.apply(
                        start.isPresent() ? start.get().copy() : tableau().copy());
            } catch (SparseDictionary.Lost lost) {
                return question.apply(tableau().copy());
            }
        }

        private synchronized Optional<SparseDictionary> sparse() {
            if (!looked) {
                sparse = claimedBasis().flatMap(known -> SparseDictionary.of(model, known));
                looked = true;
            }
            return sparse;
        }

        /** The dictionary at the optimum, made when it is first asked for. */
        public synchronized Tableau tableau() {
            if (tableau == null) {
                tableau = source.get();
            }
            return tableau;
        }
    }

    /** No point meets all rows: the multipliers (Farkas) add them up to a contradiction. */
    record Impossible(List<BigFraction> multipliers, String engine) implements Verdict {}

    /** The cost falls without end. */
    record Unbounded(String engine) implements Verdict {}

    /** Nothing is proved. */
    record Unproven(String reason) implements Verdict {}
}
