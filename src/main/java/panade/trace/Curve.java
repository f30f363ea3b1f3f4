package panade.trace;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;

/**
 * The least cost as one number moves, exact from end to end.
 *
 * @param brief the brief whose number moves
 * @param of what moves
 * @param points every place where the rate changes, and the ends, in rising order; where the cost jumps, two at one
 *     place
 * @param segments what holds between one place and the next, in the same order
 * @param low why it ends at the first point
 * @param high why it ends at the last point
 * @param now the number as it stands
 */
public record Curve(
        Brief brief, Moved of, List<Point> points, List<Segment> segments, End low, End high, BigFraction now) {

    /** What moves: a price per kilogram as bought, or a bound's number. */
    public sealed interface Moved {
        /** The price of one supplier's goods; all other prices stay. */
        record Price(String ingredient, String supplier) implements Moved {}

        /**
         * A bound's number.
         *
         * @param bent whether the cost bends between points: the number multiplies an amount in the batch
         */
        record BoundNumber(String name, String path, String unit, boolean bent) implements Moved {}
    }

    /** Why a curve ends. */
    public enum End {
        /** It was asked for up to there. */
        ASKED,
        /** No blend is left beyond. */
        NO_BLEND,
        /** Nothing changes beyond. */
        NOTHING_CHANGES,
        /** It goes on beyond, and was not followed. */
        NOT_FOLLOWED
    }

    /** What a point is. */
    public enum Kind {
        /** The rate may change here, or the curve ends. */
        TURN,
        /** On a bend, so that straight lines through the points stay close to it. */
        BETWEEN,
        /** What the cost jumps to as soon as the number is above. */
        JUST_ABOVE,
        /** What the cost jumps to as soon as the number is below. */
        JUST_BELOW
    }

    /**
     * A place on the curve.
     *
     * @param blend a least-cost blend there
     */
    public record Point(BigFraction at, BigFraction costPerKg, Blend blend, Kind kind) {}

    /**
     * A stretch of the curve: {@code k} beyond {@code from} the cost has risen by {@code slope k / (1 - bend k)}.
     *
     * @param to null when it goes on for ever
     * @param slope money per kilogram of batch for one unit of the number, at {@code from}
     * @param bend zero where the cost is linear
     * @param blend the blend along it; where a bound moves, the one at {@code from}
     * @param after a least-cost blend just beyond {@code from}
     * @param before a least-cost blend just before {@code to}
     */
    public record Segment(
            BigFraction from,
            @Nullable BigFraction to,
            BigFraction slope,
            BigFraction bend,
            Blend blend,
            Blend after,
            Blend before) {

        /** A stretch along which the blend stays. */
        static Segment still(BigFraction from, @Nullable BigFraction to, BigFraction slope, Blend blend) {
            return new Segment(from, to, slope, BigFraction.ZERO, blend, blend, blend);
        }

        /** Whether the cost bends along it: where it does not change it does not. */
        public boolean isBent() {
            return slope.signum() != 0 && bend.signum() != 0;
        }

        /** How much the cost has risen at a place of the stretch. */
        public BigFraction rise(BigFraction at) {
            var k = at.subtract(from);
            return slope.multiply(k).divide(BigFraction.ONE.subtract(bend.multiply(k)));
        }
    }

    /** Whether the last segment goes on for ever. */
    public boolean endless() {
        return !segments.isEmpty() && segments.get(segments.size() - 1).to() == null;
    }

    /**
     * How a point's place is rounded so that typing it gives the point's cost: away from a jump and from where no blend
     * is left.
     */
    public RoundingMode rounding(int point) {
        var kind = points.get(point).kind();
        boolean jumpsAbove = point + 1 < points.size() && points.get(point + 1).kind() == Kind.JUST_ABOVE;
        boolean jumpsBelow = point > 0 && points.get(point - 1).kind() == Kind.JUST_BELOW;
        if (kind == Kind.JUST_BELOW || (kind != Kind.JUST_ABOVE && jumpsAbove)) {
            return RoundingMode.FLOOR;
        }
        if (kind == Kind.JUST_ABOVE || jumpsBelow || (point == 0 && low == End.NO_BLEND)) {
            return RoundingMode.CEILING;
        }
        return point == points.size() - 1 && high == End.NO_BLEND ? RoundingMode.FLOOR : RoundingMode.HALF_EVEN;
    }

    /** What holds from a point on; empty at the last one, and before a jump. */
    public Optional<Segment> after(int point) {
        int count = 0;
        for (int i = 0; i < point; i++) {
            count += isPair(i) ? 0 : 1;
        }
        return isPair(point) || count >= segments.size() ? Optional.empty() : Optional.of(segments.get(count));
    }

    private boolean isPair(int point) {
        return point + 1 < points.size()
                && points.get(point).at().equals(points.get(point + 1).at());
    }
}
