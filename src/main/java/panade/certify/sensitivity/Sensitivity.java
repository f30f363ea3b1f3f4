package panade.certify.sensitivity;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Extremes;
import panade.certify.Repricing;
import panade.certify.Verdict;
import panade.certify.simplex.Dictionary;
import panade.certify.simplex.ParametricSimplex;
import panade.model.LinearForm;
import panade.model.LinearModel.Sense;
import panade.model.Unproved;

/**
 * Exact answers to "what if this number moved": one-sided rates with their reach, and prices at which a blend turns.
 */
public final class Sensitivity {
    private final Verdict.Optimum optimum;
    private @Nullable WalkedOptima walked;

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
        boolean most = optimum.model().rows().get(row).sense() == Sense.AT_MOST;
        return optimum.pivoting(dictionary -> ParametricSimplex.alongRow(dictionary, row, most ? -sign : sign)
                .map(slope -> new Rate(slope.rate(), slope.reach())));
    }

    /**
     * How far a ratio's number may move while the same bounds bind.
     *
     * @param form the amount that the number multiplies, by column
     * @param up whether the number is raised
     * @return empty when there is no end, or none could be settled
     */
    public Optional<BigFraction> ratioReach(int row, LinearForm form, boolean up) {
        boolean most = optimum.model().rows().get(row).sense() == Sense.AT_MOST;
        return optimum.pivoting(dictionary -> RatioReach.of(dictionary, row, up == most ? -1 : 1, form));
    }

    /**
     * Where lowering (or raising) the costs of some columns together first changes how much of them is used.
     *
     * @param weights by column, what one unit of the moving price adds to its cost, positive
     * @param sign 1 to raise, -1 to lower
     */
    public Optional<Breakpoint> movingPrice(LinearForm weights, int sign) {
        return optimum.pivoting(dictionary -> {
            dictionary.setDirection(sign < 0 ? weights.negated() : weights);
            return Optional.ofNullable(ParametricSimplex.alongDirection(dictionary))
                    .map(Breakpoint::of);
        });
    }

    /**
     * How far the costs of some columns may be lowered (or raised) together before anything changes; empty where that
     * is for ever.
     *
     * @param weights by column, what one unit of the moving price adds to its cost
     * @param sign 1 to raise, -1 to lower
     */
    public Optional<BigFraction> priceLimit(LinearForm weights, int sign) {
        return movingPrice(weights, sign).map(Breakpoint::by);
    }

    /**
     * Every change of how much is used as the costs of some columns are raised together without end.
     *
     * @param weights by column, what one unit of the moving price adds to its cost, positive
     */
    public List<Breakpoint> raisingPriceForEver(LinearForm weights) {
        return optimum.pivoting(dictionary -> {
            dictionary.setDirection(weights);
            return ParametricSimplex.allAlongDirection(dictionary).stream()
                    .map(Breakpoint::of)
                    .toList();
        });
    }

    /**
     * A turn of the blend.
     *
     * @param by how far the price has moved by then
     * @param after the point on the far side
     */
    public record Breakpoint(BigFraction by, List<BigFraction> after) {
        private static Breakpoint of(ParametricSimplex.Breakpoint turn) {
            return new Breakpoint(turn.at(), turn.after().point());
        }
    }

    /**
     * How something unused comes in as its price falls.
     *
     * @param by how far the price falls before it does
     * @param after the point just below
     */
    public record Entrance(BigFraction by, List<BigFraction> after) {}

    /**
     * Where some unused columns come in as their costs are lowered together, proved from the model; empty where they
     * never do. Read off the reduced costs where that is exact, and else followed.
     *
     * @param weights by column, what one unit of the price adds to its cost, positive
     * @param own all columns of what comes in
     */
    public Optional<Entrance> entering(LinearForm weights, Set<Integer> own) {
        var quick = Entering.of(optimum, weights, own).flatMap(found -> {
            var after = found.after();
            return Entering.provesEntrance(optimum, weights, found.by(), after)
                    ? Optional.of(new Entrance(found.by(), after))
                    : Optional.empty();
        });
        return quick.isPresent() ? quick : followed(weights);
    }

    /**
     * How far the costs of some columns, none of them used, must be lowered together at least before any comes in:
     * while no cost falls below what its column is worth, the multipliers of the optimum still prove it.
     *
     * @param weights by column, what one unit of the price adds to its cost, positive
     */
    public BigFraction leastFall(LinearForm weights) {
        return optimum.pivoting(dictionary -> weights.columns().stream()
                .map(column -> {
                    int place = dictionary.placeOf(column);
                    return place < 0
                            ? BigFraction.ZERO
                            : dictionary.prices().value(place).divide(weights.at(column));
                })
                .min(Comparator.naturalOrder())
                .orElse(BigFraction.ZERO));
    }

    private Optional<Entrance> followed(LinearForm weights) {
        return optimum.pivoting(dictionary -> followed(dictionary, weights));
    }

    private Optional<Entrance> followed(Dictionary dictionary, LinearForm weights) {
        dictionary.setDirection(weights.negated());
        var walked = ParametricSimplex.alongDirection(dictionary);
        if (walked == null) {
            return Optional.empty();
        }
        var turn = Breakpoint.of(walked);
        if (!Entering.provesEntrance(optimum, weights, turn.by(), turn.after(), walked.after())) {
            throw new Unproved("the price at which something comes in was not proved");
        }
        return Optional.of(new Entrance(turn.by(), turn.after()));
    }

    /** A point of least cost under other costs of the same columns, proved like the first. */
    public List<BigFraction> leastPointAt(List<BigFraction> costs) {
        return walked().point(costs).orElseGet(() -> Repricing.leastPoint(optimum, costs));
    }

    private synchronized WalkedOptima walked() {
        if (walked == null) {
            walked = new WalkedOptima(optimum.model(), optimum.basis());
        }
        return walked;
    }

    /** The least or most of a linear form over all points that cost no more than the optimum. */
    public BigFraction extreme(LinearForm form, boolean most) {
        return Extremes.over(optimum, form, most);
    }

    /**
     * The least or most of one form over another, which is nowhere zero, over all points that cost no more than the
     * optimum (Dinkelbach, Management Science 13, 1967).
     *
     * @param top zero for one: shares of a batch sum to one
     */
    public BigFraction extremeRatio(LinearForm top, LinearForm bottom, boolean most) {
        var numerator = top.isZero() ? LinearForm.sumOver(optimum.point().size(), j -> true) : top;
        var point = optimum.point();
        while (true) {
            var ratio = numerator.dot(point).divide(bottom.dot(point));
            var difference = numerator.minus(bottom.scaled(ratio));
            point = Extremes.pointOver(optimum, difference, most);
            if (difference.dot(point).signum() == 0) {
                return ratio;
            }
        }
    }

    /** A form at the optimum. */
    public BigFraction valueOf(LinearForm form) {
        return form.dot(optimum.point());
    }

    /** The least cost of the points where a form without coefficients below zero is zero; empty when there is none. */
    public Optional<BigFraction> leastWithout(LinearForm form) {
        return new Emptied(optimum, form).least();
    }

    /**
     * The same where the model's costs are money less a rate for each unit of a weight, and what is asked for is the
     * least money per weight.
     */
    public Optional<BigFraction> leastWithout(LinearForm form, LinearForm weight, BigFraction rate) {
        return new Emptied(optimum, form).leastPer(weight, rate);
    }

    /** Whether no other point costs as little. */
    public boolean isUnique() {
        var tied = optimum.pivoting(Dictionary::tied);
        return tied.isEmpty() || !Extremes.canGrow(optimum, tied);
    }
}
