package panade.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.ShadowPrice;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.study.Curve.Moved;
import panade.study.Curve.Point;
import panade.study.Curve.Segment;

/**
 * Follows the least cost as a bound's number moves either way until no blend is left or nothing changes any more. Each
 * breakpoint is solved afresh and certified; its one-sided rate and reach lead to the next.
 */
public final class BoundTracing {
    /**
     * More breakpoints than any curve that a person would read; beyond, the curve is told as far as it was followed.
     */
    private static final int MOST = 400;

    private final Planner planner;
    private final Brief brief;
    private final Bound bound;
    private final Side side;
    private final @Nullable BigFraction from;
    private final @Nullable BigFraction to;

    private BoundTracing(
            Planner planner,
            Brief brief,
            Bound bound,
            Side side,
            @Nullable BigFraction from,
            @Nullable BigFraction to) {
        this.planner = planner;
        this.brief = brief;
        this.bound = bound;
        this.side = side;
        this.from = from;
        this.to = to;
    }

    /**
     * The curve over a bound's number, in its own unit.
     *
     * @param from how far down to go; null for as far as there is a blend
     * @param to how far up to go; null for as far as there is a blend
     * @return empty when the brief has no blend as it stands
     */
    public static Optional<Curve> of(
            Planner planner,
            Brief brief,
            Bound bound,
            Side side,
            @Nullable BigFraction from,
            @Nullable BigFraction to) {
        var study = new BoundTracing(planner, brief, bound, side, from, to);
        return study.solved(study.number()).map(study::curve);
    }

    private Unit unit() {
        return limit().unit();
    }

    private Quantity limit() {
        var limit = side == Side.MIN ? bound.min() : bound.max();
        return Objects.requireNonNull(limit);
    }

    private BigFraction number() {
        return limit().number();
    }

    /** The best blend with another number. */
    private Optional<Blended> solved(BigFraction number) {
        var moved = Quantity.of(number, unit(), "moved");
        var changed = bound.withLimits(side == Side.MAX ? bound.min() : moved, side == Side.MIN ? bound.max() : moved);
        return planner.answer(brief.replacing(bound, changed)).blended();
    }

    private Curve curve(Blended start) {
        var below = stretches(start, false);
        Collections.reverse(below);
        var above = stretches(start, true);
        var points = new ArrayList<Point>();
        var segments = new ArrayList<Segment>();
        below.forEach(stretch -> points.add(stretch.end()));
        points.add(point(number(), start));
        above.forEach(stretch -> points.add(stretch.end()));
        for (int i = 0; i + 1 < points.size(); i++) {
            segments.add(segment(points.get(i), points.get(i + 1)));
        }
        var merged = merged(points, segments);
        var name = new Moved.BoundNumber(bound.name(), bound.path(), unit().symbol(), isBent());
        return new Curve(brief, name, merged.points(), merged.segments(), false, number());
    }

    private boolean isBent() {
        return bound.per() != null && !Bound.isAmount(limit());
    }

    private Segment segment(Point a, Point b) {
        var rise = b.costPerKg().subtract(a.costPerKg()).divide(b.at().subtract(a.at()));
        var rate = isBent() ? solved(a.at()).map(found -> rate(found, true)).orElse(rise) : rise;
        return new Segment(a.at(), b.at(), rate == null ? rise : rate, a.blend());
    }

    /** A step along the curve to its far end. */
    private record Stretch(Point end) {}

    private List<Stretch> stretches(Blended start, boolean up) {
        var stretches = new ArrayList<Stretch>();
        var at = number();
        var here = Optional.of(start);
        while (here.isPresent() && stretches.size() < MOST) {
            var next = next(here.get(), at, up);
            if (next.isEmpty()) {
                break;
            }
            here = solved(next.get());
            if (here.isPresent()) {
                stretches.add(new Stretch(point(next.get(), here.get())));
            }
            at = next.get();
        }
        return stretches;
    }

    private static Point point(BigFraction at, Blended blended) {
        return new Point(at, blended.blend().costPerKg(), blended.blend());
    }

    /**
     * Where the rate changes next; empty when it never does, no blend is left that way, or the end asked for is
     * reached.
     */
    private Optional<BigFraction> next(Blended here, BigFraction at, boolean up) {
        var end = up ? to : from;
        var reach = reach(here, up);
        if (end == null) {
            return reach.filter(found -> !found.equals(at));
        }
        int left = up ? end.subtract(at).signum() : at.subtract(end).signum();
        if (left <= 0) {
            return Optional.empty();
        }
        boolean beyond = reach.isEmpty()
                || (up
                                ? reach.get().subtract(end).signum()
                                : end.subtract(reach.get()).signum())
                        > 0;
        return beyond && rate(here, up) != null ? Optional.of(end) : reach.filter(found -> !found.equals(at));
    }

    private @Nullable BigFraction rate(Blended here, boolean up) {
        var price = price(here);
        if (price == null) {
            return BigFraction.ZERO;
        }
        return up ? price.whenRaised() : price.whenLowered();
    }

    private Optional<BigFraction> reach(Blended here, boolean up) {
        var price = price(here);
        if (price != null) {
            return Optional.ofNullable(up ? price.to() : price.from());
        }
        // idle: nothing changes until the number meets the blend
        boolean towards = side == Side.MIN ? up : !up;
        return towards ? Optional.ofNullable(read(here).value()) : Optional.empty();
    }

    /** The price of the number that moves; null while the blend does not touch that side. */
    private @Nullable ShadowPrice price(Blended here) {
        var limit = read(here);
        boolean other =
                (side == Side.MIN && limit.touch() == Side.MAX) || (side == Side.MAX && limit.touch() == Side.MIN);
        return other ? null : limit.price();
    }

    private Limit read(Blended here) {
        return here.explanation().limits().stream()
                .filter(limit ->
                        limit.path().equals(bound.path()) && limit.origin().equals(bound.origin()))
                .findFirst()
                .orElseThrow();
    }

    /** Points and segments without the ones at which nothing changes. */
    private record Merged(List<Point> points, List<Segment> segments) {}

    private Merged merged(List<Point> points, List<Segment> segments) {
        var keptPoints = new ArrayList<Point>(points.subList(0, 1));
        var keptSegments = new ArrayList<Segment>();
        for (int i = 0; i < segments.size(); i++) {
            var segment = segments.get(i);
            int last = keptSegments.size() - 1;
            boolean same =
                    last >= 0 && !isBent() && keptSegments.get(last).slope().equals(segment.slope());
            if (same) {
                var before = keptSegments.get(last);
                keptSegments.set(last, new Segment(before.from(), segment.to(), before.slope(), before.blend()));
                keptPoints.set(keptPoints.size() - 1, points.get(i + 1));
            } else {
                keptSegments.add(segment);
                keptPoints.add(points.get(i + 1));
            }
        }
        return new Merged(List.copyOf(keptPoints), List.copyOf(keptSegments));
    }
}
