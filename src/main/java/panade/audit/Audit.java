package panade.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Sureness.Estimated;
import panade.domain.purchase.Offer;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * Measures a blend against a brief line by line, as a cook with a scale would, from the brief and the ingredients' own
 * values alone, and says what it breaks.
 */
public final class Audit {
    /**
     * A number that is off by less than this part of it counts as kept where a formula is looked at: no scale shows it,
     * and the weights of a past result are rounded.
     */
    private static final int FINEST = 1_000_000_000;

    private final Brief brief;
    private final Blend blend;
    private final Ledger ledger;

    /** The audit of a blend against a brief. */
    public Audit(Brief brief, Blend blend) {
        this.brief = brief;
        this.blend = blend;
        this.ledger = new Ledger(brief, blend);
    }

    /** How much there is of a measure in a kilogram of batch, in base units. */
    public BigFraction amount(Measure measure) {
        return ledger.of(measure);
    }

    /** A bound's value in its own unit; empty where it is nothing over nothing. */
    public Optional<BigFraction> value(Bound bound) {
        return value(bound, bound.unit());
    }

    /** The same in the unit of one of its numbers. */
    public Optional<BigFraction> value(Bound bound, Unit unit) {
        var amount = of(bound);
        if (unit.dimension() == Dimension.MASS) {
            return Optional.of(unit.fromBase(amount.multiply(brief.batch().base())));
        }
        var base = base(bound);
        return base.signum() == 0 ? Optional.empty() : Optional.of(unit.fromBase(amount.divide(base)));
    }

    /**
     * A limit in its bound's own unit. A weight beside a share of something else than the batch, or the other way
     * round, is told as what it comes to in this blend; empty where that something is not in it.
     */
    public Optional<BigFraction> number(Bound bound, Quantity limit) {
        var unit = bound.unit();
        if (Bound.isAmount(limit) == (unit.dimension() == Dimension.MASS)) {
            return Optional.of(unit.fromBase(limit.base()));
        }
        var allowed = allowed(bound, limit);
        if (unit.dimension() == Dimension.MASS) {
            return Optional.of(unit.fromBase(allowed.multiply(brief.batch().base())));
        }
        var base = base(bound);
        return base.signum() == 0 ? Optional.empty() : Optional.of(unit.fromBase(allowed.divide(base)));
    }

    /**
     * How far a limit is from being broken, in a kilogram of batch and base units: zero when it binds, negative when it
     * is broken.
     */
    public BigFraction slack(Bound bound, Quantity limit, boolean isMin) {
        var amount = of(bound);
        var allowed = allowed(bound, limit);
        return isMin ? amount.subtract(allowed) : allowed.subtract(amount);
    }

    /** Whether a bound is kept, or missed by so little that no scale shows it. */
    public boolean isKept(Bound bound) {
        return isKept(bound, bound.min(), true) && isKept(bound, bound.max(), false);
    }

    private boolean isKept(Bound bound, @Nullable Quantity limit, boolean isMin) {
        return limit == null || slack(bound, limit, isMin).signum() >= 0 || isAt(bound, limit);
    }

    private boolean isAt(Bound bound, Quantity limit) {
        return value(bound)
                .flatMap(value -> number(bound, limit).map(number -> isAsGoodAs(value, number)))
                .orElse(false);
    }

    /** Whether two numbers differ by no more than a billionth of the second. */
    public static boolean isAsGoodAs(BigFraction value, BigFraction number) {
        return value.subtract(number).abs().multiply(FINEST).compareTo(number.abs()) <= 0;
    }

    /** Whether all that a bound needs of what is in the blend is known. */
    public boolean isKnown(Bound bound) {
        var per = bound.per();
        return blend.lines().stream()
                .map(Blend.Line::use)
                .allMatch(use -> bound.of().isKnown(use, brief.composition())
                        && (per == null || per.isKnown(use, brief.composition())));
    }

    private BigFraction allowed(Bound bound, Quantity limit) {
        if (Bound.isAmount(limit)) {
            return limit.base().divide(brief.batch().base());
        }
        return limit.base().multiply(base(bound));
    }

    /** What a bound counts; of the cooked batch, as it was written. */
    private BigFraction of(Bound bound) {
        var written = bound.written();
        return written == null ? ledger.of(bound.of()) : ledger.cooked(written.of());
    }

    /** How much there is of what a bound is relative to: the whole batch, raw or cooked, where nothing else is. */
    public BigFraction base(Bound bound) {
        var written = bound.written();
        if (written != null) {
            return written.per() == null ? ledger.cookedWhole() : ledger.cooked(written.per());
        }
        return bound.per() == null ? BigFraction.ONE : ledger.of(bound.per());
    }

    /** Share of the batch's weight bought under an offer, before trimming. */
    public BigFraction bought(Offer offer) {
        var usable = brief.set().ingredient(offer.ingredient()).usable();
        return ledger.ofOffer(offer.id()).divide(usable);
    }

    /**
     * Everything that is wrong with the blend, in words that go on from "the blend"; empty when it is what was asked
     * for: a whole batch of what may be used, where it may be used, no more of an offer than there is, at what it
     * costs, with every bound and every rule kept.
     */
    public List<String> faults() {
        var faults = new ArrayList<String>();
        broken().forEach(name -> faults.add("breaks \"" + name + "\""));
        faults.addAll(new LineCheck(brief, blend, ledger).faults());
        faults.addAll(brokenRules());
        return List.copyOf(faults);
    }

    /** Every rule that the blend breaks, in words that go on from "the blend". */
    public List<String> brokenRules() {
        return new RuleCheck(brief, ledger).faults();
    }

    /** Names of every bound and every offer that the blend breaks; empty when it keeps them all. */
    public List<String> broken() {
        var bounds = brief.bounds().stream()
                .filter(bound -> breaks(bound, bound.min(), true) || breaks(bound, bound.max(), false))
                .map(Bound::name);
        var offers = brief.offers().stream()
                .filter(this::isShort)
                .map(offer -> offer.ingredient() + " available " + offer.supplier());
        return Stream.concat(bounds, offers).toList();
    }

    private boolean breaks(Bound bound, @Nullable Quantity limit, boolean isMin) {
        if (limit == null) {
            return false;
        }
        var slack = slack(bound, limit, isMin);
        var sure = bound.sure();
        return slack.signum() < 0
                || (sure != null
                        && slack.multiply(slack)
                                        .compareTo(sure.quantile()
                                                .multiply(sure.quantile())
                                                .multiply(variance(bound)))
                                < 0);
    }

    /**
     * The variance of what a bound counts, in a kilogram of batch and base units squared. Where each value that states
     * a spread varies on its own, the blend is measured again with each a standard deviation higher.
     */
    public BigFraction variance(Bound bound) {
        var sure = bound.sure();
        var estimated = sure == null ? null : sure.estimated();
        return estimated == null ? ofContents(bound) : ofTrials(estimated);
    }

    private BigFraction ofTrials(Estimated estimated) {
        var values = estimated.terms().stream().map(ledger::of).toList();
        var variance = estimated.error() == null ? BigFraction.ZERO : estimated.error();
        for (int i = 0; i < values.size(); i++) {
            for (int j = 0; j < values.size(); j++) {
                var each = estimated.covariance().get(i).get(j);
                variance = variance.add(each.multiply(values.get(i)).multiply(values.get(j)));
            }
        }
        return variance;
    }

    private BigFraction ofContents(Bound bound) {
        var mean = of(bound);
        var variance = BigFraction.ZERO;
        for (var id : new TreeSet<>(
                blend.lines().stream().map(line -> line.use().ingredient()).toList())) {
            for (var spread : brief.set().ingredient(id).spread().entrySet()) {
                var stated = brief.composition().stated(id, spread.getKey());
                if (stated.isPresent()) {
                    var other = Map.of(id, Map.of(spread.getKey(), stated.get().add(spread.getValue())));
                    var drawn = new Audit(brief.withIngredientSet(brief.set().holding(other)), blend);
                    var moved = drawn.of(bound).subtract(mean);
                    variance = variance.add(moved.multiply(moved));
                }
            }
        }
        return variance;
    }

    /** Whether the blend takes more of an offer than can be had. */
    public boolean isShort(Offer offer) {
        var available = offer.available();
        return available != null
                && available
                                .base()
                                .compareTo(bought(offer).multiply(brief.batch().base()))
                        < 0;
    }
}
