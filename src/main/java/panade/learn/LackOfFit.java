package panade.learn;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Whether a fit misses its observations by more than repeats of one mixing differ.
 *
 * @param degrees of freedom of what the fit misses beside pure error
 * @param ss the sum of squares of that
 * @param f its ratio to pure error, both by degree of freedom
 * @param p how often chance alone gives such a ratio
 */
public record LackOfFit(int degrees, BigFraction ss, BigFraction f, BigDecimal p) {
    /**
     * What repeats differ by.
     *
     * @param degrees of freedom
     * @param ss sum of squares
     */
    public record PureError(int degrees, BigFraction ss) {
        /** From repeats among observations; blocks are taken out, whatever the levers do. */
        public static PureError of(List<Observation> observations) {
            var design = Design.of(List.of(), observations);
            var groups =
                    observations.stream().map(Observation::group).distinct().toList();
            var rows = observations.stream()
                    .map(each -> design.groupRow(each, groups))
                    .toList();
            var weights = observations.stream().map(Observation::weight).toList();
            var sweep = Sweep.of(rows, weights, groups.size() + design.width() + 1);
            int degrees = observations.size() - sweep.rank();
            return new PureError(degrees, degrees == 0 ? BigFraction.ZERO : sweep.residual());
        }
    }

    /** The test of a fit by least squares; empty where either side has no degree of freedom. */
    public static Optional<LackOfFit> of(Fit fit, PureError pure) {
        return of(fit.sse().subtract(pure.ss()), fit.degrees() - pure.degrees(), pure);
    }

    /** The test of a sum of squares that was found in some other way, as from printed means. */
    public static Optional<LackOfFit> of(BigFraction ss, int degrees, PureError pure) {
        if (degrees <= 0 || pure.degrees() <= 0 || pure.ss().signum() <= 0 || ss.signum() < 0) {
            return Optional.empty();
        }
        var f = ss.divide(degrees).divide(pure.ss().divide(pure.degrees()));
        return Optional.of(new LackOfFit(degrees, ss, f, Distributions.fisherAbove(f, degrees, pure.degrees())));
    }

    /** Whether chance gives it less often than this. */
    public boolean isRejectedAt(BigDecimal level) {
        return p.compareTo(level) < 0;
    }
}
