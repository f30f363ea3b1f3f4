package panade.assemble.formula;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.domain.Bound;
import panade.nudge.Start;
import panade.plan.Outcome;
import panade.quotes.PriceComparison;
import panade.result.QuotesResult;
import panade.result.formula.MadeQuotesResult;
import panade.result.formula.MadeQuotesResult.Kept;

/** Makes the result of {@code quotes} for a formula. */
public final class MadeQuotesResults {
    private MadeQuotesResults() {}

    /**
     * What keeping a formula costs.
     *
     * @param made the formula under each list
     * @param pooled the formula under all of them
     */
    public static MadeQuotesResult of(
            String title, List<Start> made, Start pooled, PriceComparison comparison, QuotesResult quotes) {
        return new MadeQuotesResult(
                quotes,
                IntStream.range(0, made.size())
                        .mapToObj(i -> kept(
                                comparison.lists().get(i),
                                made.get(i),
                                comparison.best().get(i)))
                        .toList(),
                kept("", pooled, comparison.pooled()),
                broken(pooled),
                title);
    }

    private static Kept kept(String list, Start start, Outcome outcome) {
        var unsold = start.unsold().stream()
                .map(id -> start.brief().set().ingredient(id).name())
                .toList();
        var cost = unsold.isEmpty() ? start.blend().costPerKg() : null;
        var best = outcome instanceof Outcome.Blended found ? found.blend().costPerKg() : null;
        return new Kept(list, cost, above(cost, best), unsold, best);
    }

    private static @Nullable BigFraction above(@Nullable BigFraction cost, @Nullable BigFraction best) {
        return cost == null || best == null ? null : cost.subtract(best);
    }

    private static List<String> broken(Start start) {
        var audit = new Audit(start.brief(), start.blend());
        return start.brief().bounds().stream()
                .filter(bound -> audit.isKnown(bound) && !audit.isKept(bound))
                .map(Bound::title)
                .toList();
    }
}
