package panade.learn;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;

/**
 * An observation and what a fit makes of it.
 *
 * @param error measured less fitted
 * @param leverage how far the fit follows this observation alone, from 0 to 1
 */
public record Residual(Observation observation, BigFraction error, BigFraction leverage) {
    private static final int DIGITS = 50;

    /** Whether no other observation has a say in its fit, so that it cannot be predicted from them. */
    public boolean isAlone() {
        return leverage.equals(BigFraction.ONE);
    }

    /** Measured less what the others predict; the observation must not be alone. */
    public BigFraction errorWithout() {
        return error.divide(BigFraction.ONE.subtract(leverage));
    }

    /** Its weighed square to fifty digits: the exact sum of some sixty would take longer than anybody waits. */
    BigFraction squareWithout() {
        var without = Decimal.of(Decimal.significant(errorWithout(), DIGITS));
        return observation.weight().multiply(without.multiply(without));
    }

    /**
     * Whether it lies above the bound that the other observations would have set.
     *
     * @param quantile of Student's distribution with one degree of freedom less than the fit has
     */
    boolean isAbove(Fit fit, BigDecimal quantile) {
        if (error.signum() >= 0) {
            return true;
        }
        var left = BigFraction.ONE.subtract(leverage);
        var square = error.multiply(error).multiply(observation.weight()).divide(left);
        var variance = fit.sse().subtract(square).divide(fit.degrees() - 1);
        var q = Decimal.of(quantile);
        return square.compareTo(q.multiply(q).multiply(variance)) <= 0;
    }

    /**
     * The square of how far it is from what the others predict, in their own scale; nought where they fit exactly. It
     * must not be alone, and the fit must have more than one degree of freedom.
     */
    public BigFraction studentizedSquare(Fit fit) {
        var square = error.multiply(error).multiply(observation.weight()).divide(BigFraction.ONE.subtract(leverage));
        var rest = fit.sse().subtract(square);
        return rest.signum() == 0
                ? BigFraction.ZERO
                : square.multiply(fit.degrees() - 1).divide(rest);
    }
}
