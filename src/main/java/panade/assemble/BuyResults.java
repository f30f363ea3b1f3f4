package panade.assemble;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.bench.PlannedBench;
import panade.buy.LeftoverWorth;
import panade.buy.MultiPeriodPlan;
import panade.buy.PlanSearch;
import panade.buy.PurchaseAnswers;
import panade.buy.PurchasePlan;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.StoreRoom;
import panade.result.BuyResult;
import panade.result.BuyResult.OnHand;
import panade.result.BuyResult.Search;
import panade.result.BuyResult.Status;

/** Makes the result of {@code buy}. */
public final class BuyResults {
    private final PurchaseAnswers answers;
    private final Brief first;

    private BuyResults(PurchaseAnswers answers) {
        this.answers = answers;
        this.first = answers.products().get(0).best().asked();
    }

    /**
     * The result.
     *
     * @param worth what leftovers were counted at
     * @param bench sheets to weigh the plan's blends by; empty where none were asked for
     */
    public static BuyResult of(PurchaseAnswers answers, LeftoverWorth worth, StoreRoom room, PlannedBench bench) {
        return new BuyResults(answers).result(worth, room, bench);
    }

    private BuyResult result(LeftoverWorth worth, StoreRoom room, PlannedBench bench) {
        var adapting = search(answers.adapting());
        boolean weighed = !bench.sheets().isEmpty();
        return new BuyResult(
                adapting,
                new BuyResult.Searches(search(answers.keeping()), adapting, search(answers.saving())),
                answers.exact(),
                answers.frozen().map(this::plan).orElse(null),
                answers.adapted().map(this::plan).orElse(null),
                answers.leastCash().map(this::plan).orElse(null),
                answers.smallOrders().stream().map(BuyResults::smallOrder).toList(),
                weighed ? bench.sheets().stream().map(BatchResults::planned).toList() : null,
                weighed ? shortages(bench) : null,
                RemarkLines.of(answers.remarks()),
                order(worth),
                room.stock().stream()
                        .sorted(Comparator.comparing(BuyResults::date))
                        .map(this::onHand)
                        .toList(),
                caution());
    }

    private static Search search(PlanSearch search) {
        if (search instanceof PlanSearch.Impossible impossible) {
            return new Search(Status.INFEASIBLE, impossible.proved(), null, true);
        }
        return search instanceof PlanSearch.Undecided undecided
                ? new Search(Status.UNDECIDED, null, undecided.reason(), undecided.asked())
                : new Search(Status.PLANNED, null, null, true);
    }

    private BuyResult.Plan plan(MultiPeriodPlan plan) {
        return new BuyResult.Plan(
                plan.cash(),
                plan.goodsMoney(),
                plan.deliveryAndStorage(),
                plan.wasOnShelf(),
                plan.inBowl(),
                plan.wasted(),
                plan.onShelf(),
                plan.gap().orElse(null),
                plan.finished(),
                plan.periods().stream().map(this::period).toList(),
                plan.goods(),
                plan.orders());
    }

    private BuyResult.Period period(PurchasePlan plan) {
        return new BuyResult.Period(
                plan.period(),
                plan.cash(),
                plan.storage(),
                plan.orders().stream().map(BuyResults::order).toList(),
                plan.lines().stream().map(this::line).toList(),
                plan.store().stream().map(this::stock).toList(),
                plan.blends().stream().map(this::uses).toList());
    }

    private static BuyResult.SupplierOrder order(PurchasePlan.Order order) {
        var terms = order.terms();
        return new BuyResult.SupplierOrder(
                terms.supplier(),
                order.goods(),
                terms.delivery(),
                terms.minimumOrder(),
                terms.leadDays(),
                order.placed());
    }

    private BuyResult.Line line(PurchasePlan.Line line) {
        var offer = line.offer();
        var pack = offer.pack();
        return new BuyResult.Line(
                offer.supplier(),
                offer.ingredient(),
                pack == null ? null : pack.text(),
                pack == null ? null : line.packs(),
                line.kilograms(),
                line.money(),
                name(offer.ingredient()),
                pack == null ? null : pack.base(),
                offer.pricePerKg());
    }

    private BuyResult.Stock stock(PurchasePlan.Stock stock) {
        return new BuyResult.Stock(
                stock.ingredient(),
                stock.before(),
                stock.bought(),
                stock.used(),
                stock.wasted(),
                stock.left(),
                name(stock.ingredient()),
                stock.paidPerKg());
    }

    private List<BuyResult.Use> uses(Blend blend) {
        return blend.lines().stream()
                .map(line -> new BuyResult.Use(
                        line.use().ingredient(),
                        line.use().stage(),
                        line.share(),
                        name(line.use().ingredient())))
                .toList();
    }

    private static BuyResult.SmallOrder smallOrder(PurchaseAnswers.SmallOrder order) {
        return new BuyResult.SmallOrder(order.period(), order.terms().supplier(), order.goods(), order.missing());
    }

    private static List<BuyResult.Shortage> shortages(PlannedBench bench) {
        return bench.shortages().stream()
                .map(each -> new BuyResult.Shortage(each.period(), each.ingredient(), each.kilograms(), each.name()))
                .toList();
    }

    private BuyResult.Order order(LeftoverWorth worth) {
        var unit = first.batch().unit().ofStock();
        return new BuyResult.Order(
                answers.products().stream()
                        .map(product -> product.best().asked())
                        .map(brief -> new BuyResult.Product(
                                brief.title(), brief.batch().text()))
                        .toList(),
                answers.periods().size(),
                first.currency(),
                unit.symbol(),
                unit.factor(),
                worth.usual(),
                worth.named().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(entry -> new BuyResult.Worth(name(entry.getKey()), entry.getValue()))
                        .toList());
    }

    private static LocalDate date(StoreRoom.Stock stock) {
        return Objects.requireNonNullElse(stock.bestBefore(), LocalDate.MAX);
    }

    private OnHand onHand(StoreRoom.Stock stock) {
        return new OnHand(
                name(stock.ingredient()),
                stock.kilograms(),
                stock.bestBefore(),
                stock.isPast(),
                answers.products().stream()
                        .anyMatch(product -> product.best().asked().candidates().contains(stock.ingredient())),
                leftAtEnd(stock.ingredient()));
    }

    private @Nullable BigFraction leftAtEnd(String ingredient) {
        return answers.adapted().stream()
                .map(plan -> plan.periods().get(plan.periods().size() - 1))
                .flatMap(plan -> plan.store().stream())
                .filter(goods -> goods.ingredient().equals(ingredient))
                .map(PurchasePlan.Stock::left)
                .findFirst()
                .orElse(null);
    }

    private BuyResult.Caution caution() {
        var allergens = BlendResults.allergens(first.set(), everything());
        return new BuyResult.Caution(first.notes(), allergens.stated(), allergens.unknownFor());
    }

    /** All that goes in; where no plan was found, what would go into each product at the least cost. */
    private Stream<String> everything() {
        var made = answers.adapted().or(answers::frozen).stream()
                .flatMap(plan -> plan.periods().stream())
                .flatMap(period -> period.blends().stream())
                .toList();
        var blends = made.isEmpty()
                ? answers.products().stream()
                        .map(product -> product.best().blend())
                        .toList()
                : made;
        return blends.stream()
                .flatMap(blend -> blend.lines().stream())
                .map(line -> line.use().ingredient());
    }

    private String name(String id) {
        return first.set().ingredient(id).name();
    }
}
