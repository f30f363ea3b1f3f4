package panade.explain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Prover;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.CompiledBrief.Limit;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** The number behind a row: what it is, what it would have to be at a point, and the brief with it changed. */
final class NumberMove {
    /** Digits of a number that a cook is asked to write instead; rounded to the easier side. */
    private static final int DIGITS = 6;

    private final Brief brief;
    private final CompiledBrief compiled;
    private final int row;
    private final Limit limit;

    NumberMove(Brief brief, CompiledBrief compiled, int row) {
        this.brief = brief;
        this.compiled = compiled;
        this.row = row;
        this.limit = compiled.rows().get(row);
    }

    /** The number as it stands. */
    Quantity number() {
        if (limit instanceof Limit.OfOffer offer) {
            return Objects.requireNonNull(offer.offer().available());
        }
        var bound = (Limit.OfBound) limit;
        var number =
                bound.side() == Side.MIN ? bound.bound().min() : bound.bound().max();
        return Objects.requireNonNull(number);
    }

    /** What a result calls the bound. */
    String name() {
        return limit instanceof Limit.OfBound bound
                ? bound.bound().name()
                : BriefCompiler.availabilityName(((Limit.OfOffer) limit).offer());
    }

    /** The number's path, side included. */
    String path() {
        return limit instanceof Limit.OfOffer offer
                ? offer.offer().origin().pointer() + "/available"
                : compiled.model().rows().get(row).name();
    }

    /** Whether a larger number is easier to meet, or a smaller one; an equation has no easier side. */
    private RoundingMode easierSide() {
        if (limit instanceof Limit.OfBound bound && bound.side() != Side.MAX) {
            return bound.side() == Side.MIN ? RoundingMode.FLOOR : RoundingMode.UNNECESSARY;
        }
        return RoundingMode.CEILING;
    }

    /** The amount that the number multiplies, by column; empty when it multiplies nothing that varies. */
    private Optional<Map<Integer, BigFraction>> lever() {
        if (limit instanceof Limit.OfBound bound && bound.bound().per() != null && !Bound.isAmount(number())) {
            return Optional.of(BriefCompiler.form(compiled, brief, bound.bound().per()));
        }
        return Optional.empty();
    }

    /** What the number would have to be for the row to hold at a point; empty when no number does. */
    Optional<Quantity> neededAt(List<BigFraction> point) {
        return level(point).map(this::quantity);
    }

    private Optional<BigFraction> level(List<BigFraction> point) {
        var modelRow = compiled.model().rows().get(row);
        var lever = lever();
        if (lever.isEmpty()) {
            return Optional.of(modelRow.activity(point));
        }
        var per = value(lever.get(), point);
        var amount = modelRow.activity(point).add(per.multiply(number().base()));
        return per.signum() > 0 ? Optional.of(amount.divide(per)) : Optional.empty();
    }

    /**
     * The least move of a ratio's number, by Dinkelbach's method (Management Science 13, 1967) from a point that some
     * number allows; other numbers are already least there.
     */
    List<BigFraction> improved(List<BigFraction> start, Prover prover) {
        var lever = lever();
        if (lever.isEmpty() || easierSide() == RoundingMode.UNNECESSARY) {
            return start;
        }
        var elastic = new Elastic(compiled.model(), prover);
        var point = start;
        var level = level(point);
        while (level.isPresent()) {
            var next = elastic.leastWithout(row, gap(lever.get(), level.get()));
            var better = next.flatMap(this::level);
            if (better.isEmpty() || better.get().equals(level.get())) {
                return point;
            }
            point = next.orElseThrow();
            level = better;
        }
        return point;
    }

    /** How far the row would be from holding with another number, by column, to be made least. */
    private Map<Integer, BigFraction> gap(Map<Integer, BigFraction> lever, BigFraction level) {
        var form = new HashMap<>(compiled.model().rows().get(row).coefficients());
        var shift = number().base().subtract(level);
        lever.forEach((j, per) -> form.merge(j, per.multiply(shift), BigFraction::add));
        if (easierSide() == RoundingMode.FLOOR) {
            form.replaceAll((j, value) -> value.negate());
        }
        return form;
    }

    private static BigFraction value(Map<Integer, BigFraction> form, List<BigFraction> point) {
        var total = BigFraction.ZERO;
        for (var term : form.entrySet()) {
            total = total.add(term.getValue().multiply(point.get(term.getKey())));
        }
        return total;
    }

    private Quantity quantity(BigFraction level) {
        var unit = number().unit();
        boolean amount = Bound.isAmount(number());
        var base = amount ? level.multiply(brief.batch().base()) : level;
        var number = rounded(unit.fromBase(base));
        return Quantity.of(number, unit, words(number, unit));
    }

    private BigFraction rounded(BigFraction number) {
        if (easierSide() == RoundingMode.UNNECESSARY || number.signum() == 0) {
            return number;
        }
        var context = new MathContext(DIGITS, easierSide());
        var quotient = new BigDecimal(number.getNumerator()).divide(new BigDecimal(number.getDenominator()), context);
        return Decimal.of(quotient);
    }

    private static String words(BigFraction number, Unit unit) {
        var digits = Decimal.significant(number, DIGITS).toPlainString();
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }

    /** The brief with another number in this one's place. */
    Brief changed(Brief other, Quantity number) {
        if (limit instanceof Limit.OfOffer offer) {
            return other.replacing(offer.offer(), offer.offer().withAvailable(number));
        }
        var bound = ((Limit.OfBound) limit).bound();
        var current = other.bounds().stream()
                .filter(each ->
                        each.path().equals(bound.path()) && each.origin().equals(bound.origin()))
                .findFirst()
                .orElse(bound);
        return other.replacing(current, changed(current, number));
    }

    private Bound changed(Bound bound, Quantity number) {
        var side = ((Limit.OfBound) limit).side();
        return bound.withLimits(side == Side.MAX ? bound.min() : number, side == Side.MIN ? bound.max() : number);
    }
}
