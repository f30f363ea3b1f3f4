package panade.learn;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much of the variation of a response a fit by least squares takes up.
 *
 * @param total sum of squares of the response about its mean, or about nought
 * @param aboutMean whether about the mean: so where the model can say that nothing matters
 * @param degrees of freedom that the fit takes up beside that
 */
public record Variation(Fit fit, BigFraction total, boolean aboutMean, int degrees) {
    /** The variation of a fit's responses. */
    public static Variation of(Fit fit) {
        var weight = BigFraction.ZERO;
        var sum = BigFraction.ZERO;
        var squares = BigFraction.ZERO;
        for (var each : fit.observations()) {
            var weighed = each.weight().multiply(each.response());
            weight = weight.add(each.weight());
            sum = sum.add(weighed);
            squares = squares.add(weighed.multiply(each.response()));
        }
        boolean aboutMean = holdsConstant(fit);
        int columns = fit.observations().size() - fit.degrees();
        return aboutMean
                ? new Variation(fit, squares.subtract(sum.multiply(sum).divide(weight)), true, columns - 1)
                : new Variation(fit, squares, false, columns);
    }

    /** A constant is among what the model can say if responses that are all one leave nothing over. */
    private static boolean holdsConstant(Fit fit) {
        if (fit.terms().stream().anyMatch(term -> term.levers().isEmpty())) {
            return true;
        }
        var ones = fit.observations().stream()
                .map(each -> new Observation(each.levers(), BigFraction.ONE, each.weight(), each.group(), each.block()))
                .toList();
        return Fit.of(fit.terms(), ones, Prior.none(fit.terms().size())) instanceof Fit found
                && found.sse().signum() == 0;
    }

    /** The share of the variation that is taken up; empty where there was none. */
    public Optional<BigFraction> r2() {
        return shareBeside(fit.sse());
    }

    /** The same where each observation is predicted from the others; below nought where that is worse than the mean. */
    public Optional<BigFraction> predictedR2() {
        return fit.press().flatMap(this::shareBeside);
    }

    private Optional<BigFraction> shareBeside(BigFraction left) {
        return total.signum() == 0 ? Optional.empty() : Optional.of(BigFraction.ONE.subtract(left.divide(total)));
    }

    /** The ratio of what the fit takes up to what it leaves over, both by degree of freedom. */
    public Optional<BigFraction> f() {
        return degrees == 0 || fit.degrees() <= 0 || fit.sse().signum() == 0
                ? Optional.empty()
                : Optional.of(total.subtract(fit.sse())
                        .divide(degrees)
                        .divide(fit.sse().divide(fit.degrees())));
    }
}
