package panade.assemble;

import java.math.BigDecimal;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.quantity.Decimal;
import panade.result.TraceResult;
import panade.result.TraceResult.End;
import panade.result.TraceResult.Kind;
import panade.trace.Curve;
import panade.trace.Curve.Moved;

/** Makes the result of {@code trace}. */
public final class TraceResults {
    private static final int DIGITS = 15;

    private final Curve curve;
    private final Brief brief;

    private TraceResults(Curve curve) {
        this.curve = curve;
        this.brief = curve.brief();
    }

    /** The result of a curve. */
    public static TraceResult of(Curve curve) {
        return new TraceResults(curve).result();
    }

    private TraceResult result() {
        return new TraceResult(
                moved(),
                curve.now(),
                curve.endless(),
                End.valueOf(curve.low().name()),
                End.valueOf(curve.high().name()),
                points().mapToObj(this::point).toList(),
                points().boxed().flatMap(this::segment).toList(),
                RemarkLines.of(brief.remarks()),
                brief.title(),
                brief.currency(),
                brief.notes());
    }

    private IntStream points() {
        return IntStream.range(0, curve.points().size());
    }

    private TraceResult.Moved moved() {
        if (curve.of() instanceof Moved.Price price) {
            return new TraceResult.Price(
                    price.ingredient(),
                    price.supplier(),
                    "per kg as bought",
                    brief.set().ingredient(price.ingredient()).name(),
                    brief.offersFor(price.ingredient()).size() == 1);
        }
        var number = (Moved.BoundNumber) curve.of();
        return new TraceResult.BoundNumber(number.name(), number.path(), number.unit(), number.bent());
    }

    private TraceResult.Point point(int i) {
        var point = curve.points().get(i);
        return new TraceResult.Point(
                at(i),
                point.costPerKg(),
                kind(point.kind()),
                point.at(),
                curve.rounding(i),
                ShareLines.of(brief, point.blend()));
    }

    private static @Nullable Kind kind(Curve.Kind kind) {
        return kind == Curve.Kind.TURN ? null : Kind.valueOf(kind.name());
    }

    private BigDecimal at(int point) {
        return Decimal.significant(curve.points().get(point).at(), DIGITS, curve.rounding(point));
    }

    private Stream<TraceResult.Segment> segment(int from) {
        return curve.after(from).stream()
                .map(segment -> new TraceResult.Segment(
                        at(from),
                        segment.to() == null ? null : at(from + 1),
                        segment.slope(),
                        segment.bend(),
                        ShareLines.of(brief, segment.blend()),
                        from,
                        ShareLines.of(brief, segment.after()),
                        ShareLines.of(brief, segment.before())));
    }
}
