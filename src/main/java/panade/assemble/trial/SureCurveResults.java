package panade.assemble.trial;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.RemarkLines;
import panade.domain.Bound;
import panade.quantity.Quantity;
import panade.result.trial.SureCurveResult;
import panade.result.trial.SureCurveResult.Point;
import panade.result.trial.SureCurveResult.SureBound;
import panade.trace.SureCurve;
import panade.trace.SureCurve.Cheapest;

/** Makes the result of a curve over sureness. */
public final class SureCurveResults {
    private SureCurveResults() {}

    /** The result. */
    public static SureCurveResult of(SureCurve curve) {
        var brief = curve.brief();
        var bound = curve.bound();
        var mean = curve.points().get(0).cheapest().found().map(Cheapest::costPerKg);
        return new SureCurveResult(
                new SureBound(
                        bound.name(),
                        bound.path(),
                        bound.origin().file(),
                        bound.unit().symbol(),
                        asks(bound),
                        bound.min() != null && bound.max() != null),
                curve.points().stream()
                        .map(point -> point(point, mean.orElse(null)))
                        .toList(),
                RemarkLines.of(brief.remarks()),
                brief.title(),
                brief.currency());
    }

    private static String asks(Bound bound) {
        return Stream.of(words("at least ", bound.min()), words("at most ", bound.max()))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" and "));
    }

    private static String words(String side, @Nullable Quantity limit) {
        return limit == null ? "" : side + limit.text();
    }

    private static Point point(SureCurve.Point point, @Nullable BigFraction mean) {
        return point.cheapest()
                .fold(
                        found -> new Point(
                                point.sure(),
                                point.asked(),
                                found.costPerKg(),
                                mean == null ? null : found.costPerKg().subtract(mean),
                                found.value(),
                                null),
                        () -> new Point(point.sure(), point.asked(), null, null, null, null),
                        reason -> new Point(point.sure(), point.asked(), null, null, null, reason));
    }
}
