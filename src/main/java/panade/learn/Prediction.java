package panade.learn;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What a fit says of a place.
 *
 * @param mean what is to be expected
 * @param form the mean's variance, in variances of the error
 * @param variance of the error; null when no degree of freedom was left for it
 * @param degrees of freedom of that variance
 */
public record Prediction(
        BigFraction mean, BigFraction form, @Nullable BigFraction variance, int degrees) {
    /** What is predicted: the mean over many batches, or the next batch, which has an error of its own. */
    public enum Of {
        MEAN,
        BATCH
    }

    private BigFraction scale(Of what) {
        var parts = what == Of.BATCH ? form.add(BigFraction.ONE) : form;
        return Objects.requireNonNull(variance).multiply(parts);
    }

    /** The standard error of the mean, or the standard deviation of the next batch about its prediction. */
    public Optional<BigDecimal> standardError(Of what) {
        return variance == null ? Optional.empty() : Optional.of(Distributions.root(scale(what)));
    }

    /**
     * How far below the mean the bound lies that holds with a probability.
     *
     * @param sure the probability, a half or more; one side only
     */
    public Optional<BigDecimal> below(BigFraction sure, Of what) {
        return standardError(what).map(error -> error.multiply(Distributions.student(degrees, sure)));
    }

    /** The same to both sides at once. */
    public Optional<BigDecimal> around(BigFraction sure, Of what) {
        var oneSided = BigFraction.ONE.add(sure).divide(2);
        return below(oneSided, what);
    }
}
