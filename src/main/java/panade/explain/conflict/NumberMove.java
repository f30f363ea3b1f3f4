package panade.explain.conflict;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.compile.CompiledBrief;
import panade.compile.Limit;
import panade.domain.Bound;
import panade.domain.BoundId;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.domain.origin.Origin;
import panade.explain.conflict.Conflict.Change;
import panade.model.LinearForm;
import panade.model.LinearModel.Row;
import panade.quantity.Decimal;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** The number behind a row: what it is, what could be written instead, and the brief with that written. */
final class NumberMove {
    /** Digits of a number that a cook is asked to write instead; rounded to the easier side. */
    private static final int DIGITS = 6;

    private final Brief brief;
    private final CompiledBrief compiled;
    private final int row;
    private final Limit.OfNumber limit;

    /** The number of a row that has one. */
    NumberMove(Brief brief, CompiledBrief compiled, int row) {
        this.brief = brief;
        this.compiled = compiled;
        this.row = row;
        this.limit = (Limit.OfNumber) compiled.rows().get(row);
    }

    /** The number as it stands. */
    Quantity number() {
        return limit.number();
    }

    /** What a result calls the bound. */
    String name() {
        return limit.name();
    }

    /** The bound whose number it is; null for what can be had of an offer. */
    @Nullable
    BoundId bound() {
        return limit.boundId();
    }

    /** Which of the limit's numbers it is; what can be had of an offer is its most. */
    Side side() {
        return limit.side();
    }

    /** The number's path, side included. */
    String path() {
        return limit.path();
    }

    /** The bound and its limit as a cook reads it. */
    String words() {
        var side = isFixed() ? "exactly " : isLeast() ? "at least " : "at most ";
        return side + number().text();
    }

    Origin origin() {
        return limit.origin();
    }

    Row row() {
        return compiled.model().rows().get(row);
    }

    int index() {
        return row;
    }

    /** Whether a number stands in a document that could be another; a label to keep, or what was tried, has none. */
    boolean isWritten() {
        return !isOfLabel()
                && !(limit instanceof Limit.OfBound bound && bound.bound().kind() == LimitKind.TRIED);
    }

    boolean isOfLabel() {
        return limit instanceof Limit.OfBound bound && bound.bound().kind() == LimitKind.LABEL;
    }

    boolean isFixed() {
        return side() == Side.FIXED;
    }

    /** Whether a smaller number is easier to meet. */
    boolean isLeast() {
        return side() == Side.MIN;
    }

    /** The amount that the number multiplies, by column; empty when it multiplies nothing that varies. */
    Optional<LinearForm> lever() {
        if (limit instanceof Limit.OfBound bound && bound.bound().per() != null && !Bound.isAmount(number())) {
            return Optional.of(compiled.formOf(bound.bound().per(), brief.composition()));
        }
        return Optional.empty();
    }

    /** The number as the model has it: amounts as shares of the batch. */
    BigFraction level() {
        return Bound.level(number(), brief.batch());
    }

    /** A brief without it. */
    Brief dropped(Brief other) {
        return limit.with(other, side(), null);
    }

    /** The level with which the row just holds at a point; empty where the number multiplies nothing there. */
    Optional<BigFraction> levelAt(List<BigFraction> point) {
        var lever = lever();
        if (lever.isEmpty()) {
            return Optional.of(row().activity(point));
        }
        var per = lever.get().dot(point);
        return per.signum() > 0 ? Optional.of(level().add(row().activity(point).divide(per))) : Optional.empty();
    }

    /** The same number in another brief; empty where that has no such row. */
    Optional<NumberMove> in(Brief other, CompiledBrief otherCompiled) {
        int found = otherCompiled.rowOf(limit.id());
        return found < 0 ? Optional.empty() : Optional.of(new NumberMove(other, otherCompiled, found));
    }

    /**
     * What a cook would write for a level; empty where no document takes it. A fixed number cannot be rounded to an
     * easier side: where six digits do not say it, one of its sides is opened instead.
     */
    Optional<Written> written(BigFraction level) {
        if (!isFixed()) {
            return written(number(), level, isLeast() ? RoundingMode.FLOOR : RoundingMode.CEILING)
                    .map(to -> new Written(this, to, isLeast() ? Side.MIN : Side.MAX));
        }
        var bound = ((Limit.OfBound) limit).bound();
        var exact = written(number(), level, RoundingMode.HALF_EVEN)
                .filter(to -> Bound.level(to, brief.batch()).equals(level))
                .filter(to ->
                        to.unit().equals(Objects.requireNonNull(bound.min()).unit()));
        if (exact.isPresent()) {
            return exact.map(to -> new Written(this, to, Side.FIXED));
        }
        boolean lower = level.compareTo(level()) < 0;
        var opened = Objects.requireNonNull(lower ? bound.min() : bound.max());
        return written(opened, level, lower ? RoundingMode.FLOOR : RoundingMode.CEILING)
                .map(to -> new Written(this, to, lower ? Side.MIN : Side.MAX));
    }

    private Optional<Quantity> written(Quantity old, BigFraction level, RoundingMode rounding) {
        var unit = old.unit();
        var base = Bound.isAmount(old) ? level.multiply(brief.batch().base()) : level;
        var number = rounded(unit.fromBase(base), rounding);
        return Optional.of(Quantity.of(number, unit, words(number, unit))).filter(this::isTaken);
    }

    /** A share of the whole must lie from 0 % to 100 %, and a weight may not be negative. */
    private boolean isTaken(Quantity number) {
        if (Bound.isAmount(number)) {
            return number.base().signum() >= 0;
        }
        boolean whole = number.unit().dimension() == Dimension.SHARE && !isRatio();
        boolean within = number.base().signum() >= 0 && number.base().compareTo(BigFraction.ONE) <= 0;
        return within || !whole;
    }

    private boolean isRatio() {
        return limit instanceof Limit.OfBound bound && bound.bound().per() != null;
    }

    private static BigFraction rounded(BigFraction number, RoundingMode rounding) {
        if (number.signum() == 0) {
            return number;
        }
        var quotient = new BigDecimal(number.getNumerator())
                .divide(new BigDecimal(number.getDenominator()), new MathContext(DIGITS, rounding));
        return Decimal.of(quotient);
    }

    private static String words(BigFraction number, Unit unit) {
        var digits = Decimal.significant(number, DIGITS).toPlainString();
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }

    /**
     * A number written in place of another.
     *
     * @param number what is changed
     * @param to what is written
     * @param side the number that is written anew: one, or both of a fixed bound
     */
    record Written(NumberMove number, Quantity to, Side side) {
        /** Where it is written: of a fixed bound that is opened, the side that moves. */
        String path() {
            var path = number.path();
            return isOpened() ? path + (side == Side.MIN ? "/min" : "/max") : path;
        }

        private boolean isOpened() {
            return number.isFixed() && side != Side.FIXED;
        }

        /** The number that stood there. */
        Quantity from() {
            if (!isOpened()) {
                return number.number();
            }
            var bound = ((Limit.OfBound) number.limit).bound();
            return Objects.requireNonNull(side == Side.MIN ? bound.min() : bound.max());
        }

        /** The other side of a fixed bound, where one of them is opened; null elsewhere. */
        @Nullable
        Quantity kept() {
            if (!isOpened()) {
                return null;
            }
            var bound = ((Limit.OfBound) number.limit).bound();
            return side == Side.MIN ? bound.max() : bound.min();
        }

        Change.Moves change() {
            return new Change.Moves(number.bound(), side, from().number(), to.number(), from().unit(), kept());
        }

        /** How much of the number moves. */
        BigFraction part() {
            var moved = Bound.level(to, number.brief.batch())
                    .subtract(number.level())
                    .abs();
            return number.level().signum() == 0
                    ? moved
                    : moved.divide(number.level().abs());
        }

        boolean isMoved() {
            return !to.base().equals(from().base());
        }

        /** A brief with it written, whatever else of it was changed before. */
        Brief in(Brief other) {
            return number.limit.with(other, side, to);
        }
    }
}
