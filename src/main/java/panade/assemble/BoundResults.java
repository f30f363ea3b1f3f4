package panade.assemble;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.ShadowPrice;
import panade.learn.Distributions;
import panade.plan.NumberSteps;
import panade.quantity.Decimal;
import panade.result.BoundResult;
import panade.result.BoundResult.Effect;
import panade.result.BoundResult.Moves;
import panade.result.BoundResult.Of;
import panade.result.BoundResult.Step;

/**
 * Makes bounds of a result.
 *
 * @param steps solves round steps of numbers; null where they are not asked for
 */
record BoundResults(@Nullable NumberSteps steps) {
    /** Changes below a thousandth of a cent per kilogram are told as nothing. */
    private static final BigFraction NOTHING = BigFraction.of(1, 100_000);

    private static final BoundResult.ShadowPrice UNPRICED =
            new BoundResult.ShadowPrice(BigFraction.ZERO, BigFraction.ZERO, null, null, null, null);

    BoundResult of(Limit limit) {
        var price = limit.price();
        var stepCost = price == null ? BigFraction.ZERO : largest(price).multiply(step(limit));
        boolean blocked = price != null && (price.whenRaised() == null || price.whenLowered() == null);
        return new BoundResult(
                limit.name(),
                limit.kind(),
                limit.path(),
                limit.origin().file(),
                limit.unit().symbol(),
                limit.value(),
                limit.min(),
                limit.max(),
                limit.touch(),
                price == null ? UNPRICED : price(price),
                sure(limit),
                limit.title(),
                price != null,
                stepCost,
                blocked || stepCost.compareTo(NOTHING) >= 0,
                steps == null || price == null || limit.touch() == null ? null : moves(steps, limit, price));
    }

    /** The standard deviation is a root and so the one figure here that is rounded before it is printed. */
    private static BoundResult.@Nullable Sure sure(Limit limit) {
        var sure = limit.sure();
        var value = limit.value();
        if (sure == null || value == null) {
            return null;
        }
        var estimated = sure.asked().estimated();
        var deviation = Decimal.of(Distributions.root(sure.variance()));
        var away = deviation.multiply(sure.asked().quantile());
        return new BoundResult.Sure(
                sure.asked().share().base(),
                estimated != null && estimated.error() == null ? Of.MEAN : Of.BATCH,
                estimated == null ? null : estimated.trials(),
                deviation,
                limit.min() == null ? null : value.subtract(away),
                limit.max() == null ? null : value.add(away));
    }

    private static BoundResult.ShadowPrice price(ShadowPrice price) {
        return new BoundResult.ShadowPrice(
                price.whenRaised(),
                price.whenLowered(),
                price.from(),
                price.to(),
                price.jumpRaised(),
                price.jumpLowered());
    }

    private static BigFraction largest(ShadowPrice price) {
        var raised = size(price.whenRaised());
        var lowered = size(price.whenLowered());
        return raised.compareTo(lowered) > 0 ? raised : lowered;
    }

    private static BigFraction size(@Nullable BigFraction rate) {
        return rate == null ? BigFraction.ZERO : rate.abs();
    }

    private static Moves moves(NumberSteps steps, Limit limit, ShadowPrice price) {
        if (limit.kind() == LimitKind.LABEL) {
            return new Moves(null, null, steps.costOf(limit).orElse(null));
        }
        boolean min = limit.touch() == Side.MIN;
        var loosened = taken(steps, limit, !min);
        boolean opposite = isMirrored(price.whenRaised(), price.whenLowered()) && isWhole(loosened, limit);
        return new Moves(loosened, opposite ? null : taken(steps, limit, min), null);
    }

    private static @Nullable Step taken(NumberSteps steps, Limit limit, boolean up) {
        var step = steps.step(limit, up, step(limit), NOTHING);
        if (step instanceof NumberSteps.Step.Change change) {
            return new Step(change.steady() ? Effect.STEADY : Effect.ONCE, change.size(), change.change());
        }
        if (step instanceof NumberSteps.Step.Jump jump) {
            return new Step(Effect.JUMP, BigFraction.ZERO, jump.change());
        }
        return step instanceof NumberSteps.Step.NoBlend none
                ? new Step(Effect.NO_BLEND, none.size(), BigFraction.ZERO)
                : null;
    }

    private static boolean isMirrored(@Nullable BigFraction raised, @Nullable BigFraction lowered) {
        return raised != null && lowered != null && raised.negate().equals(lowered);
    }

    /** Whether a whole step does what the rate says, so that the other way round it does the opposite. */
    private static boolean isWhole(@Nullable Step taken, Limit limit) {
        return taken != null && taken.effect() == Effect.STEADY && taken.size().equals(step(limit));
    }

    /** The power of ten next below a twentieth of the number; a tenth of the unit at zero. */
    private static BigFraction step(Limit limit) {
        var number = limit.touch() == Side.MIN ? limit.min() : limit.max();
        if (number == null || number.signum() == 0) {
            return BigFraction.of(1, 10);
        }
        var twentieth = Decimal.significant(number.abs().divide(20), 3);
        int places = twentieth.scale() - twentieth.precision() + 1;
        return Decimal.of(new BigDecimal(BigInteger.ONE, places));
    }
}
