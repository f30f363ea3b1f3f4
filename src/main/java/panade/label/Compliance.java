package panade.label;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * How far a declared figure is from what a laboratory may find before the law minds, in standard deviations of the
 * blend as the ingredients' {@code spread} makes them, each ingredient and component varying on its own.
 *
 * @param id of the line
 * @param name of the line
 * @param declared as printed: per serving in the United States, per 100 g in the Union
 * @param low what must be found at least, in the line's unit; null when nothing is too little
 * @param high what may be found at most; null when nothing is too much
 * @param expected what the blend holds
 * @param variance of that, the unit squared; null when a spread is missing
 * @param unknownFor names of the ingredients that state no spread
 * @param source of the tolerance
 */
public record Compliance(
        String id,
        String name,
        String declared,
        @Nullable BigFraction low,
        @Nullable BigFraction high,
        BigFraction expected,
        @Nullable BigFraction variance,
        List<String> unknownFor,
        String source) {
    private static final MathContext DIGITS = new MathContext(12);

    public Compliance {
        unknownFor = List.copyOf(unknownFor);
    }

    /** The standard deviation; null when it is not known. */
    public @Nullable BigDecimal spread() {
        return variance == null ? null : decimal(variance).sqrt(DIGITS);
    }

    /** Standard deviations to the nearer limit, negative beyond it; null when not known or without any spread. */
    public @Nullable BigDecimal room() {
        var spread = spread();
        return spread == null || spread.signum() == 0
                ? null
                : decimal(distance()).divide(spread, DIGITS);
    }

    /** How far the nearer limit is, negative beyond it, in the line's unit. */
    public BigFraction distance() {
        var above = high == null ? null : high.subtract(expected);
        var below = low == null ? null : expected.subtract(low);
        if (above == null || below == null) {
            return above != null ? above : below != null ? below : BigFraction.ZERO;
        }
        return above.compareTo(below) < 0 ? above : below;
    }

    private static BigDecimal decimal(BigFraction value) {
        return new BigDecimal(value.getNumerator()).divide(new BigDecimal(value.getDenominator()), DIGITS);
    }
}
