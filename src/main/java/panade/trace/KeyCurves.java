package panade.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Side;
import panade.domain.purchase.Offer;
import panade.explain.Explanation.Limit;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;

/**
 * Curves over the numbers that matter most to one blend: the price of what takes most of the money, and the bounds that
 * hold the cost up most. With rules, the choice of ingredients is kept along each curve.
 */
public final class KeyCurves {
    private static final int BOUNDS = 2;

    /** How far a bound's number is moved either way, as a part of itself. */
    private static final BigFraction REACH = BigFraction.of(1, 5);

    private final Planner planner;
    private final Blended best;

    /** Curves around a blend. */
    public KeyCurves(Planner planner, Blended best) {
        this.planner = planner;
        this.best = best;
    }

    /** The curves worth showing when nobody asks for others. */
    public List<Curve> usual() {
        var dearest = dearestIngredient().stream().flatMap(id -> price(id).stream());
        var bounds = dearestBounds().stream().flatMap(bound -> bound(bound).stream());
        return Stream.concat(dearest, bounds).toList();
    }

    /** The curve from half to twice the price of an ingredient; empty when there is none. */
    public Optional<Curve> price(String ingredient) {
        var now = best.brief().offersFor(ingredient).stream()
                .map(Offer::pricePerKg)
                .min(Comparator.naturalOrder());
        return now.filter(price -> price.signum() > 0)
                .flatMap(
                        price -> PriceTracing.of(planner, best.brief(), ingredient, price.divide(2), price.multiply(2)))
                .filter(curve -> curve.points().size() > 1);
    }

    /** The curve around a bound's number; of two numbers the one that the blend touches, or else the floor. */
    public Optional<Curve> bound(Bound bound) {
        var side = side(bound);
        var limit = Objects.requireNonNull(side == Side.MIN ? bound.min() : bound.max());
        var reach = limit.number().abs().multiply(REACH);
        boolean everywhere = reach.signum() == 0;
        return BoundTracing.of(
                        planner,
                        best.brief(),
                        bound,
                        side,
                        everywhere ? null : limit.number().subtract(reach),
                        everywhere ? null : limit.number().add(reach))
                .filter(curve -> curve.points().size() > 1);
    }

    private Side side(Bound bound) {
        if (bound.min() == null || bound.max() == null) {
            return bound.min() == null ? Side.MAX : Side.MIN;
        }
        if (bound.isFixed(best.brief().batch())) {
            return Side.FIXED;
        }
        boolean atMost =
                best.explanation().bindings().stream().anyMatch(limit -> limit.side() == Side.MAX && limit.isOf(bound));
        return atMost ? Side.MAX : Side.MIN;
    }

    private Optional<String> dearestIngredient() {
        return best.blend().lines().stream()
                .map(line -> line.use().ingredient())
                .distinct()
                .max(Comparator.comparing(this::cost));
    }

    private BigFraction cost(String ingredient) {
        return best.blend().lines().stream()
                .filter(line -> line.use().ingredient().equals(ingredient))
                .map(Blend.Line::costPerKg)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    private List<Bound> dearestBounds() {
        var dearest = new ArrayList<Bound>();
        best.explanation().limits().stream()
                .filter(limit -> weight(limit).signum() > 0)
                .sorted((a, b) -> weight(b).compareTo(weight(a)))
                .forEach(limit ->
                        best.brief().bounds().stream().filter(limit::isOf).forEach(dearest::add));
        return dearest.stream().limit(BOUNDS).toList();
    }

    /** What a bound's whole number is worth at its rate, so that bounds in different units can be set side by side. */
    private static BigFraction weight(Limit limit) {
        var number = limit.touch() == Side.MIN ? limit.min() : limit.max();
        var price = limit.price();
        if (number == null || price == null) {
            return BigFraction.ZERO;
        }
        var raised = price.whenRaised();
        var lowered = price.whenLowered();
        var rate = raised == null ? lowered : raised;
        return rate == null ? BigFraction.ZERO : rate.multiply(number).abs();
    }
}
