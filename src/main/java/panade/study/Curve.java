package panade.study;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;

/**
 * The least cost as one number moves, exact from end to end.
 *
 * @param brief the brief whose number moves
 * @param of what moves
 * @param points every place where the rate changes, and the ends, in rising order
 * @param segments what holds between one point and the next, in the same order
 * @param endless whether the last segment goes on for ever
 * @param now the number as it stands
 */
public record Curve(
        Brief brief, Moved of, List<Point> points, List<Segment> segments, boolean endless, BigFraction now) {

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

    /**
     * A place on the curve.
     *
     * @param blend a least-cost blend there
     */
    public record Point(BigFraction at, BigFraction costPerKg, Blend blend) {}

    /**
     * A stretch of the curve.
     *
     * @param to null when it goes on for ever
     * @param slope money per kilogram of batch for one unit of the number; at {@code from} where the curve bends
     * @param blend the blend along it; where a bound moves, the one at {@code from}
     */
    public record Segment(BigFraction from, @Nullable BigFraction to, BigFraction slope, Blend blend) {}
}
