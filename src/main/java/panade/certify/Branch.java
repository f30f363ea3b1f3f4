package panade.certify;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict.Optimum;
import panade.model.MixedModel;
import panade.model.Unproved;

/**
 * A model with some of its whole columns set, and what is proved of it: its least cost, or that it has no point.
 *
 * @param set what each of them is set to, by column
 * @param least the least cost; null where there is no point
 */
record Branch(
        MixedModel model,
        Map<Integer, BigInteger> set,
        Verdict verdict,
        @Nullable BigFraction least) {
    /** The branch where nothing is set. */
    static Branch root(MixedModel model, Optimum optimum) {
        return of(model, Map.of(), optimum);
    }

    /** This branch with one column more set. */
    Branch with(int column, BigInteger value, Prover prover) {
        var more = new TreeMap<>(set);
        more.put(column, value);
        var verdict = prover.prove(model.holding(more));
        if (verdict instanceof Optimum optimum) {
            return of(model, Map.copyOf(more), optimum);
        }
        if (verdict instanceof Verdict.Impossible) {
            return new Branch(model, Map.copyOf(more), verdict, null);
        }
        throw new Unproved("a branch could not be proved");
    }

    private static Branch of(MixedModel model, Map<Integer, BigInteger> set, Optimum optimum) {
        return new Branch(model, set, optimum, model.relaxed().costAt(optimum.point()));
    }

    boolean isPossible() {
        return least != null;
    }

    /** The cheapest point of a branch that is possible. */
    List<BigFraction> point() {
        return ((Optimum) verdict).point();
    }

    /** What that costs. */
    BigFraction cost() {
        return Objects.requireNonNull(least);
    }
}
