package panade.cone;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Prover;
import panade.certify.Verdict;
import panade.certify.Verdict.Optimum;
import panade.compile.CompiledBrief;
import panade.model.Cone;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.quantity.Decimal;

/**
 * Least cost under cones. Each round proves a linear program with the cuts so far, which costs no more than the least,
 * and adds a cut where its point leaves a cone. Then all cuts are moved inwards by a little more than the point missed;
 * the point of that program is checked against the cones themselves, and costs no less than the least. Nothing is told
 * until the two are next to each other.
 */
public final class CuttingPlanes {
    /** How far apart the two proved costs may be at most, as a part of the lower one. */
    public static final BigFraction MOST_GAP = BigFraction.of(1, 1_000_000);

    /** What is tried for; from there on cuts are too near each other for a solver in floating point. */
    private static final BigFraction GOOD_GAP = BigFraction.of(1, 5_000_000);

    /** A handful is usual; so many only where a cone curves in many directions at once. */
    private static final int MOST_ROUNDS = 300;

    /** Cuts are moved inwards once a point misses its cones by less than this part of what they ask for. */
    private static final BigFraction NEAR = BigFraction.of(1, 100_000);

    private final CompiledBrief compiled;
    private final Prover prover;
    private final List<Cut> cuts = new ArrayList<>();

    private CuttingPlanes(CompiledBrief compiled, Prover prover, List<Cut> known) {
        this.compiled = compiled;
        this.prover = prover;
        known.stream().filter(cut -> compiled.cones().contains(cut.cone())).forEach(cuts::add);
    }

    /**
     * What is proved of a brief's model and its cones.
     *
     * @param known cuts of a brief like it; those of cones that it has as well are right for it too
     */
    public static Tightened solve(CompiledBrief compiled, Prover prover, List<Cut> known) {
        return compiled.cones().isEmpty()
                ? new Tightened(compiled, prover.prove(compiled.model()), null, List.of())
                : new CuttingPlanes(compiled, prover, known).solved();
    }

    /**
     * What is proved of a model that has its cones told in rows as far as they matter: a point of it is as good as on
     * them, and that there is none is certain.
     *
     * @param cones over the model's first columns; their rows need not be among the model's
     */
    public static Verdict outer(LinearModel model, List<Cone> cones, Prover prover) {
        var told = model;
        var verdict = prover.prove(told);
        for (int round = 0; round < MOST_ROUNDS && verdict instanceof Optimum optimum; round++) {
            var point = optimum.point();
            var missed = cones.stream().filter(cone -> isOutside(cone, point)).toList();
            if (missed.isEmpty()) {
                return verdict;
            }
            for (var cone : missed) {
                told = told.with(Cut.at(cone, point).row("cut", BigFraction.ZERO));
            }
            verdict = prover.prove(told);
        }
        return verdict;
    }

    private static boolean isOutside(Cone cone, List<BigFraction> point) {
        var asked = Roots.above(cone.squareAt(point));
        var lacks = asked.subtract(point.get(cone.column()));
        return lacks.compareTo(asked.multiply(GOOD_GAP)) > 0;
    }

    private Tightened solved() {
        Inner best = null;
        BigFraction least = null;
        int known = -1;
        for (int round = 0; round < MOST_ROUNDS && cuts.size() > known; round++) {
            known = round == 0 ? -1 : cuts.size();
            var relaxed = compiled.withCuts(rows(List.of()));
            var verdict = prover.prove(relaxed.model());
            var missed = verdict instanceof Optimum optimum ? missed(optimum.point()) : List.<Missed>of();
            if (!(verdict instanceof Optimum optimum) || missed.stream().allMatch(Missed::nothing)) {
                return new Tightened(relaxed, verdict, null, List.copyOf(cuts));
            }
            least = relaxed.model().costAt(optimum.point());
            addCuts(missed, optimum.point());
            if (missed.stream().allMatch(Missed::isNear)) {
                best = cheaper(best, movedInwards(missed));
            }
            if (isWithin(best, least, GOOD_GAP)) {
                break;
            }
        }
        return best != null && isWithin(best, least, MOST_GAP)
                ? new Tightened(best.compiled(), best.verdict(), least, List.copyOf(cuts))
                : open();
    }

    private Tightened open() {
        return new Tightened(
                compiled,
                new Verdict.Unproven("no blend was found within a millionth of the lower bound that keeps what is to be"
                        + " sure; perhaps it can only just be kept"),
                null,
                List.of());
    }

    /** A model with all cuts moved inwards whose point keeps every cone. */
    private record Inner(CompiledBrief compiled, Verdict verdict, BigFraction cost) {}

    private static @Nullable Inner cheaper(@Nullable Inner one, @Nullable Inner other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.cost().compareTo(other.cost()) <= 0 ? one : other;
    }

    private static boolean isWithin(@Nullable Inner best, @Nullable BigFraction least, BigFraction gap) {
        return best != null && least != null && best.cost().subtract(least).compareTo(gap.multiply(least.abs())) <= 0;
    }

    /** How far a point is outside a cone. */
    private record Missed(Cone cone, BigFraction by, BigFraction asked) {
        boolean nothing() {
            return by.signum() <= 0;
        }

        boolean isNear() {
            return by.compareTo(asked.multiply(NEAR)) <= 0;
        }
    }

    private List<Missed> missed(List<BigFraction> point) {
        return compiled.cones().stream().map(cone -> missed(cone, point)).toList();
    }

    private Missed missed(Cone cone, List<BigFraction> point) {
        var square = cone.squareAt(point);
        var clear = clear(cone, point);
        if (clear.signum() >= 0 && clear.multiply(clear).compareTo(square) >= 0) {
            return new Missed(cone, BigFraction.ZERO, clear);
        }
        var asked = Roots.above(square);
        return new Missed(cone, asked.subtract(clear), asked);
    }

    /** How far a point keeps clear of the number that the cone's row is about. */
    private BigFraction clear(Cone cone, List<BigFraction> point) {
        var row = compiled.model().rows().get(cone.row());
        var slack = row.activity(point).subtract(row.right());
        return point.get(cone.column()).add(row.sense() == Sense.AT_LEAST ? slack : slack.negate());
    }

    private void addCuts(List<Missed> missed, List<BigFraction> point) {
        for (var each : missed) {
            var cut = Cut.at(each.cone(), point);
            if (!cut.isValid()) {
                throw new IllegalStateException("a cut takes away a part of its cone");
            }
            if (!each.nothing() && !cuts.contains(cut)) {
                cuts.add(cut);
            }
        }
    }

    /** The program with all cuts moved inwards; null where its point still leaves a cone, or there is none. */
    private @Nullable Inner movedInwards(List<Missed> missed) {
        var inner = compiled.withCuts(rows(missed));
        var verdict = prover.prove(inner.model());
        if (!(verdict instanceof Optimum optimum)) {
            return null;
        }
        var left = missed(optimum.point());
        addCuts(left, optimum.point());
        return left.stream().allMatch(Missed::nothing)
                ? new Inner(inner, verdict, inner.model().costAt(optimum.point()))
                : null;
    }

    /** The cuts as rows, those of a cone that was missed moved inwards by twice as much as it was missed by. */
    private List<Row> rows(List<Missed> missed) {
        var rows = new ArrayList<Row>();
        for (int k = 0; k < cuts.size(); k++) {
            var cut = cuts.get(k);
            rows.add(cut.row("cut " + (k + 1), margin(cut.cone(), missed)));
        }
        return rows;
    }

    private static BigFraction margin(Cone cone, List<Missed> missed) {
        return missed.stream()
                .filter(each -> each.cone().equals(cone) && !each.nothing())
                .map(each -> Decimal.of(Decimal.significant(each.by().multiply(2), 3, RoundingMode.UP)))
                .findFirst()
                .orElse(BigFraction.ZERO);
    }
}
