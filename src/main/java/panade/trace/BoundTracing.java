package panade.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.plan.Planner;
import panade.trace.Curve.End;
import panade.trace.Curve.Moved;
import panade.trace.MovedBound.Stop;

/**
 * Follows the least cost as a bound's number moves either way until no blend is left or nothing changes any more. Each
 * breakpoint is solved afresh and certified; its one-sided rate and reach lead to the next.
 */
public final class BoundTracing {
    /**
     * More breakpoints than any curve that a person would read; beyond, the curve is told as far as it was followed.
     */
    private static final int MAX_BREAKPOINTS = 400;

    /** How far a curve is shown beyond a jump, as a part of the number. */
    private static final int TAIL = 10;

    private final MovedBound moved;
    private final @Nullable BigFraction from;
    private final @Nullable BigFraction to;
    private final List<Stop> stops = new ArrayList<>();

    private BoundTracing(MovedBound moved, @Nullable BigFraction from, @Nullable BigFraction to) {
        this.moved = moved;
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
        var moved = new MovedBound(planner, brief, bound, side);
        return moved.at(moved.limit().number()).map(start -> new BoundTracing(moved, from, to).curve(start));
    }

    private Curve curve(Stop start) {
        stops.add(start);
        var low = follow(start, false);
        var high = follow(start, true);
        stops.sort(Comparator.comparing(each -> each.at()));
        var stretches = Stretches.between(moved, stops);
        var limit = moved.limit();
        var of = new Moved.BoundNumber(
                moved.bound().name(), moved.bound().path(), limit.unit().symbol(), moved.isBent());
        return new Curve(moved.brief(), of, stretches.points(), stretches.segments(), low, high, limit.number());
    }

    private End follow(Stop start, boolean up) {
        var end = up ? to : from;
        var here = start;
        for (int i = 0; i < MAX_BREAKPOINTS; i++) {
            if (end != null && !lies(here.at(), end, up)) {
                return End.ASKED;
            }
            if (here.isBlocked(up)) {
                return End.NO_BLEND;
            }
            var next = next(here, end, up);
            var stop = next == null ? Optional.<Stop>empty() : moved.at(next);
            if (stop.isEmpty()) {
                return isStill(here, up) ? End.NOTHING_CHANGES : End.NOT_FOLLOWED;
            }
            stops.add(stop.get());
            if (end == null && here.jump(up) != null) {
                return End.NOTHING_CHANGES;
            }
            here = stop.get();
        }
        return End.NOT_FOLLOWED;
    }

    /** Whether one place comes before another on the way. */
    private static boolean lies(BigFraction here, BigFraction there, boolean up) {
        return up ? there.compareTo(here) > 0 : there.compareTo(here) < 0;
    }

    private static boolean isStill(Stop here, boolean up) {
        var rate = here.rate(up);
        return rate != null && rate.signum() == 0 && here.reach(up) == null;
    }

    /** Where to solve next; null where nothing leads on. */
    private static @Nullable BigFraction next(Stop here, @Nullable BigFraction end, boolean up) {
        if (here.jump(up) != null && end == null) {
            var size =
                    here.at().signum() == 0 ? BigFraction.ONE : here.at().abs().divide(TAIL);
            return up ? here.at().add(size) : here.at().subtract(size);
        }
        var reach = here.jump(up) != null ? null : here.reach(up);
        if (reach == null || !lies(here.at(), reach, up)) {
            return end;
        }
        return end == null || lies(reach, end, up) ? reach : end;
    }
}
