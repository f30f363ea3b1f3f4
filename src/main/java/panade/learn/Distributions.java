package panade.learn;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Normal, Student's and Fisher's distributions, and square roots: the only figures here that are not exact. */
public final class Distributions {
    /** Digits that the library's figures are good for after one Newton step. */
    private static final MathContext OUTWARD = new MathContext(12, RoundingMode.CEILING);

    private static final MathContext ROOT = new MathContext(24, RoundingMode.HALF_EVEN);

    private Distributions() {}

    /** Student's quantile: below it lies this share of the distribution, a half or more; rounded up. */
    public static BigDecimal student(int degrees, BigFraction share) {
        var student = TDistribution.of(degrees);
        var above = BigFraction.ONE.subtract(share).doubleValue();
        var near = student.inverseSurvivalProbability(above);
        var better = near + (student.survivalProbability(near) - above) / student.density(near);
        return new BigDecimal(Math.max(0, better)).round(OUTWARD);
    }

    /** The quantile of the standard normal distribution: below it lies this share, a half or more; rounded up. */
    public static BigDecimal normal(BigFraction share) {
        var normal = NormalDistribution.of(0, 1);
        var above = BigFraction.ONE.subtract(share).doubleValue();
        var near = normal.inverseSurvivalProbability(above);
        var better = near + (normal.survivalProbability(near) - above) / normal.density(near);
        return new BigDecimal(Math.max(0, better)).round(OUTWARD);
    }

    /** How often chance alone gives at least this ratio of variances. */
    public static BigDecimal fisherAbove(BigFraction ratio, int degrees, int errorDegrees) {
        return new BigDecimal(FDistribution.of(degrees, errorDegrees).survivalProbability(ratio.doubleValue()));
    }

    /** A square root to 24 digits. */
    public static BigDecimal root(BigFraction square) {
        return square.bigDecimalValue(40, RoundingMode.HALF_EVEN).sqrt(ROOT);
    }
}
