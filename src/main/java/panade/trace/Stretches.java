package panade.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.model.Unproved;
import panade.trace.Curve.Kind;
import panade.trace.Curve.Point;
import panade.trace.Curve.Segment;
import panade.trace.MovedBound.Stop;

/**
 * Joins proved places of a curve by stretches. What a stretch says of its middle is compared with a solve of its own;
 * where that disagrees, places where the rate changes were missed between, and the middle leads to them.
 */
final class Stretches {
    private static final int DEPTH = 8;

    /** Straight lines through the points are off by less than this part of the cost. */
    private static final int CLOSE = 2000;

    private final MovedBound moved;
    private final List<Point> points = new ArrayList<>();
    private final List<Segment> segments = new ArrayList<>();

    private Stretches(MovedBound moved) {
        this.moved = moved;
    }

    /** The stretches between places in rising order. */
    static Stretches between(MovedBound moved, List<Stop> stops) {
        var stretches = new Stretches(moved);
        stretches.points.add(point(stops.get(0), Kind.TURN));
        for (int i = 0; i + 1 < stops.size(); i++) {
            stretches.join(stops.get(i), stops.get(i + 1), Kind.TURN, 0);
        }
        return stretches;
    }

    List<Point> points() {
        return List.copyOf(points);
    }

    List<Segment> segments() {
        return List.copyOf(segments);
    }

    private static Point point(Stop stop, Kind kind) {
        return new Point(stop.at(), stop.cost(), stop.blend(), kind);
    }

    private void join(Stop a, Stop b, Kind end, int depth) {
        if (depth > DEPTH) {
            throw new Unproved("a stretch of the curve over " + moved.bound().name() + " was not proved");
        }
        var middle = moved.at(a.at().add(b.at()).divide(2)).orElseThrow();
        var segment = segment(a, b, middle.blend());
        if (segment == null
                || !a.costBeyond(true).add(segment.rise(middle.at())).equals(middle.cost())) {
            joinThrough(a, middle, b, end, depth);
        } else if (depth < DEPTH && isFar(a, middle, b)) {
            join(a, middle, Kind.BETWEEN, depth + 1);
            join(middle, b, end, depth + 1);
        } else {
            add(a, segment, b, end);
        }
    }

    private static boolean isFar(Stop a, Stop middle, Stop b) {
        var chord = a.costBeyond(true).add(b.costBeyond(false)).divide(2);
        var off = chord.subtract(middle.cost()).abs();
        return off.multiply(CLOSE).compareTo(middle.cost().abs()) > 0;
    }

    /** What holds between two places if nothing turns there; null when their rates and costs do not fit together. */
    private @Nullable Segment segment(Stop a, Stop b, Blend middle) {
        var slope = a.jump(true) != null ? BigFraction.ZERO : a.rate(true);
        var k = b.at().subtract(a.at());
        var rise = b.costBeyond(false).subtract(a.costBeyond(true));
        if (slope == null) {
            return null;
        }
        var straight = slope.multiply(k);
        var start = a.jump(true) == null ? a.blend() : middle;
        if (straight.equals(rise)) {
            return new Segment(a.at(), b.at(), slope, BigFraction.ZERO, start, middle, middle);
        }
        if (!moved.isBent() || slope.signum() == 0 || rise.signum() == 0) {
            return null;
        }
        var bend = BigFraction.ONE.subtract(straight.divide(rise)).divide(k);
        return new Segment(a.at(), b.at(), slope, bend, start, middle, middle);
    }

    private void joinThrough(Stop a, Stop middle, Stop b, Kind end, int depth) {
        var cuts = new TreeSet<BigFraction>();
        Stream.of(middle.at(), middle.reach(false), middle.reach(true))
                .filter(Objects::nonNull)
                .filter(cut -> cut.compareTo(a.at()) > 0 && b.at().compareTo(cut) > 0)
                .forEach(cuts::add);
        var last = a;
        for (var cut : cuts) {
            var stop = cut.equals(middle.at()) ? middle : moved.at(cut).orElseThrow();
            join(last, stop, Kind.TURN, depth + 1);
            last = stop;
        }
        join(last, b, end, depth + 1);
    }

    private void add(Stop a, Segment segment, Stop b, Kind end) {
        if (a.jump(true) != null) {
            points.add(new Point(a.at(), a.costBeyond(true), segment.blend(), Kind.JUST_ABOVE));
        }
        if (!merges(a, segment)) {
            segments.add(segment);
        } else {
            var before = segments.remove(segments.size() - 1);
            segments.add(new Segment(
                    before.from(),
                    segment.to(),
                    before.slope(),
                    BigFraction.ZERO,
                    before.blend(),
                    before.after(),
                    segment.before()));
            points.remove(points.size() - 1);
        }
        if (b.jump(false) != null) {
            points.add(new Point(b.at(), b.costBeyond(false), segment.before(), Kind.JUST_BELOW));
        }
        points.add(point(b, end));
    }

    /**
     * Whether nothing changes where a stretch begins: both are straight and of one slope, and the cost does not jump.
     */
    private boolean merges(Stop a, Segment segment) {
        if (segments.isEmpty() || a.jump(true) != null || a.jump(false) != null) {
            return false;
        }
        var before = segments.get(segments.size() - 1);
        return before.bend().signum() == 0
                && segment.bend().signum() == 0
                && before.slope().equals(segment.slope());
    }
}
