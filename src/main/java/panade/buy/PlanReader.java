package panade.buy;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.PurchaseModels.Draft;
import panade.domain.Blend;
import panade.domain.purchase.Offer;

/** Reads the plan of each period from a point of a model. */
record PlanReader(PurchaseModels drafts, Draft draft, List<BigFraction> point) {
    List<PurchasePlan> plans() {
        var plans = new ArrayList<PurchasePlan>();
        for (int t = 0; t < drafts.periods().size(); t++) {
            plans.add(plan(t));
        }
        return plans;
    }

    private PurchasePlan plan(int t) {
        var purchase = draft.purchases().get(t);
        var lines = lines(purchase, point);
        var store = drafts.ingredients().stream()
                .map(id -> stock(id, purchase, point, lines, drafts.offers(t, id)))
                .toList();
        var kept = store.stream().map(PurchasePlan.Stock::left).reduce(BigFraction.ZERO, BigFraction::add);
        return new PurchasePlan(
                drafts.periods().get(t).name(),
                lines,
                purchase.ordered(point).stream()
                        .map(supplier -> new PurchasePlan.Order(
                                drafts.room().termsOf(supplier),
                                goods(supplier, lines),
                                !drafts.room().needsNoOrder(supplier)))
                        .toList(),
                store,
                blends(t),
                kept.multiply(drafts.storage().costPerKg()));
    }

    private List<Blend> blends(int t) {
        if (draft.offsets().isEmpty()) {
            return drafts.periods().get(t).products().stream()
                    .map(product -> product.best().blend())
                    .toList();
        }
        var offsets = draft.offsets().get(t);
        var blends = new ArrayList<Blend>();
        for (int p = 0; p < offsets.size(); p++) {
            blends.add(drafts.recipes().get(t).get(p).blendAt(point, offsets.get(p)));
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
