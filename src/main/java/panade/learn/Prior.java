package panade.learn;

import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is believed before any trial: a normal distribution of each coefficient on its own, given the error's variance,
 * and an inverse gamma distribution of that (the conjugate family; Gelman et al., Bayesian Data Analysis, from memory).
 *
 * @param means of the coefficients, one for each term
 * @param precisions the error's variance divided by the coefficient's; nought where nothing is believed
 * @param degrees how many observations the belief about the error is worth; nought where nothing is believed
 * @param variance of the error
 */
public record Prior(List<BigFraction> means, List<BigFraction> precisions, int degrees, BigFraction variance) {
    public Prior {
        means = List.copyOf(means);
        precisions = List.copyOf(precisions);
    }

    /** Nothing is believed, which is least squares. */
    public static Prior none(int terms) {
        var zeros = Collections.nCopies(terms, BigFraction.ZERO);
        return new Prior(zeros, zeros, 0, BigFraction.ZERO);
    }

    /** Coefficients of which nothing is believed. */
    int flat() {
        return (int)
                precisions.stream().filter(precision -> precision.signum() == 0).count();
    }
}
