package panade.buy;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.Drafts.Draft;
import panade.buy.PurchaseAnswers.SmallOrder;
import panade.certify.Verdict.Optimum;
import panade.domain.Storage;
import panade.domain.StoreRoom;
import panade.plan.Planner;
import panade.solver.MixedAnswer;
import panade.solver.MixedAnswer.Found;

/** Finds what to order for products made from one store room, in one period or several. */
public final class Buying {
    private final Planner planner;
    private final Drafts drafts;
    private final Duration limit;

    private Buying(Planner planner, Drafts drafts, Duration limit) {
        this.planner = planner;
        this.drafts = drafts;
        this.limit = limit;
    }

    /**
     * The three answers.
     *
     * @param worth what leftovers at the end count for
     * @param limit for each answer's search
     */
    public static PurchaseAnswers answers(
            Planner planner,
            List<Period> periods,
            StoreRoom room,
            Storage storage,
            LeftoverWorth worth,
            Duration limit) {
        var drafts = new Drafts(periods, Recipe.of(planner, periods), room, storage);
        return new Buying(planner, drafts, limit).answers(worth);
    }

    private PurchaseAnswers answers(LeftoverWorth worth) {
        var frozen = drafts.frozen(worth);
        var adapted = drafts.adapted(worth);
        var leastCash = drafts.adapted(LeftoverWorth.NOTHING);
        // the long searches at once: each takes one core
        var searching = CompletableFuture.supplyAsync(() -> search(leastCash));
        var keeping = settled(search(frozen), frozen, frozen);
        var found = search(adapted);
        var adapting = settled(found, adapted, adapted);
        var foundLeast = searching.join();
        var least = settled(foundLeast, leastCash, adapted);
        return new PurchaseAnswers(
                drafts.periods(),
                exact(),
                keeping,
                adapting,
                cheaper(least, settled(bounded(found, foundLeast), leastCash, adapted)),
                smallOrders());
    }

    private MixedAnswer search(Draft draft) {
        return planner.searchLong(draft.ledger().model(), limit);
    }

    /** One search's packs for what another looked for, with the bound that the other came to if it came to one. */
    private static MixedAnswer bounded(MixedAnswer packs, MixedAnswer other) {
        // counting leftovers as worth something only lowers the bound, so the first search's own is good as well
        return packs instanceof Found found
                ? new Found(found.values(), other instanceof Found known ? known.bound() : found.bound(), false)
                : packs;
    }

    private static Optional<Campaign> cheaper(Optional<Campaign> one, Optional<Campaign> other) {
        boolean isOther = other.isPresent()
                && (one.isEmpty()
                        || other.get()
                                        .objective()
                                        .subtract(one.get().objective())
                                        .signum()
                                < 0);
        return isOther ? other : one;
    }

    /** Money if any weight could be bought. */
    private BigFraction exact() {
        return drafts.periods().stream()
                .flatMap(period -> period.products().stream())
                .map(product -> product.best().blend().rawCostPerKg().multiply(product.kilograms()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    private List<SmallOrder> smallOrders() {
        var small = new ArrayList<SmallOrder>();
        for (var period : drafts.periods()) {
            var goods = new TreeMap<String, BigFraction>();
            for (var product : period.products()) {
                product.best()
                        .blend()
                        .lines()
                        .forEach(line -> goods.merge(
                                line.offer().supplier(),
                                line.costPerKg().multiply(product.kilograms()),
                                BigFraction::add));
            }
            goods.forEach((supplier, money) -> {
                var order = new SmallOrder(period.name(), drafts.room().termsOf(supplier), money);
                if (order.missing().signum() > 0) {
                    small.add(order);
                }
            });
        }
        return small;
    }

    /**
     * The plan with the packs of an answer, the rest proved; empty when there is none.
     *
     * @param chosen the model that packs are chosen with
     * @param settled the same with the costs that blends are settled with, once packs are held
     */
    private Optional<Campaign> settled(MixedAnswer answer, Draft chosen, Draft settled) {
        if (!(answer instanceof Found found)
                || !(planner.verdict(settled.ledger().model().holding(found.values())) instanceof Optimum optimum)) {
            return Optional.empty();
        }
        var plans = new PlanReader(drafts, settled, optimum.point()).plans();
        var objective = chosen.ledger().model().relaxed().costAt(optimum.point());
        BigDecimal bound = found.bound();
        return Optional.of(new Campaign(plans, objective, bound, found.finished()));
    }
}
