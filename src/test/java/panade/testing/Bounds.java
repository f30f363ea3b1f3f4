package panade.testing;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.result.BoundResult;
import panade.result.BoundResult.Moves;
import panade.result.BoundResult.ShadowPrice;

/** Bounds of results, made by hand; in per cent. */
public final class Bounds {
    private static final ShadowPrice UNPRICED =
            new ShadowPrice(BigFraction.ZERO, BigFraction.ZERO, null, null, null, null);

    private Bounds() {}

    /** A bound that the blend does not touch. */
    public static BoundResult idle(
            LimitKind kind,
            String name,
            @Nullable BigFraction min,
            @Nullable BigFraction value,
            @Nullable BigFraction max) {
        return new BoundResult(
                name,
                kind,
                "/bounds/0",
                "brief.json",
                "%",
                value,
                min,
                max,
                null,
                UNPRICED,
                null,
                name,
                false,
                BigFraction.ZERO,
                false,
                null);
    }

    /**
     * A bound of the brief that the blend touches at ten per cent.
     *
     * @param stepCost money per kilogram that a round step moves the cost by
     */
    public static BoundResult touched(String name, Side side, BigFraction stepCost, @Nullable Moves moves) {
        var ten = BigFraction.of(10);
        return new BoundResult(
                name,
                LimitKind.BRIEF,
                "/bounds/0",
                "brief.json",
                "%",
                ten,
                side == Side.MAX ? null : ten,
                side == Side.MIN ? null : ten,
                side,
                new ShadowPrice(stepCost, stepCost.negate(), null, null, null, null),
                null,
                name,
                true,
                stepCost,
                stepCost.signum() != 0,
                moves);
    }
}
