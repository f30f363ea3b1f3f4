package panade.certify.sensitivity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Emptied;
import panade.certify.Extremes;
import panade.certify.Repricing;
import panade.certify.Verdict;
import panade.certify.simplex.Integers;
import panade.certify.simplex.ParametricSimplex;
import panade.model.LinearModel.Sense;
import panade.model.Unproved;

/**
 * Exact answers to "what if this number moved": one-sided rates with their reach, and prices at which a blend turns.
 */
public final class Sensitivity {
    private final Verdict.Optimum optimum;

    /** The sensitivity of a proved optimum. */
    public Sensitivity(Verdict.Optimum optimum) {
        this.optimum = optimum;
    }

    /**
     * A one-sided rate.
     *
     * @param rate change of the least cost per unit by which the right side moves, in the direction of the move
     * @param reach how far the right side may move with that rate; null when there is no end
     */
    public record Rate(BigFraction rate, @Nullable BigFraction reach) {}

    /** The rate as a row's right side is raised; empty when no solution exists on that side. */
    public Optional<Rate> raising(int row) {
        return moving(row, 1);
    }

    /** The rate as a row's right side is lowered; empty when no solution exists on that side. */
    public Optional<Rate> lowering(int row) {
        return moving(row, -1);
    }

    private Optional<Rate> moving(int row, int sign) {
        var tableau = optimum.tableau();
        boolean most = optimum.model().rows().get(row).sense() == Sense.AT_MOST;
        var scale = tableau.slackScale(row);
        return ParametricSimplex.alongRow(tableau, row, most ? -sign : sign)
                .map(slope -> new Rate(
                        slope.rate().multiply(scale).divide(tableau.costScale()),
                        slope.reach() == null ? null : slope.reach().divide(scale)));
    }

    /**
     * How far a ratio's number may move while the same bounds bind.
     *
     * @param form the amount that the number multiplies, by column
     * @param up whether the number is raised
     * @return empty when there is no end, or none could be settled
     */
    public Optional<BigFraction> ratioReach(int row, Map<Integer, BigFraction> form, boolean up) {
        var tableau = optimum.tableau();
        var weights = new ArrayList<BigFraction>();
        for (int j = 0; j < tableau.columns(); j++) {
            weights.add(form.getOrDefault(j, BigFraction.ZERO));
        }
        boolean most = optimum.model().rows().get(row).sense() == Sense.AT_MOST;
        var scale = Integers.scaleOf(weights);
        return RatioReach.of(tableau, row, up == most ? -1 : 1, Integers.whole(weights, scale), scale)
                .map(reach -> reach.divide(tableau.slackScale(row)));
    }

    /**
     * Where lowering (or raising) the costs of some columns together first changes how much of them is used.
     *
     * @param weights by column, what one unit of the moving price adds to its cost, positive
     * @param sign 1 to raise, -1 to lower
     */
    public Optional<Breakpoint> movingPrice(Map<Integer, BigFraction> weights, int sign) {
        var moving = new MovingPrice(optimum.tableau(), weights, sign);
        return Optional.ofNullable(ParametricSimplex.alongDirection(moving.tableau()))
                .map(moving::turn);
    }

    /**
     * Every change of how much is used as the costs of some columns are raised together without end.
     *
     * @param weights by column, what one unit of the moving price adds to its cost, positive
     */
    public List<Breakpoint> raisingPriceForEver(Map<Integer, BigFraction> weights) {
        var moving = new MovingPrice(optimum.tableau(), weights, 1);
        return ParametricSimplex.allAlongDirection(moving.tableau()).stream()
                .map(moving::turn)
                .toList();
    }

    /**
     * A turn of the blend.
     *
     * @param by how far the price has moved by then
     * @param after the point on the far side
     */
    public record Breakpoint(BigFraction by, List<BigFraction> after) {}

    /**
     * How something unused comes in as its price falls.
     *
     * @param by how far the price falls before it does
     * @param after the point just below
     * @param stays whether that point is known to be the best still when the price has fallen so far in all
     */
    public record Entrance(BigFraction by, List<BigFraction> after, Predicate<BigFraction> stays) {}

    /**
     * Where some unused columns come in as their costs are lowered together, proved from the model; empty where they
     * never do. Read off the reduced costs where that is exact, and else followed.
     *
     * @param weights by column, what one unit of the price adds to its cost, positive
     * @param own all columns of what comes in
     */
    public Optional<Entrance> entering(Map<Integer, BigFraction> weights, Set<Integer> own) {
        var quick = Entering.of(optimum, weights, own).flatMap(found -> {
            var after = found.after();
            return Entering.provesEntrance(optimum, weights, found.by(), after)
                    ? Optional.of(new Entrance(found.by(), after, found::stays))
                    : Optional.empty();
        });
        return quick.isPresent() ? quick : followed(weights);
    }

    private Optional<Entrance> followed(Map<Integer, BigFraction> weights) {
        var moving = new MovingPrice(optimum.tableau(), weights, -1);
        var walked = ParametricSimplex.alongDirection(moving.tableau());
        if (walked == null) {
            return Optional.empty();
        }
        var turn = moving.turn(walked);
        if (!Entering.provesEntrance(optimum, weights, turn.by(), turn.after(), walked.after())) {
            throw new Unproved("the price at which something comes in was not proved");
        }
        return Optional.of(new Entrance(turn.by(), turn.after(), fallen -> false));
    }

    /** A point of least cost under other costs of the same columns, proved like the first. */
    public List<BigFraction> leastPointAt(List<BigFraction> costs) {
        return Repricing.leastPoint(optimum, costs);
    }

    /** The least or most of a linear form over all points that cost no more than the optimum. */
    public BigFraction extreme(Map<Integer, BigFraction> form, boolean most) {
        return Extremes.over(optimum, form, most);
    }

    /**
     * The least or most of one form over another, which is nowhere zero, over all points that cost no more than the
     * optimum (Dinkelbach, Management Science 13, 1967).
     *
     * @param top by column; empty for one
     */
    public BigFraction extremeRatio(Map<Integer, BigFraction> top, Map<Integer, BigFraction> bottom, boolean most) {
        var numerator = top.isEmpty() ? ones() : top;
        var point = optimum.point();
        while (true) {
            var ratio = value(numerator, point).divide(value(bottom, point));
            var difference = new HashMap<>(numerator);
            bottom.forEach(
                    (j, weight) -> difference.merge(j, weight.multiply(ratio).negate(), BigFraction::add));
            point = Extremes.pointOver(optimum, difference, most);
            if (value(difference, point).signum() == 0) {
                return ratio;
            }
        }
    }

    /** Shares of a batch sum to one. */
    private Map<Integer, BigFraction> ones() {
        var ones = new HashMap<Integer, BigFraction>();
        for (int j = 0; j < optimum.point().size(); j++) {
            ones.put(j, BigFraction.ONE);
        }
        return ones;
    }

    /** A form at the optimum. */
    public BigFraction valueOf(Map<Integer, BigFraction> form) {
        return value(form, optimum.point());
    }

    private static BigFraction value(Map<Integer, BigFraction> form, List<BigFraction> point) {
        var total = BigFraction.ZERO;
        for (var term : form.entrySet()) {
            total = total.add(term.getValue().multiply(point.get(term.getKey())));
        }
        return total;
    }

    /** The least cost of the points where a form without coefficients below zero is zero; empty when there is none. */
    public Optional<BigFraction> leastWithout(Map<Integer, BigFraction> form) {
        return new Emptied(optimum, form).least();
    }

    /**
     * The same where the model's costs are money less a rate for each unit of a weight, and what is asked for is the
     * least money per weight.
     */
    public Optional<BigFraction> leastWithout(
            Map<Integer, BigFraction> form, Map<Integer, BigFraction> weight, BigFraction rate) {
        return new Emptied(optimum, form).leastPer(weight, rate);
    }

    /** Whether no other point costs as little. */
    public boolean isUnique() {
        var tableau = optimum.tableau();
        var tied = new HashMap<Integer, BigFraction>();
        for (int j = 0; j < tableau.columns(); j++) {
            int variable = tableau.nonbasic(j);
            boolean free = !tableau.locked(variable)
                    && tableau.at(tableau.objective(), j).signum() == 0;
            if (free) {
                tied.put(variable, BigFraction.ONE);
            }
        }
        return tied.isEmpty() || !Extremes.canGrow(optimum, tied.keySet());
    }
}
