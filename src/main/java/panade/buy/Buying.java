package panade.buy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.buy.PurchaseAnswers.SmallOrder;
import panade.buy.PurchaseModel.Need;
import panade.certify.Verdict.Optimum;
import panade.domain.Blend;
import panade.domain.Offer;
import panade.domain.Storage;
import panade.domain.StoreRoom;
import panade.plan.Planner;
import panade.solver.MixedAnswer.Found;

/** Finds what to order for products made from one store room, in one period or several. */
public final class Buying {
    private final Planner planner;
    private final List<Period> periods;
    private final StoreRoom room;
    private final Storage storage;
    private final Duration limit;
    private final List<List<Recipe>> recipes;

    private Buying(Planner planner, List<Period> periods, StoreRoom room, Storage storage, Duration limit) {
        this.planner = planner;
        this.periods = periods;
        this.room = room;
        this.storage = storage;
        this.limit = limit;
        this.recipes = Recipe.of(planner, periods);
    }

    /** Cells of a model beyond which proving what packs leave open would take minutes. */
    private static final long PROVABLE = 400_000;

    /**
     * Whether plans for so many products and periods can be proved in a time that anybody would wait: the exact
     * dictionary grows with the product of its sides.
     */
    public static boolean isProvable(Planner planner, List<Period> periods, StoreRoom room, Storage storage) {
        var model = new Buying(planner, periods, room, storage, Duration.ZERO)
                .adapted(BigFraction.ZERO)
                .ledger()
                .model()
                .relaxed();
        return (long) model.columns().size() * model.rows().size() <= PROVABLE;
    }

    /**
     * The three answers.
     *
     * @param worth what leftovers at the end count for, as a part of their price
     * @param limit for each answer's search
     */
    public static PurchaseAnswers answers(
            Planner planner, List<Period> periods, StoreRoom room, Storage storage, BigFraction worth, Duration limit) {
        var buying = new Buying(planner, periods, room, storage, limit);
        var frozen = buying.frozen(worth);
        var adapted = buying.adapted(worth);
        return new PurchaseAnswers(
                periods,
                periods.stream()
                        .flatMap(period -> period.products().stream())
                        .map(product -> product.best().blend().rawCostPerKg().multiply(product.kilograms()))
                        .reduce(BigFraction.ZERO, BigFraction::add),
                buying.campaign(frozen, frozen),
                buying.campaign(adapted, adapted),
                buying.campaign(buying.adapted(BigFraction.ZERO), adapted),
                buying.smallOrders());
    }

    private List<SmallOrder> smallOrders() {
        var small = new ArrayList<SmallOrder>();
        for (var period : periods) {
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
                var order = new SmallOrder(period.name(), room.termsOf(supplier), money);
                if (order.missing().signum() > 0) {
                    small.add(order);
                }
            });
        }
        return small;
    }

    /**
     * A model with the purchases of each period in it.
     *
     * @param offsets by period and product, the first column of its shares; empty where blends are kept
     */
    private record Draft(Ledger ledger, List<PurchaseModel> purchases, List<List<Integer>> offsets) {}

    private Draft frozen(BigFraction worth) {
        var draft = new Draft(new Ledger(), new ArrayList<>(), List.of());
        for (int t = 0; t < periods.size(); t++) {
            var purchase = purchase(draft, t, worth);
            for (var id : ingredients()) {
                var fixed = periods.get(t).products().stream()
                        .map(product ->
                                product.asBought(id, product.best().blend().shareOf(id)))
                        .reduce(BigFraction.ZERO, BigFraction::add);
                purchase.add(new Need(id, fixed, Map.of(), mostEver(id), spoils(id)), offers(t, id));
            }
            purchase.finish();
        }
        addStorage(draft);
        return draft;
    }

    private Draft adapted(BigFraction worth) {
        var draft = new Draft(new Ledger(), new ArrayList<>(), new ArrayList<>());
        for (int t = 0; t < periods.size(); t++) {
            var offsets = recipes.get(t).stream()
                    .map(recipe -> draft.ledger().addAll(recipe.model()))
                    .toList();
            draft.offsets().add(offsets);
            var purchase = purchase(draft, t, worth);
            for (var id : ingredients()) {
                purchase.add(
                        new Need(id, BigFraction.ZERO, form(t, id, offsets), mostEver(id), spoils(id)), offers(t, id));
            }
            purchase.finish();
        }
        addStorage(draft);
        return draft;
    }

    private PurchaseModel purchase(Draft draft, int t, BigFraction worth) {
        boolean last = t == periods.size() - 1;
        var before = t == 0 ? null : draft.purchases().get(t - 1);
        var purchase =
                new PurchaseModel(draft.ledger(), room, before, last ? worth : BigFraction.ZERO, storage.costPerKg());
        draft.purchases().add(purchase);
        return purchase;
    }

    private void addStorage(Draft draft) {
        new StorageRows(draft.ledger(), draft.purchases(), storage).add();
    }

    private List<Offer> offers(int t, String ingredient) {
        var offers = new LinkedHashSet<Offer>();
        periods.get(t)
                .products()
                .forEach(product -> offers.addAll(product.best().asked().offersFor(ingredient)));
        return List.copyOf(offers);
    }

    /** All that can be had in any period. */
    private Set<String> ingredients() {
        var ids = new TreeSet<String>();
        periods.forEach(period -> period.products()
                .forEach(product -> ids.addAll(product.best().asked().candidates())));
        return ids;
    }

    /** Kilograms as bought by column. */
    private Map<Integer, BigFraction> form(int t, String id, List<Integer> offsets) {
        var form = new HashMap<Integer, BigFraction>();
        for (int p = 0; p < offsets.size(); p++) {
            var recipe = recipes.get(t).get(p);
            int offset = offsets.get(p);
            recipe.share(id)
                    .keySet()
                    .forEach(j -> form.put(j + offset, recipe.product().asBought(id, BigFraction.ONE)));
        }
        return form;
    }

    private boolean spoils(String id) {
        return storage.keeps().containsKey(id);
    }

    private BigFraction mostEver(String id) {
        return recipes.stream()
                .flatMap(List::stream)
                .map(recipe -> recipe.product().asBought(id, recipe.most(id)))
                .reduce(storage.closing().getOrDefault(id, BigFraction.ZERO), BigFraction::add);
    }

    /**
     * The plan that the search finds, its packs held and the rest proved; empty when it finds none.
     *
     * @param chosen the model that packs are chosen with
     * @param settled the same with the costs that blends are settled with, once packs are held
     */
    private Optional<Campaign> campaign(Draft chosen, Draft settled) {
        var model = chosen.ledger().model();
        if (!(planner.search(model, limit) instanceof Found found)
                || !(planner.verdict(settled.ledger().model().holding(found.values())) instanceof Optimum optimum)) {
            return Optional.empty();
        }
        var point = optimum.point();
        var plans = new ArrayList<PurchasePlan>();
        for (int t = 0; t < periods.size(); t++) {
            plans.add(plan(settled, t, point));
        }
        return Optional.of(new Campaign(plans, model.relaxed().costAt(point), found.bound(), found.finished()));
    }

    private PurchasePlan plan(Draft draft, int t, List<BigFraction> point) {
        var purchase = draft.purchases().get(t);
        var lines = lines(purchase, point);
        var store = ingredients().stream()
                .map(id -> stock(id, purchase, point, lines, offers(t, id)))
                .toList();
        var kept = store.stream().map(PurchasePlan.Stock::left).reduce(BigFraction.ZERO, BigFraction::add);
        return new PurchasePlan(
                periods.get(t).name(),
                lines,
                purchase.ordered(point).stream()
                        .map(supplier -> new PurchasePlan.Order(room.termsOf(supplier), goods(supplier, lines)))
                        .toList(),
                store,
                blends(draft.offsets().isEmpty() ? null : draft.offsets().get(t), t, point),
                kept.multiply(storage.costPerKg()));
    }

    private List<Blend> blends(@Nullable List<Integer> offsets, int t, List<BigFraction> point) {
        if (offsets == null) {
            return periods.get(t).products().stream()
                    .map(product -> product.best().blend())
                    .toList();
        }
        var blends = new ArrayList<Blend>();
        for (int p = 0; p < offsets.size(); p++) {
            blends.add(recipes.get(t).get(p).blendAt(point, offsets.get(p)));
        }
        return blends;
    }

    private static List<PurchasePlan.Line> lines(PurchaseModel purchase, List<BigFraction> point) {
        var lines = new ArrayList<PurchasePlan.Line>();
        purchase.bought(point).forEach((offer, packs) -> {
            if (packs.signum() > 0) {
                var kilograms = packs.multiply(PurchaseModel.kilograms(offer));
                lines.add(new PurchasePlan.Line(offer, packs, kilograms, kilograms.multiply(offer.pricePerKg())));
            }
        });
        return lines;
    }

    private static BigFraction goods(String supplier, List<PurchasePlan.Line> lines) {
        return lines.stream()
                .filter(line -> line.offer().supplier().equals(supplier))
                .map(PurchasePlan.Line::money)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    private static PurchasePlan.Stock stock(
            String id,
            PurchaseModel purchase,
            List<BigFraction> point,
            List<PurchasePlan.Line> lines,
            List<Offer> offers) {
        var bought = BigFraction.ZERO;
        var paid = BigFraction.ZERO;
        for (var line : lines) {
            if (line.offer().ingredient().equals(id)) {
                bought = bought.add(line.kilograms());
                paid = paid.add(line.money());
            }
        }
        var left = purchase.left(id, point);
        var wasted = purchase.wasted(id, point);
        var before = purchase.carried(id, point);
        return new PurchasePlan.Stock(
                id,
                before,
                bought,
                before.add(bought).subtract(left).subtract(wasted),
                wasted,
                left,
                bought.signum() == 0 ? PurchaseModel.price(offers) : paid.divide(bought));
    }
}
