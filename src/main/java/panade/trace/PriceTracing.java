package panade.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.sensitivity.Sensitivity;
import panade.compile.BriefCompiler;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.model.Unproved;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.trace.Curve.End;
import panade.trace.Curve.Kind;
import panade.trace.Curve.Moved;
import panade.trace.Curve.Point;
import panade.trace.Curve.Segment;

/** Follows the least cost as the price of one offer rises from one end to the other; all other offers stay. */
public final class PriceTracing {
    private final Planner planner;
    private final Brief brief;
    private final Offer offer;
    private final @Nullable BigFraction to;
    private final List<Point> points = new ArrayList<>();
    private final List<Segment> segments = new ArrayList<>();

    private PriceTracing(Planner planner, Brief brief, Offer offer, @Nullable BigFraction to) {
        this.planner = planner;
        this.brief = brief;
        this.offer = offer;
        this.to = to;
    }

    /**
     * The curve over the price of an ingredient's cheapest offer.
     *
     * @param from lowest price per kilogram
     * @param to highest price per kilogram; null for no end
     * @return empty when the brief has no blend
     */
    public static Optional<Curve> of(
            Planner planner, Brief brief, String ingredient, BigFraction from, @Nullable BigFraction to) {
        return of(planner, brief, cheapest(brief, ingredient), from, to);
    }

    /** The same over the price of one offer of the brief. */
    public static Optional<Curve> of(
            Planner planner, Brief brief, Offer offer, BigFraction from, @Nullable BigFraction to) {
        var moved = offer.withPrice(from);
        var start = brief.replacing(offer, moved);
        var study = new PriceTracing(planner, start, moved, to);
        return planner.answer(start).blended().map(blended -> study.curve(blended, from, offer.pricePerKg()));
    }

    /** The cheapest offer of an ingredient that can be bought; of equals the first in the lists. */
    public static Offer cheapest(Brief brief, String ingredient) {
        return brief.offersFor(ingredient).stream()
                .min(Comparator.comparing(Offer::pricePerKg))
                .orElseThrow();
    }

    private Curve curve(Blended first, BigFraction from, BigFraction now) {
        var compiled = BriefCompiler.compile(brief);
        var turns = new Sensitivity(first.proof()).raisingPriceForEver(compiled.boughtOf(offer, brief));
        var at = from;
        var blend = first.blend();
        points.add(point(from, blend));
        for (var turn : turns) {
            var next = from.add(turn.by());
            if (isBeyond(next)) {
                break;
            }
            at = step(at, next, blend);
            blend = Planner.measured(brief, Planner.blendAt(brief, compiled, turn.after()))
                    .orElseThrow();
        }
        if (to != null) {
            step(at, to, blend);
        } else {
            segments.add(Segment.still(at, null, amount(blend), blend));
        }
        var of = new Moved.Price(offer.ingredient(), offer.supplier());
        return new Curve(
                brief,
                of,
                List.copyOf(points),
                List.copyOf(segments),
                End.ASKED,
                to == null ? End.NOTHING_CHANGES : End.ASKED,
                now);
    }

    private boolean isBeyond(BigFraction price) {
        return to != null && price.compareTo(to) >= 0;
    }

    /** Adds the stretch up to the next price and the point there; a stretch of no length is left out. */
    private BigFraction step(BigFraction at, BigFraction next, Blend blend) {
        if (!next.equals(at)) {
            segments.add(Segment.still(at, next, amount(blend), blend));
            points.add(point(next, blend));
        }
        return next;
    }

    /** The point at a price, solved once more at that very price and agreeing to the last digit. */
    private Point point(BigFraction price, Blend blend) {
        var cost = costAt(price, blend);
        var again = planner.cheapest(brief.replacing(offer, offer.withPrice(price)))
                .orElseThrow()
                .costPerKg();
        if (!again.equals(cost)) {
            throw new Unproved("a point of the price curve could not be proved");
        }
        return new Point(price, cost, blend, Kind.TURN);
    }

    private BigFraction costAt(BigFraction price, Blend blend) {
        return blend.costPerKg().add(price.subtract(offer.pricePerKg()).multiply(amount(blend)));
    }

    /** Kilograms bought per kilogram of batch, which is how fast the cost rises with the price. */
    private BigFraction amount(Blend blend) {
        var used = blend.lines().stream()
                .filter(line -> line.offer().id().equals(offer.id()))
                .map(Blend.Line::share)
                .reduce(BigFraction.ZERO, BigFraction::add);
        return brief.asBought(offer.ingredient(), used);
    }
}
