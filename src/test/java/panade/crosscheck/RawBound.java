package panade.crosscheck;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A bound as written and as numbers: {@code of >= min x per} and {@code of <= max x per}.
 *
 * @param path where a result points to
 * @param selector the JSON members that say what is bounded
 * @param of amount per share of each use, in the bound's unit
 * @param per what it is relative to, per share of each use; empty for a plain number
 * @param unit as written after a limit; empty for a bare number
 */
record RawBound(
        String path,
        String selector,
        List<BigFraction> of,
        Optional<List<BigFraction>> per,
        Optional<BigDecimal> min,
        Optional<BigDecimal> max,
        String unit) {

    String json() {
        var floor = min.map(limit -> ", \"min\": " + written(limit)).orElse("");
        var ceiling = max.map(limit -> ", \"max\": " + written(limit)).orElse("");
        var members = selector + floor + ceiling;
        return "{" + (selector.isEmpty() ? members.substring(2) : members) + "}";
    }

    private String written(BigDecimal limit) {
        return unit.isEmpty() ? limit.toPlainString() : "\"" + limit.toPlainString() + " " + unit + "\"";
    }

    boolean isMetBy(List<BigFraction> shares) {
        return min.map(limit -> excess(limit, shares).signum() >= 0).orElse(true)
                && max.map(limit -> excess(limit, shares).signum() <= 0).orElse(true);
    }

    private BigFraction excess(BigDecimal limit, List<BigFraction> shares) {
        return Exact.times(difference(limit), shares).subtract(constant(limit));
    }

    /** The left side of {@code difference >= constant} for a floor. */
    List<BigFraction> difference(BigDecimal limit) {
        return per.map(form ->
                        Exact.sum(List.of(of, Exact.scaled(form, Exact.of(limit).negate()))))
                .orElse(of);
    }

    BigFraction constant(BigDecimal limit) {
        return per.isPresent() ? BigFraction.ZERO : Exact.of(limit);
    }

    RawBound with(Optional<BigDecimal> newMin, Optional<BigDecimal> newMax) {
        return new RawBound(path, selector, of, per, newMin, newMax, unit);
    }
}
