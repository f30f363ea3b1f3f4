package panade.certify;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict.Optimum;
import panade.model.MixedModel;
import panade.model.Unproved;
import panade.solver.Deadline;

/**
 * Proves what no setting of switches can beat, by branch and bound (Land and Doig, Econometrica 28, 1960) in which
 * every branch is closed by an exact verdict: its own least cost is no lower than the best known, or it is impossible.
 */
public final class Branching {
    private final MixedModel model;
    private final Prover prover;
    private final int maxBranches;
    private final Deadline deadline;
    private final PriorityQueue<Branch> open = new PriorityQueue<>(Comparator.comparing(Branch::cost));
    private @Nullable List<BigFraction> best;
    private @Nullable BigFraction least;
    private int looked;

    private Branching(MixedModel model, Prover prover, int maxBranches, Deadline deadline) {
        this.model = model;
        this.prover = prover;
        this.maxBranches = maxBranches;
        this.deadline = deadline;
    }

    /**
     * What was proved.
     *
     * @param bound no point with whole numbers costs less; null when none exists
     * @param best the cheapest point known; empty when none is
     * @param looked how many branches were looked at
     */
    public record Proof(@Nullable BigFraction bound, Optional<List<BigFraction>> best, int looked) {
        /** Whether it is proved that no point with whole numbers exists. */
        public boolean isImpossible() {
            return bound == null;
        }
    }

    /**
     * Branches until nothing is open, the limit on branches is reached or the time is over.
     *
     * @param known a point that meets the model with whole numbers; null when none is known
     * @param maxBranches how many branches to look at at most
     */
    public static Proof prove(
            MixedModel model, @Nullable List<BigFraction> known, Prover prover, int maxBranches, Deadline deadline) {
        var branching = new Branching(model, prover, maxBranches, deadline);
        if (known != null) {
            branching.improve(known);
        }
        return branching.run();
    }

    private void improve(List<BigFraction> point) {
        best = point;
        least = model.relaxed().costAt(point);
    }

    private Proof run() {
        var verdict = prover.prove(model.relaxed());
        if (verdict instanceof Verdict.Impossible) {
            return new Proof(null, Optional.empty(), 1);
        }
        if (!(verdict instanceof Optimum optimum)) {
            throw new Unproved("a branch could not be decided");
        }
        weigh(Branch.root(model, optimum));
        while (!open.isEmpty() && looked < maxBranches && !deadline.isOver()) {
            split(open.remove());
        }
        var bound = open.isEmpty() ? least : lower(open.peek().cost());
        return new Proof(bound, Optional.ofNullable(best), looked);
    }

    private BigFraction lower(BigFraction bound) {
        return least == null || bound.compareTo(least) < 0 ? bound : least;
    }

    private void weigh(Branch branch) {
        looked++;
        if (!branch.isPossible() || (least != null && branch.cost().compareTo(least) >= 0)) {
            return;
        }
        if (broken(branch.point()) < 0) {
            improve(branch.point());
            open.removeIf(other -> other.cost().compareTo(branch.cost()) >= 0);
        } else {
            open.add(branch);
        }
    }

    private void split(Branch branch) {
        int column = broken(branch.point());
        weigh(branch.with(column, BigInteger.ONE, prover));
        weigh(branch.with(column, BigInteger.ZERO, prover));
    }

    /** The column furthest from a whole number, lowest among equals; -1 when all are whole. */
    private int broken(List<BigFraction> point) {
        int found = -1;
        var furthest = BigFraction.ZERO;
        for (int column : model.whole().stream().sorted().toList()) {
            var distance = distance(point.get(column));
            if (distance.compareTo(furthest) > 0) {
                furthest = distance;
                found = column;
            }
        }
        return found;
    }

    private static BigFraction distance(BigFraction value) {
        var part = BigFraction.of(
                value.getNumerator().mod(value.getDenominator().abs()),
                value.getDenominator().abs());
        var rest = BigFraction.ONE.subtract(part);
        return part.compareTo(rest) < 0 ? part : rest;
    }
}
