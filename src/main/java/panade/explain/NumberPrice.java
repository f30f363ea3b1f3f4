package panade.explain;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.sensitivity.Sensitivity;
import panade.certify.sensitivity.Sensitivity.Rate;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Side;
import panade.explain.Explanation.ShadowPrice;
import panade.model.LinearForm;

/** What moving one row's number does to the least cost, either way. */
final class NumberPrice {
    private final Brief brief;
    private final CompiledBrief compiled;
    private final Blend blend;
    private final Sensitivity sensitivity;
    private final BooleanSupplier unique;
    private final Optional<PerCooked> perCooked;

    NumberPrice(Brief brief, CompiledBrief compiled, Blend blend, Sensitivity sensitivity, BooleanSupplier unique) {
        this.brief = brief;
        this.compiled = compiled;
        this.blend = blend;
        this.sensitivity = sensitivity;
        this.unique = unique;
        this.perCooked = PerCooked.of(brief, compiled, blend);
    }

    /**
     * A row whose level moves with a number.
     *
     * @param number as it stands
     * @param perUnit by how much the level moves with one unit of the number
     */
    record Row(int index, BigFraction number, BigFraction perUnit) {}

    /** One way that the number can go. */
    private record Way(
            @Nullable BigFraction rate,
            @Nullable BigFraction end,
            @Nullable BigFraction jump) {
        static final Way NO_BLEND = new Way(null, null, null);
        static final Way NOTHING_FOR_EVER = new Way(BigFraction.ZERO, null, null);
    }

    /** The price of a number that is the row's right side. */
    ShadowPrice plain(Row row) {
        return joined(plain(row, false), plain(row, true));
    }

    private static ShadowPrice joined(Way down, Way up) {
        return new ShadowPrice(up.rate(), down.rate(), down.end(), up.end(), up.jump(), down.jump());
    }

    private Way plain(Row row, boolean up) {
        var rate = up ? sensitivity.raising(row.index()) : sensitivity.lowering(row.index());
        return rate.map(found -> new Way(
                        perNumber(found, row, LinearForm.ZERO), isBent() ? null : end(row, found.reach(), up), null))
                .orElse(Way.NO_BLEND);
    }

    /**
     * Whether a rate holds at the number alone: per cooked weight the cost taken off each cooked kilogram moves along,
     * and a tangent of a cone is no longer one beside its point.
     */
    private boolean isBent() {
        return perCooked.isPresent() || !compiled.cones().isEmpty();
    }

    private static @Nullable BigFraction end(Row row, @Nullable BigFraction reach, boolean up) {
        if (reach == null) {
            return null;
        }
        var by = reach.divide(row.perUnit());
        return up ? row.number().add(by) : row.number().subtract(by);
    }

    /** The price of a number that multiplies an amount in its row. */
    ShadowPrice ratio(Row row, Measure per, Side side) {
        var form = compiled.formOf(per, brief.composition());
        return joined(ratio(row, form, side, false), ratio(row, form, side, true));
    }

    private Way ratio(Row row, LinearForm form, Side side, boolean up) {
        boolean tightens = side == Side.MIN ? up : side == Side.MAX && !up;
        if (tightens && amount(form).signum() == 0) {
            // nothing is there to break it, at any number
            return Way.NOTHING_FOR_EVER;
        }
        var rate = up ? sensitivity.raising(row.index()) : sensitivity.lowering(row.index());
        return rate.map(found -> new Way(
                        perNumber(found, row, form), isBent() ? null : end(row, ratioReach(row, form, up), up), null))
                .orElseGet(() -> beyondTheLast(form));
    }

    private @Nullable BigFraction ratioReach(Row row, LinearForm form, boolean up) {
        return sensitivity.ratioReach(row.index(), form, up).orElse(null);
    }

    /**
     * No blend with any of what the number multiplies can meet a higher (or lower) number; one without any meets every
     * number. So the least cost is that of the blends without any, however little the number has moved.
     */
    private Way beyondTheLast(LinearForm form) {
        var least = perCooked
                .map(cooked -> sensitivity.leastWithout(form, cooked.form(), cooked.cost()))
                .orElseGet(() -> sensitivity.leastWithout(form));
        if (least.isEmpty()) {
            return Way.NO_BLEND;
        }
        var jump = least.get().subtract(blend.costPerKg());
        return jump.signum() == 0 ? Way.NOTHING_FOR_EVER : new Way(null, null, jump);
    }

    /** Null where the gain or loss would be shared by a blend that cooks away to nothing. */
    private @Nullable BigFraction perNumber(Rate rate, Row row, LinearForm form) {
        if (rate.rate().signum() == 0) {
            return BigFraction.ZERO;
        }
        boolean vanishes =
                perCooked.filter(cooked -> leastWeight(cooked).signum() == 0).isPresent();
        return vanishes ? null : rate.rate().multiply(row.perUnit()).multiply(lever(rate, form));
    }

    private BigFraction leastWeight(PerCooked cooked) {
        return unique.getAsBoolean() ? cooked.weight() : sensitivity.extreme(cooked.form(), false);
    }

    /**
     * What a rate on the row is multiplied by: the amount that a ratio's number multiplies, over the weight that a gain
     * or loss is shared by. Among blends that cost the same, the move picks the one that serves it best (envelope
     * theorem for saddle points: the least over blends of the most over multipliers).
     *
     * @param form what the number multiplies; empty for a number of its own
     */
    private BigFraction lever(Rate rate, LinearForm form) {
        boolean most = rate.rate().signum() < 0;
        if (unique.getAsBoolean()) {
            var weight = perCooked.map(PerCooked::weight).orElse(BigFraction.ONE);
            return (form.isZero() ? BigFraction.ONE : amount(form)).divide(weight);
        }
        if (perCooked.isPresent()) {
            return sensitivity.extremeRatio(form, perCooked.get().form(), most);
        }
        return form.isZero() ? BigFraction.ONE : sensitivity.extreme(form, most);
    }

    private BigFraction amount(LinearForm form) {
        return sensitivity.valueOf(form);
    }
}
