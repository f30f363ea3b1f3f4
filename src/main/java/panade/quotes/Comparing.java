package panade.quotes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Decision;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quotes.PriceComparison.Single;

/** Compares the best blends of one product under several price lists. */
public final class Comparing {
    private final List<Brief> briefs;
    private final List<Outcome> best;

    private Comparing(Planner planner, List<Brief> briefs) {
        this.briefs = briefs;
        this.best = briefs.stream().map(planner::answer).toList();
    }

    /**
     * The comparison.
     *
     * @param lists names of the lists
     * @param briefs the same brief under each list
     * @param pooled the same brief with all lists to buy from
     */
    public static PriceComparison of(Planner planner, List<String> lists, List<Brief> briefs, Brief pooled) {
        var study = new Comparing(planner, briefs);
        var all = study.everyList();
        return new PriceComparison(
                lists,
                study.best,
                study.costs(),
                single(all, () -> new SingleBlend(planner, briefs).leastRegret(study.leastCosts())),
                single(all, () -> new SingleBlend(planner, briefs).cheapestOnAverage()),
                planner.answer(pooled));
    }

    /** Whether every list has a blend of its own. */
    private Decision<List<Outcome>> everyList() {
        if (best.stream().anyMatch(Outcome.Conflicted.class::isInstance)) {
            return new Decision.Impossible<>();
        }
        return best.stream()
                .filter(Outcome.Undecided.class::isInstance)
                .<Decision<List<Outcome>>>map(open -> new Decision.Undecided<>(((Outcome.Undecided) open).reason()))
                .findFirst()
                .orElseGet(() -> new Decision.Found<>(best));
    }

    private static Decision<Single> single(Decision<List<Outcome>> all, Supplier<Decision<Single>> find) {
        return all.fold(found -> find.get(), Decision.Impossible::new, Decision.Undecided::new);
    }

    /** The brief once for each supplier, each alone but for whoever sells a single thing, such as town water. */
    public static List<Brief> bySupplier(Brief brief, List<String> suppliers) {
        return suppliers.stream()
                .map(supplier -> brief.offeringOnly(brief.offers().stream()
                        .filter(offer -> offer.supplier().equals(supplier) || sellsOneThing(brief, offer))
                        .toList()))
                .toList();
    }

    /** Suppliers of more than one ingredient, in order of name. */
    public static List<String> suppliers(Brief brief) {
        return brief.offers().stream()
                .filter(offer -> !sellsOneThing(brief, offer))
                .map(Offer::supplier)
                .distinct()
                .sorted()
                .toList();
    }

    private static boolean sellsOneThing(Brief brief, Offer offer) {
        return brief.offers().stream()
                        .filter(other -> other.supplier().equals(offer.supplier()))
                        .map(Offer::ingredient)
                        .distinct()
                        .count()
                == 1;
    }

    private List<BigFraction> leastCosts() {
        return best.stream()
                .map(outcome -> ((Blended) outcome).blend().costPerKg())
                .toList();
    }

    private List<List<Optional<BigFraction>>> costs() {
        var costs = new ArrayList<List<Optional<BigFraction>>>();
        for (var outcome : best) {
            var row = new ArrayList<Optional<BigFraction>>();
            for (var brief : briefs) {
                row.add(
                        outcome instanceof Blended blended
                                ? new Pricing(brief).cost(blended.blend())
                                : Optional.empty());
            }
            costs.add(List.copyOf(row));
        }
        return List.copyOf(costs);
    }
}
