package panade.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.certify.sensitivity.Sensitivity;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.RowId;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.BoundId;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.domain.purchase.Offer;
import panade.explain.Explanation.Binding;
import panade.explain.Explanation.Clearance;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.ShadowPrice;
import panade.explain.Explanation.SideReading;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Reads every bound off a blend, with the price of the side it touches. */
final class LimitReader {
    private final Brief brief;
    private final CompiledBrief compiled;
    private final Audit audit;
    private final NumberPrice prices;
    private final List<BigFraction> multipliers;

    LimitReader(
            Brief brief,
            CompiledBrief compiled,
            Blend blend,
            Sensitivity sensitivity,
            List<BigFraction> multipliers,
            BooleanSupplier unique) {
        this.multipliers = multipliers;
        this.brief = brief;
        this.compiled = compiled;
        this.audit = new Audit(brief, blend);
        this.prices = new NumberPrice(brief, compiled, blend, sensitivity, unique);
    }

    List<Limit> limits() {
        var limits = new ArrayList<Limit>();
        brief.bounds().forEach(bound -> limits.add(read(bound)));
        brief.offers().stream().filter(offer -> offer.available() != null).forEach(offer -> limits.add(read(offer)));
        return limits;
    }

    /** What the blend touches, without prices. */
    List<Binding> bindings() {
        var bindings = new ArrayList<Binding>();
        for (var bound : brief.bounds()) {
            var touch = touch(bound);
            if (touch != null) {
                bindings.add(new Binding(bound.kind(), bound.id(), bound.title(), touch));
            }
        }
        brief.offers().stream()
                .filter(offer -> offer.available() != null && touches(offer))
                .forEach(offer -> bindings.add(new Binding(LimitKind.AVAILABILITY, id(offer), title(offer), Side.MAX)));
        return bindings;
    }

    private boolean touches(Offer offer) {
        return weight(offer).equals(Objects.requireNonNull(offer.available()).base());
    }

    private BigFraction weight(Offer offer) {
        return audit.bought(offer).multiply(brief.batch().base());
    }

    private String title(Offer offer) {
        return brief.set().ingredient(offer.ingredient()).name() + ", all that " + offer.supplier() + " has";
    }

    private static BoundId id(Offer offer) {
        return BoundId.of(
                LimitKind.AVAILABILITY,
                offer.origin(),
                offer.origin().pointer(),
                BriefCompiler.availabilityName(offer));
    }

    private Limit read(Bound bound) {
        var touch = touch(bound);
        var unit = bound.unit();
        var value = audit.value(bound);
        return new Limit(
                bound.kind(),
                bound.name(),
                bound.title(),
                bound.path(),
                unit,
                value.orElse(null),
                number(bound, bound.min()),
                number(bound, bound.max()),
                touch,
                touch != null ? price(bound, touch) : value.isEmpty() ? priceOfNothing(bound) : null,
                clearance(bound, value.isPresent()),
                bound.origin());
    }

    private @Nullable Clearance clearance(Bound bound, boolean measured) {
        var sure = bound.sure();
        if (sure == null || !measured) {
            return null;
        }
        var unit = bound.unit();
        var one = unit.dimension() == Dimension.MASS
                ? perUnit(unit)
                : unit.factor().multiply(audit.base(bound));
        return new Clearance(sure, audit.variance(bound).divide(one.multiply(one)));
    }

    private Limit read(Offer offer) {
        var available = Objects.requireNonNull(offer.available());
        var unit = available.unit();
        boolean touches = touches(offer);
        int row = compiled.rowOf(new RowId.OfOffer(offer.id()));
        return new Limit(
                LimitKind.AVAILABILITY,
                BriefCompiler.availabilityName(offer),
                title(offer),
                offer.origin().pointer(),
                unit,
                unit.fromBase(weight(offer)),
                null,
                available.number(),
                touches ? Side.MAX : null,
                touches ? prices.plain(new NumberPrice.Row(row, available.number(), perUnit(unit))) : null,
                null,
                offer.origin());
    }

    /** How a bound's number stands, whether or not the blend touches it, in that number's own unit. */
    SideReading number(Bound bound, Side side) {
        var unit = limit(bound, side).unit();
        if (side != Side.FIXED && bound.isFixed(brief.batch())) {
            var loosened = price(bound, Side.FIXED, unit).loosening(side == Side.MIN);
            return new SideReading(audit.value(bound, unit).orElse(null), loosened);
        }
        boolean bears = measuresNothing(bound, limit(bound, side))
                || side == Side.FIXED
                || touches(bound, limit(bound, side), side == Side.MIN);
        return new SideReading(audit.value(bound, unit).orElse(null), bears ? price(bound, side, unit) : null);
    }

    private @Nullable Side touch(Bound bound) {
        if (bound.isFixed(brief.batch())) {
            return measuresNothing(bound, limit(bound, Side.FIXED)) ? null : Side.FIXED;
        }
        if (touches(bound, bound.min(), true)) {
            return Side.MIN;
        }
        return touches(bound, bound.max(), false) ? Side.MAX : null;
    }

    private boolean touches(Bound bound, @Nullable Quantity limit, boolean isMin) {
        if (limit == null || measuresNothing(bound, limit)) {
            return false;
        }
        // what is to be sure keeps away from its number: it holds the blend back where that has a price
        return bound.sure() == null
                ? audit.slack(bound, limit, isMin).signum() == 0
                : multipliers.get(rowOf(bound, isMin ? Side.MIN : Side.MAX)).signum() != 0;
    }

    /** Whether a limit is a ratio to something of which the blend has none. */
    private boolean measuresNothing(Bound bound, Quantity limit) {
        return bound.per() != null
                && !Bound.isAmount(limit)
                && audit.amount(bound.per()).signum() == 0;
    }

    /** The price of a number that measures nothing; null where nothing comes of moving it. */
    private @Nullable ShadowPrice priceOfNothing(Bound bound) {
        var sides = bound.isFixed(brief.batch())
                ? List.of(Side.FIXED)
                : Stream.of(Side.MIN, Side.MAX)
                        .filter(side -> (side == Side.MIN ? bound.min() : bound.max()) != null)
                        .toList();
        return sides.stream()
                .map(side -> price(bound, side))
                .filter(price -> sides.size() == 1 || !price.isIdle())
                .findFirst()
                .orElse(null);
    }

    private int rowOf(Bound bound, Side side) {
        return compiled.rowOf(new RowId.OfBound(bound.id(), side));
    }

    private @Nullable BigFraction number(Bound bound, @Nullable Quantity limit) {
        return limit == null ? null : audit.number(bound, limit).orElse(null);
    }

    /**
     * How far a limit moves as its number does by one of a unit. A weight beside a share, or the other way round, is
     * told as what it comes to in this blend.
     */
    private BigFraction perUnit(Bound bound, Quantity limit, Unit unit) {
        boolean mass = unit.dimension() == Dimension.MASS;
        var perUnit = mass ? perUnit(unit) : unit.factor();
        var base = audit.base(bound);
        if (mass == Bound.isAmount(limit) || base.signum() == 0) {
            return perUnit;
        }
        return mass ? perUnit.divide(base) : perUnit.multiply(base);
    }

    private BigFraction perUnit(Unit massUnit) {
        return massUnit.factor().divide(brief.batch().base());
    }

    private ShadowPrice price(Bound bound, Side side) {
        return price(bound, side, bound.unit());
    }

    private ShadowPrice price(Bound bound, Side side, Unit unit) {
        var limit = limit(bound, side);
        var perUnit = perUnit(bound, limit, unit);
        var number = Bound.level(limit, brief.batch()).divide(perUnit);
        var row = new NumberPrice.Row(rowOf(bound, side), number, perUnit);
        var per = bound.per();
        return per == null || Bound.isAmount(limit) ? prices.plain(row) : prices.ratio(row, per, side);
    }

    private static Quantity limit(Bound bound, Side side) {
        return Objects.requireNonNull(side == Side.MIN ? bound.min() : bound.max());
    }
}
