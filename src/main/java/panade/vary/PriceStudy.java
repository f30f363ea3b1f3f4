package panade.vary;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Side;
import panade.domain.purchase.Offer;
import panade.plan.Outcome.Blended;

/**
 * How cost and blend behave when prices vary.
 *
 * @param today the best blend at the prices as they are
 * @param draws how many times all prices were drawn
 * @param seed what the draws start from
 * @param mean the mean of the least cost, money per kg
 * @param deviation its standard deviation
 * @param levels costs that a share of the draws does not exceed
 * @param lowest the lowest least cost of all draws, proved
 * @param highest the highest, proved
 * @param uses how often each ingredient is in the best blend, most often first
 * @param touches how often each bound holds the best blend back, most often first
 * @param weights how much of the ups and downs of the cost goes with each price, most first
 * @param kept what it costs to keep today's blend whatever the prices
 * @param safest the same for the blend with the least worst price of being kept, of those that were compared
 * @param compared how many blends were
 * @param target how often what is hoped for is met; null where nothing is
 * @param proof what of all this was proved
 */
public record PriceStudy(
        Blended today,
        long draws,
        long seed,
        BigFraction mean,
        BigFraction deviation,
        List<Level> levels,
        BigFraction lowest,
        BigFraction highest,
        List<Use> uses,
        List<BindingSide> touches,
        List<Weight> weights,
        Kept kept,
        Kept safest,
        int compared,
        @Nullable Target target,
        Proof proof) {

    /**
     * A cost that is hoped for, and the draws in which the least cost is no higher.
     *
     * @param perKg money per kg
     */
    public record Target(BigFraction perKg, long draws) {}

    /** A cost that a share of the draws does not exceed. */
    public record Level(BigFraction share, BigFraction perKg) {}

    /** How often an ingredient is in the best blend, and its mean share over all draws. */
    public record Use(String ingredient, long draws, BigFraction meanShare) {}

    /** How often a bound's number holds the best blend back. */
    public record BindingSide(String name, String path, Side side, long draws) {}

    /** The part of the variance of the least cost that goes with the price of an offer: a squared correlation. */
    public record Weight(Offer offer, BigFraction part) {}

    /** What a blend that is kept costs above the best of each draw, in the mean and at worst, per kg. */
    public record Kept(Blend blend, BigFraction meanPerKg, BigFraction worstPerKg) {}

    /**
     * Draws that were solved again in exact fractions.
     *
     * @param proved how many
     * @param off how many of those had been answered wrongly, by more than a billionth
     */
    public record Proof(long proved, long off) {}
}
