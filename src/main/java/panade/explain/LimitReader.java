package panade.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.certify.Sensitivity;
import panade.certify.Sensitivity.Rate;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Offer;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.ShadowPrice;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Reads every bound off a blend, with the price of the side it touches. */
final class LimitReader {
    private final Brief brief;
    private final CompiledBrief compiled;
    private final Audit audit;
    private final Sensitivity sensitivity;
    private final boolean unique;
    private final Optional<PerCooked> perCooked;

    LimitReader(Brief brief, CompiledBrief compiled, Blend blend, Sensitivity sensitivity, boolean unique) {
        this.perCooked = PerCooked.of(brief, compiled, blend);
        this.brief = brief;
        this.compiled = compiled;
        this.audit = new Audit(brief, blend);
        this.sensitivity = sensitivity;
        this.unique = unique;
    }

    List<Limit> limits() {
        var limits = new ArrayList<Limit>();
        brief.bounds().forEach(bound -> limits.add(read(bound)));
        brief.offers().stream().filter(offer -> offer.available() != null).forEach(offer -> limits.add(read(offer)));
        return limits;
    }

    private Limit read(Bound bound) {
        var touch = touch(bound);
        var unit = bound.unit();
        return new Limit(
                bound.kind(),
                bound.name(),
                bound.title(),
                bound.path(),
                unit,
                audit.value(bound).orElse(null),
                number(bound, bound.min()),
                number(bound, bound.max()),
                touch,
                touch == null ? null : price(bound, touch),
                bound.origin());
    }

    private Limit read(Offer offer) {
        var available = Objects.requireNonNull(offer.available());
        var unit = available.unit();
        var bought = audit.bought(offer).multiply(brief.batch().base());
        boolean touches = bought.equals(available.base());
        int row = compiled.rows().indexOf(new CompiledBrief.Limit.OfOffer(offer));
        return new Limit(
                LimitKind.AVAILABILITY,
                BriefCompiler.availabilityName(offer),
                brief.set().ingredient(offer.ingredient()).name() + ", all that " + offer.supplier() + " has",
                offer.origin().pointer(),
                unit,
                unit.fromBase(bought),
                null,
                available.number(),
                touches ? Side.MAX : null,
                touches ? price(row, available.number(), perUnit(unit), Optional.empty()) : null,
                offer.origin());
    }

    private @Nullable Side touch(Bound bound) {
        if (bound.isFixed(brief.batch())) {
            return Side.FIXED;
        }
        if (touches(bound, bound.min(), true)) {
            return Side.MIN;
        }
        return touches(bound, bound.max(), false) ? Side.MAX : null;
    }

    private boolean touches(Bound bound, @Nullable Quantity limit, boolean isMin) {
        return limit != null && audit.slack(bound, limit, isMin).signum() == 0;
    }

    private int rowOf(Bound bound, Side side) {
        return compiled.rows().indexOf(new CompiledBrief.Limit.OfBound(bound, side));
    }

    private @Nullable BigFraction number(Bound bound, @Nullable Quantity limit) {
        return limit == null ? null : audit.number(bound, limit).orElse(null);
    }

    /**
     * How far a limit moves as its number does by one of the bound's own unit. A weight beside a share, or the other
     * way round, is told as what it comes to in this blend.
     */
    private BigFraction perUnit(Bound bound, Quantity limit) {
        var unit = bound.unit();
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

    private ShadowPrice price(Bound bound, Side touch) {
        var limit = Objects.requireNonNull(touch == Side.MIN ? bound.min() : bound.max());
        int row = rowOf(bound, touch);
        var perUnit = perUnit(bound, limit);
        var number = Bound.level(limit, brief.batch()).divide(perUnit);
        boolean ratio = bound.per() != null && !Bound.isAmount(limit);
        return price(row, number, perUnit, ratio ? Optional.of(bound) : Optional.empty());
    }

    /** The two rates of a row whose right side moves by {@code perUnit} with each unit of its number. */
    private ShadowPrice price(int row, BigFraction number, BigFraction perUnit, Optional<Bound> ratio) {
        var raised = sensitivity.raising(row);
        var lowered = sensitivity.lowering(row);
        return new ShadowPrice(
                raised.flatMap(rate -> perNumber(rate, perUnit, ratio)).orElse(null),
                lowered.flatMap(rate -> perNumber(rate, perUnit, ratio)).orElse(null),
                end(row, number, perUnit.negate(), lowered, ratio),
                end(row, number, perUnit, raised, ratio));
    }

    private @Nullable BigFraction end(
            int row, BigFraction number, BigFraction perUnit, Optional<Rate> rate, Optional<Bound> ratio) {
        if (perCooked.isPresent()) {
            // the cost taken off each cooked kilogram moves along, so that a reach would not be exact
            return null;
        }
        return ratio.isPresent() ? ratioEnd(ratio.get(), row, number, perUnit, rate) : end(number, rate, perUnit);
    }

    private @Nullable BigFraction ratioEnd(
            Bound bound, int row, BigFraction number, BigFraction perUnit, Optional<Rate> rate) {
        var form = BriefCompiler.form(compiled, brief, Objects.requireNonNull(bound.per()));
        return rate.flatMap(known -> sensitivity.ratioReach(row, form, perUnit.signum() > 0))
                .map(reach -> number.add(reach.divide(perUnit)))
                .orElse(null);
    }

    /** Empty where the gain or loss would be shared by a blend that cooks away to nothing. */
    private Optional<BigFraction> perNumber(Rate rate, BigFraction perUnit, Optional<Bound> ratio) {
        if (rate.rate().signum() == 0) {
            return Optional.of(BigFraction.ZERO);
        }
        var weight = weight(rate);
        if (weight.signum() == 0) {
            return Optional.empty();
        }
        var perLevel = rate.rate().multiply(perUnit).divide(weight);
        return Optional.of(
                ratio.map(bound -> perLevel.multiply(lever(bound, rate))).orElse(perLevel));
    }

    /**
     * The weight that a gain or loss is shared by; among blends that cost the same, the one that serves the move best.
     */
    private BigFraction weight(Rate rate) {
        return perCooked
                .map(cooked -> unique
                        ? cooked.weight()
                        : sensitivity.extreme(cooked.form(), rate.rate().signum() > 0))
                .orElse(BigFraction.ONE);
    }

    /**
     * The amount that a ratio's number multiplies. Where several blends cost the same, the move picks the one that
     * serves it best (envelope theorem for saddle points: the least over blends of the most over multipliers).
     */
    private BigFraction lever(Bound bound, Rate rate) {
        var per = Objects.requireNonNull(bound.per());
        return unique || rate.rate().signum() == 0
                ? audit.amount(per)
                : sensitivity.extreme(
                        BriefCompiler.form(compiled, brief, per), rate.rate().signum() < 0);
    }

    private static @Nullable BigFraction end(BigFraction number, Optional<Rate> rate, BigFraction perUnit) {
        return rate.map(Rate::reach)
                .map(reach -> number.add(reach.divide(perUnit)))
                .orElse(null);
    }
}
