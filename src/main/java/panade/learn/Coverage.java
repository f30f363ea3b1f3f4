package panade.learn;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How many observations lie above the bound that the others would have set for them.
 *
 * @param sure how often the bound should hold
 * @param held how often it did
 * @param of among how many
 */
public record Coverage(BigFraction sure, int held, int of) {
    /** The coverage of a fit; empty where an observation cannot be predicted from the others. */
    public static Optional<Coverage> of(Fit fit, BigFraction sure) {
        var residuals = fit.residuals();
        if (fit.degrees() < 2 || residuals.stream().anyMatch(Residual::isAlone)) {
            return Optional.empty();
        }
        var quantile = Distributions.student(fit.degrees() - 1, sure);
        int held = (int) residuals.stream()
                .filter(residual -> residual.isAbove(fit, quantile))
                .count();
        return Optional.of(new Coverage(sure, held, residuals.size()));
    }

    /** How often chance alone holds no more than this (binomial, exact). */
    public BigFraction chanceOfNoMore() {
        var chance = BigFraction.ZERO;
        var ways = BigFraction.ONE;
        for (int k = 0; k <= held; k++) {
            var held = sure.pow(k).multiply(BigFraction.ONE.subtract(sure).pow(of - k));
            chance = chance.add(ways.multiply(held));
            ways = ways.multiply(of - k).divide(k + 1);
        }
        return chance;
    }
}
