package panade.scenario;

import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.quantity.Decimal;

/**
 * How a model did over many draws. Means are of costs rounded to a sixteen-millionth of today's; quantiles are read off
 * bins of six thousandths of a per cent of it.
 */
public final class Distribution {
    private static final BigInteger STEPS = BigInteger.valueOf(PriceDraws.STEPS);

    private final ScenarioModel model;
    private final long draws;
    private final Tally tally;
    private final BigFraction today;
    private final List<Basis> standing;

    Distribution(ScenarioModel model, long draws, Tally tally, List<Basis> standing) {
        this.model = model;
        this.draws = draws;
        this.tally = tally;
        this.standing = standing;
        this.today = BigFraction.from(tally.base());
    }

    /** How many draws there were. */
    public long draws() {
        return draws;
    }

    /** In how many draws the least cost is no higher than what was hoped for. */
    public long met() {
        return tally.met.get(0).longValueExact();
    }

    /** The mean of the least cost. */
    public BigFraction mean() {
        return cost(mean(tally.costs.get(Tally.DIFFERENCE)));
    }

    /** The variance of the least cost, in parts of today's squared. */
    private BigFraction variance() {
        var mean = mean(tally.costs.get(Tally.DIFFERENCE));
        return mean(tally.costs.get(Tally.SQUARE)).subtract(mean.multiply(mean));
    }

    /** The standard deviation of the least cost. */
    public BigFraction deviation() {
        var grains = variance().bigDecimalValue(34, RoundingMode.HALF_EVEN).sqrt(MathContext.DECIMAL128);
        return money(Decimal.of(grains));
    }

    /** The cost that a share of the draws does not exceed, to the width of a bin. */
    public BigFraction quantile(BigFraction share) {
        long wanted = (long) Math.ceil(
                share.multiply(BigFraction.of(BigInteger.valueOf(draws))).doubleValue());
        long passed = 0;
        int bin = -1;
        while (passed < Math.max(1, wanted)) {
            bin++;
            passed += tally.bins[bin];
        }
        long middle = (long) bin * Tally.BIN - Tally.GRAINS + Tally.BIN / 2;
        long inside = Math.max(tally.least.value(), Math.min(tally.most.value(), middle));
        return cost(BigFraction.of(BigInteger.valueOf(inside)));
    }

    /** The draw with the lowest cost, the first of several. */
    public long cheapestDraw() {
        return tally.least.draw();
    }

    /** The draw with the highest cost, the first of several. */
    public long dearestDraw() {
        return tally.most.draw();
    }

    /** In how many draws a group is in the best blend. */
    public long used(int group) {
        return tally.used.get(group).longValueExact();
    }

    /** The mean share of a group over all draws. */
    public BigFraction meanShare(int group) {
        return mean(tally.shares.get(group)).divide(BigFraction.from(Tally.SHARES));
    }

    /** In how many draws a row has no slack. */
    public long touched(int row) {
        return tally.touched.get(row).longValueExact();
    }

    /**
     * How much of the ups and downs of the cost goes with one price: the squared correlation of the two. Prices are
     * drawn each on its own, so these are parts of one whole, and what is missing from it is bends and chance.
     */
    public BigFraction partOfVariance(int price) {
        var together = mean(tally.products.get(price)).divide(BigFraction.of(STEPS));
        var variance = variance();
        return variance.signum() == 0
                ? BigFraction.ZERO
                : together.multiply(together).multiply(3).divide(variance);
    }

    /** The blends that were kept whatever the prices: today's best first. */
    public List<Basis> standing() {
        return standing;
    }

    /** What a kept blend costs above the best of each draw, in the mean. */
    public BigFraction meanRegret(int kept) {
        return money(mean(tally.regrets.get(kept)));
    }

    /** What a kept blend costs above the best of a draw, at worst. */
    public BigFraction worstRegret(int kept) {
        return money(BigFraction.of(BigInteger.valueOf(tally.worst[kept])));
    }

    /** The model that was asked about. */
    public ScenarioModel model() {
        return model;
    }

    private BigFraction mean(BigInteger sum) {
        return BigFraction.of(sum, BigInteger.valueOf(draws));
    }

    private BigFraction cost(BigFraction grains) {
        return today.add(money(grains));
    }

    private BigFraction money(BigFraction grains) {
        return grains.multiply(BigFraction.from(tally.grain()));
    }
}
