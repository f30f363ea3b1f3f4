package panade.quotes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Decision;
import panade.domain.Blend;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;

/**
 * One product under several price lists.
 *
 * @param lists the names of the lists
 * @param best the outcome under each
 * @param costOf money per kilogram of the best blend of list i (row) at the prices of list j; null when there is no
 *     such blend or it cannot be made there
 * @param regret the single blend whose worst excess over each list's least cost is least; impossible when some list has
 *     no blend, or no one blend can be made under all
 * @param average the single blend that is cheapest on average; impossible likewise
 * @param pooled the outcome when every list may be bought from
 */
public record PriceComparison(
        List<String> lists,
        List<Outcome> best,
        List<List<Optional<BigFraction>>> costOf,
        Decision<Single> regret,
        Decision<Single> average,
        Outcome pooled) {

    /**
     * One blend for all lists.
     *
     * @param perKg what it was chosen for: its worst regret, or its average cost, per kilogram
     * @param blend its lines; who sells is left open, because that differs from list to list
     * @param costs its cost per kilogram under each list
     */
    public record Single(BigFraction perKg, Blend blend, List<BigFraction> costs) {}

    /** Whether every blend found is proved to be the cheapest of its list, whatever choice rules leave. */
    public boolean isProved() {
        return Stream.concat(best.stream(), Stream.of(pooled)).allMatch(PriceComparison::isProved);
    }

    /** The same with every explanation complete: an outcome of which a part cannot be settled is undecided. */
    public PriceComparison explained() {
        return new PriceComparison(
                lists, best.stream().map(Outcome::explained).toList(), costOf, regret, average, pooled.explained());
    }

    private static boolean isProved(Outcome outcome) {
        var choice = outcome instanceof Blended blended ? blended.choice() : null;
        return choice == null || choice.closed();
    }
}
