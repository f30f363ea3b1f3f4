package panade.reach;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.compile.BriefCompiler;
import panade.cost.LabelStudy;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.domain.purchase.Shelf;
import panade.explain.Room.PropertyRoom;
import panade.explain.RoomReader;
import panade.explain.conflict.CostCeiling;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.reach.Target.PriceMove;
import panade.solver.Deadline;

/** Finds out whether a price can be reached and what must give. */
public final class Reaching {
    /** How long bounds are moved in search of what is enough; what is open then is told. */
    private static final Duration TIME = Duration.ofSeconds(30);

    private final Planner planner;
    private final Blended best;
    private final Brief brief;
    private final BigFraction target;

    private Reaching(Planner planner, Blended best, BigFraction target) {
        this.planner = planner;
        this.best = best;
        this.brief = best.brief();
        this.target = target;
    }

    /**
     * The study of a target.
     *
     * @param best the cheapest blend of the brief
     * @param targetPerKg the price hoped for
     * @param shelf how it was worked back; null when it was stated
     */
    public static Target of(Planner planner, Blended best, BigFraction targetPerKg, @Nullable ShelfTarget shelf) {
        var study = new Reaching(planner, best, targetPerKg);
        boolean met = best.blend().costPerKg().compareTo(targetPerKg) <= 0;
        return met ? study.met(shelf) : study.missed(shelf);
    }

    private Target met(@Nullable ShelfTarget shelf) {
        return new Target(best, target, shelf, List.of(), List.of(), List.of(), null, Map.of(), atTarget(), List.of());
    }

    private List<PropertyRoom> atTarget() {
        var least = best.blend().costPerKg();
        if (least.signum() == 0) {
            return List.of();
        }
        var slack = target.divide(least).subtract(BigFraction.ONE);
        return RoomReader.properties(brief, BriefCompiler.compile(brief), best.blend(), best.proof(), slack);
    }

    private Target missed(@Nullable ShelfTarget shelf) {
        var trials = planner.trials(Deadline.in(TIME));
        var ceiling = new CostCeiling(best.asked(), best.blend(), target, trials);
        var prices = best.blend().lines().stream()
                .map(line -> line.offer())
                .distinct()
                .map(this::price)
                .toList();
        var batch = shelf == null ? null : batch().orElse(null);
        var moves = ceiling.moves();
        var pair = ceiling.cheapestPair();
        return new Target(
                best,
                target,
                shelf,
                moves,
                prices,
                pair,
                batch,
                LabelStudy.ofMoves(planner, best, moves),
                List.of(),
                ceiling.open());
    }

    /** A batch large enough, solved at that size: a larger one may meet other limits of what can be had. */
    private Optional<Quantity> batch() {
        var shelf = Objects.requireNonNull(brief.practice().shelf());
        return ShelfTarget.batchFor(brief, shelf, best.blend().costPerKg())
                .map(this::inWholeUnits)
                .filter(size -> fits(brief.withBatch(size), shelf));
    }

    private Quantity inWholeUnits(BigFraction kilograms) {
        var unit = brief.batch().unit();
        var number = unit.fromBase(kilograms);
        var whole = new BigDecimal(number.getNumerator())
                .divide(new BigDecimal(number.getDenominator()), 0, RoundingMode.CEILING);
        return Quantity.of(Decimal.of(whole), unit, whole.toPlainString() + " " + unit.symbol());
    }

    private boolean fits(Brief larger, Shelf shelf) {
        var left = ShelfTarget.of(larger, shelf).perKg();
        return planner.cheapest(larger)
                .orUndecided()
                .filter(blend -> blend.costPerKg().compareTo(left) <= 0)
                .isPresent();
    }

    /**
     * The highest price that is low enough. The least cost is concave in a price, so Newton's steps from nothing upward
     * never pass it and end after as many steps as the curve has pieces.
     */
    private PriceMove price(Offer offer) {
        var price = BigFraction.ZERO;
        var blend = planner.cheapest(at(offer, price)).orElseThrow();
        if (blend.costPerKg().compareTo(target) > 0) {
            return new PriceMove(offer.ingredient(), offer.supplier(), offer.pricePerKg(), null, blend.costPerKg());
        }
        while (!blend.costPerKg().equals(target)) {
            var spare = target.subtract(blend.costPerKg());
            price = price.add(spare.divide(bought(offer, blend)));
            blend = planner.cheapest(at(offer, price)).orElseThrow();
        }
        return new PriceMove(offer.ingredient(), offer.supplier(), offer.pricePerKg(), price, target);
    }

    /** Kilograms bought under an offer per kilogram of batch. */
    private BigFraction bought(Offer offer, Blend blend) {
        var used = blend.lines().stream()
                .filter(line -> line.offer().id().equals(offer.id()))
                .map(line -> line.share())
                .reduce(BigFraction.ZERO, BigFraction::add);
        return brief.asBought(offer.ingredient(), used);
    }

    private Brief at(Offer offer, BigFraction price) {
        return brief.replacing(offer, offer.withPrice(price));
    }
}
