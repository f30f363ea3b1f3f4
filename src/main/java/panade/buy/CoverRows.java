package panade.buy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/**
 * Rows that no plan in whole packs breaks and that keep plans in parts of packs from looking cheap: over any stretch of
 * periods, a pack larger than all that can be used in it covers no more than that. They are the mixed-integer rounding
 * of the store's balance (Nemhauser and Wolsey, "Integer and Combinatorial Optimization", 1988, ch. II.1).
 */
record CoverRows(ModelBuilder ledger, List<PurchaseModel> purchases) {
    void add() {
        var ids = new TreeSet<String>();
        purchases.forEach(purchase -> ids.addAll(purchase.ingredients()));
        for (var id : ids) {
            for (int first = 0; first < purchases.size(); first++) {
                add(id, first);
            }
        }
    }

    /** The stretches that begin with a period: all that they need comes from store or from packs bought in them. */
    private void add(String id, int first) {
        var form = new HashMap<Integer, BigFraction>();
        var fixed = BigFraction.ZERO;
        var most = BigFraction.ZERO;
        for (int t = first; t < purchases.size(); t++) {
            var need = purchases.get(t).need(id);
            need.form().forEach((j, amount) -> form.merge(j, amount.negate(), BigFraction::add));
            fixed = fixed.add(need.fixed());
            most = most.add(need.mostUsed());
            cover(id, first, t, Map.copyOf(form), fixed, most);
        }
    }

    private void cover(
            String id, int first, int last, Map<Integer, BigFraction> used, BigFraction fixed, BigFraction most) {
        var form = new HashMap<>(used);
        boolean stronger = false;
        for (int t = first; t <= last; t++) {
            for (var offer : purchases.get(t).offersOf(id)) {
                var step = PurchaseModel.kilograms(offer);
                boolean large = offer.pack() != null && step.subtract(most).signum() > 0;
                stronger |= large;
                form.put(purchases.get(t).column(offer), large ? most : step);
            }
        }
        if (stronger) {
            var stored = purchases.get(first).addStored(id, form);
            ledger.row(new Row("cover " + id, form, Sense.AT_LEAST, fixed.subtract(stored)));
        }
    }
}
