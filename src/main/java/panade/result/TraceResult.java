package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * The least cost as one number moves, exact from end to end.
 *
 * @param of what moves
 * @param now the number as it stands
 * @param endless whether the last segment goes on for ever
 * @param low why the curve ends at its first point
 * @param high why it ends at its last point
 * @param points every place where the rate changes, and the ends, in rising order; where the cost jumps, two at one
 *     place
 * @param segments what holds between one place and the next, in the same order
 * @param remarks on the brief
 * @param title the product's
 * @param currency empty where none is stated
 * @param notes of the brief
 */
public record TraceResult(
        Moved of,
        BigFraction now,
        boolean endless,
        End low,
        End high,
        List<Point> points,
        List<Segment> segments,
        List<RemarkLine> remarks,
        @JsonIgnore String title,
        @JsonIgnore String currency,
        @JsonIgnore List<String> notes) {
    public TraceResult {
        points = List.copyOf(points);
        segments = List.copyOf(segments);
        remarks = List.copyOf(remarks);
        notes = List.copyOf(notes);
    }

    /** Names of all that is used anywhere along the curve, by id. */
    public Map<String, String> names() {
        return Stream.concat(
                        points.stream().map(Point::blend),
                        segments.stream().flatMap(each -> Stream.of(each.blend(), each.after(), each.before())))
                .flatMap(List::stream)
                .collect(Collectors.toMap(ShareLine::ingredient, ShareLine::name, (one, same) -> one));
    }

    /** What holds from a point on; empty at the last one, and before a jump. */
    public Optional<Segment> after(int point) {
        return segments.stream().filter(segment -> segment.point() == point).findFirst();
    }

    /** What moves. */
    public sealed interface Moved {}

    /**
     * The price of one supplier's goods; all other prices stay.
     *
     * @param price id of the ingredient
     * @param unit what the price is for, in words
     * @param name of the ingredient
     * @param onlyOffer whether nobody else offers it
     */
    public record Price(
            String price,
            String supplier,
            String unit,
            @JsonIgnore String name,
            @JsonIgnore boolean onlyOffer) implements Moved {}

    /**
     * A bound's number.
     *
     * @param bound its name
     * @param unit of the number; empty where it has none
     * @param bent whether the cost bends between points: the number multiplies an amount in the batch
     */
    public record BoundNumber(String bound, String path, String unit, boolean bent) implements Moved {}

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

    /** What a point is that is not plainly a place where the rate may change. */
    public enum Kind {
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
     * @param at the number, rounded so that typing it gives the point's cost
     * @param costPerKg the least cost there
     * @param kind null where the rate may change, or the curve ends
     * @param place the number, exact
     * @param rounding which way the number is rounded
     * @param blend a least-cost blend there
     */
    public record Point(
            BigDecimal at,
            BigFraction costPerKg,
            @JsonInclude(Include.NON_NULL) @Nullable Kind kind,
            @JsonIgnore BigFraction place,
            @JsonIgnore RoundingMode rounding,
            @JsonIgnore List<ShareLine> blend) {
        public Point {
            blend = List.copyOf(blend);
        }

        /** Whether the cost jumps to this point as soon as the number is past it. */
        public boolean isBesideJump() {
            return kind == Kind.JUST_ABOVE || kind == Kind.JUST_BELOW;
        }
    }

    /**
     * A stretch of the curve: {@code k} beyond {@code from} the cost has risen by {@code slope k / (1 - bend k)}.
     *
     * @param from the number at its first point
     * @param to the number at its last point, which is the next one; null when it goes on for ever
     * @param slope money per kilogram of batch for one unit of the number, at {@code from}
     * @param bend zero where the cost is linear
     * @param blend the blend along it; where a bound moves, the one at {@code from}
     * @param point index of its first point
     * @param after a least-cost blend just beyond {@code from}
     * @param before a least-cost blend just before {@code to}
     */
    public record Segment(
            BigDecimal from,
            @Nullable BigDecimal to,
            BigFraction slope,
            BigFraction bend,
            List<ShareLine> blend,
            @JsonIgnore int point,
            @JsonIgnore List<ShareLine> after,
            @JsonIgnore List<ShareLine> before) {
        public Segment {
            blend = List.copyOf(blend);
            after = List.copyOf(after);
            before = List.copyOf(before);
        }

        /** Whether the cost bends along it: where it does not change it does not. */
        public boolean isBent() {
            return slope.signum() != 0 && bend.signum() != 0;
        }
    }
}
