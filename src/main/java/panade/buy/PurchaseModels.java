package panade.buy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.PurchaseModel.Need;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.domain.purchase.Storage;
import panade.domain.purchase.StoreRoom;
import panade.model.LinearForm;

/**
 * Writes down what may be bought and made over all periods as one model with whole numbers.
 *
 * @param recipes by period and product
 */
record PurchaseModels(List<Period> periods, List<List<Recipe>> recipes, StoreRoom room, Storage storage) {
    /**
     * A model with the purchases of each period in it.
     *
     * @param offsets by period and product, the first column of its shares; empty where blends are kept
     */
    record Draft(ModelBuilder ledger, List<PurchaseModel> purchases, List<List<Integer>> offsets) {
        /** What plans come to in this model: cash less what is left at the end is worth. */
        BigFraction objective(List<PurchasePlan> plans) {
            var cash = plans.stream().map(PurchasePlan::cash).reduce(BigFraction.ZERO, BigFraction::add);
            return plans.get(plans.size() - 1).store().stream()
                    .map(stock -> stock.left()
                            .multiply(purchases.get(plans.size() - 1).worthPerKg(stock.ingredient())))
                    .reduce(cash, BigFraction::subtract);
        }
    }

    /** The cheapest blends by weight are kept. */
    Draft frozen(LeftoverWorth worth) {
        var draft = new Draft(new ModelBuilder(), new ArrayList<>(), List.of());
        for (int t = 0; t < periods.size(); t++) {
            var purchase = purchase(draft, t, worth);
            for (var id : ingredients()) {
                var fixed = periods.get(t).products().stream()
                        .map(product ->
                                product.asBought(id, product.best().blend().shareOf(id)))
                        .reduce(BigFraction.ZERO, BigFraction::add);
                purchase.add(new Need(id, fixed, LinearForm.ZERO, fixed, mostFrom(t, id), spoils(id)), offers(t, id));
            }
            purchase.finish();
        }
        new StorageRows(draft.ledger(), draft.purchases(), storage).add();
        return draft;
    }

    /** Blends may change to suit packs. */
    Draft adapted(LeftoverWorth worth) {
        var draft = new Draft(new ModelBuilder(), new ArrayList<>(), new ArrayList<>());
        for (int t = 0; t < periods.size(); t++) {
            var offsets = recipes.get(t).stream()
                    .map(recipe -> draft.ledger().addAll(recipe.model()))
                    .toList();
            draft.offsets().add(offsets);
            var purchase = purchase(draft, t, worth);
            for (var id : ingredients()) {
                purchase.add(
                        new Need(
                                id, BigFraction.ZERO, form(t, id, offsets), mostIn(t, id), mostFrom(t, id), spoils(id)),
                        offers(t, id));
            }
            purchase.finish();
        }
        new StorageRows(draft.ledger(), draft.purchases(), storage).add();
        if (worth.isNothing()) {
            // where leftovers keep their worth, parts of packs are nearly as dear as packs: these rows would only cost
            // time
            new CoverRows(draft.ledger(), draft.purchases()).add();
        }
        return draft;
    }

    private PurchaseModel purchase(Draft draft, int t, LeftoverWorth worth) {
        boolean last = t == periods.size() - 1;
        var before = t == 0 ? null : draft.purchases().get(t - 1);
        var purchase = new PurchaseModel(
                draft.ledger(), room, before, last ? worth : LeftoverWorth.NOTHING, storage.costPerKg());
        draft.purchases().add(purchase);
        return purchase;
    }

    /** What can be bought of an ingredient in a period. */
    List<Offer> offers(int t, String ingredient) {
        var offers = new LinkedHashMap<OfferId, Offer>();
        periods.get(t).products().stream()
                .flatMap(product -> product.best().asked().offersFor(ingredient).stream())
                .forEach(offer -> offers.putIfAbsent(offer.id(), offer));
        return List.copyOf(offers.values());
    }

    /** All that can be had in any period. */
    Set<String> ingredients() {
        var ids = new TreeSet<String>();
        periods.forEach(period -> period.products()
                .forEach(product -> ids.addAll(product.best().asked().candidates())));
        return ids;
    }

    /** Kilograms as bought by column. */
    private LinearForm form(int t, String id, List<Integer> offsets) {
        var form = LinearForm.ZERO;
        for (int p = 0; p < offsets.size(); p++) {
            var recipe = recipes.get(t).get(p);
            var bought = recipe.product().asBought(id, BigFraction.ONE);
            form = form.plus(recipe.share(id).scaled(bought).shifted(offsets.get(p)));
        }
        return form;
    }

    private boolean spoils(String id) {
        return storage.keeps().containsKey(id);
    }

    /** The most that a period can use. */
    private BigFraction mostIn(int t, String id) {
        return recipes.get(t).stream()
                .map(recipe -> recipe.product().asBought(id, recipe.most(id)))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** The most that can be used from a period on, or left at the very end. */
    private BigFraction mostFrom(int first, String id) {
        var most = storage.closing().getOrDefault(id, BigFraction.ZERO);
        for (int t = first; t < periods.size(); t++) {
            most = most.add(mostIn(t, id));
        }
        return most;
    }
}
