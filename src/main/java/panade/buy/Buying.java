package panade.buy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.PurchaseAnswers.SmallOrder;
import panade.domain.purchase.Storage;
import panade.domain.purchase.StoreRoom;
import panade.plan.Planner;

/** Finds what to order for products made from one store room, in one period or several. */
public final class Buying {
    private final PurchaseModels drafts;
    private final PackSearch search;

    private Buying(PurchaseModels drafts, PackSearch search) {
        this.drafts = drafts;
        this.search = search;
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
        var drafts = new PurchaseModels(periods, Recipe.of(planner, periods), room, storage);
        return new Buying(drafts, new PackSearch(planner, drafts, limit)).answers(worth);
    }

    private PurchaseAnswers answers(LeftoverWorth worth) {
        var frozen = drafts.frozen(worth);
        var adapted = drafts.adapted(worth);
        var leastCash = drafts.adapted(LeftoverWorth.NOTHING);
        // the long searches at once: each takes one core
        var searching = CompletableFuture.supplyAsync(() -> search.found(leastCash));
        var foundFrozen = search.found(frozen);
        var keeping = search.settled(foundFrozen, List.of(), List.of(), frozen, Optional.empty());
        var found = search.found(adapted);
        var foundLeast = searching.join();
        // packs that any of the searches found, and blends that are kept, are plans for the others as well
        var adapting = search.settled(
                found,
                List.of(foundLeast),
                keeping.plan().map(MultiPeriodPlan::periods).stream().toList(),
                adapted,
                Optional.empty());
        var least = search.settled(
                foundLeast,
                List.of(found),
                keeping.plan().map(MultiPeriodPlan::periods).stream().toList(),
                leastCash,
                Optional.of(adapted));
        return new PurchaseAnswers(drafts.periods(), exact(), keeping, adapting, least, smallOrders());
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
}
