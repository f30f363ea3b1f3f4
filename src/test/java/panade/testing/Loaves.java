package panade.testing;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.lazy.Lazy;
import panade.quantity.Decimal;
import panade.result.BlendResult;
import panade.result.BlendResult.Allergens;
import panade.result.BlendResult.Basis;
import panade.result.BlendResult.Certificate;
import panade.result.BlendResult.Check;
import panade.result.BlendResult.Cost;
import panade.result.BlendResult.NearestUnused;
import panade.result.BriefFacts;
import panade.result.BriefResult.Status;

/**
 * Results made by hand, without a brief or a solver behind them: a loaf of 10 kg that costs what a test says. Invented.
 */
public final class Loaves {
    private static final BriefFacts BRIEF =
            new BriefFacts("loaf", "loaf.json", List.of("mill.csv"), "USD", "10 kg", number("10"), null, List.of());

    private Loaves() {}

    /** A blend that costs so much per kilogram, and of which nothing else is known. */
    public static BlendResult costing(String perKg) {
        var cost = number(perKg);
        return new BlendResult(
                Status.OPTIMAL,
                Lazy.known(true),
                new Cost(
                        "USD",
                        cost,
                        cost.multiply(number("0.45359237")),
                        cost.multiply(10),
                        Basis.RAW,
                        perKg,
                        cost,
                        BigFraction.ONE,
                        null),
                List.of(),
                Lazy.known(List.of()),
                Lazy.known(List.of()),
                List.of(),
                Lazy.known(List.of()),
                List.of(),
                List.of(),
                List.of(),
                new Certificate(Check.EXACT, Check.EXACT, BigFraction.ZERO, "hand", null, null, 1, true),
                null,
                null,
                null,
                null,
                BRIEF,
                Lazy.known(new NearestUnused(List.of(), 0)),
                BigFraction.ZERO,
                List.of(),
                new Allergens(List.of(), List.of()));
    }

    public static BigFraction number(String text) {
        return Decimal.of(text);
    }
}
