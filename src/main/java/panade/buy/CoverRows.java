package panade.buy;

import java.util.List;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearForm;
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
        var form = LinearForm.ZERO;
        var fixed = BigFraction.ZERO;
        var most = BigFraction.ZERO;
        for (int t = first; t < purchases.size(); t++) {
            var need = purchases.get(t).need(id);
            form = form.minus(need.form());
            fixed = fixed.add(need.fixed());
            most = most.add(need.mostUsed());
            cover(id, first, t, form, fixed, most);
        }
    }

    private void cover(String id, int first, int last, LinearForm used, BigFraction fixed, BigFraction most) {
        var form = used.plus(purchases.get(first).storedForm(id));
        boolean stronger = false;
        for (int t = first; t <= last; t++) {
            for (var offer : purchases.get(t).offersOf(id)) {
                var step = PurchaseModel.kilograms(offer);
                boolean large = offer.pack() != null && step.compareTo(most) > 0;
                stronger |= large;
                form = form.plus(purchases.get(t).column(offer), large ? most : step);
            }
        }
        if (stronger) {
            var stored = purchases.get(first).storedKg(id);
            ledger.row(new Row("cover " + id, form, Sense.AT_LEAST, fixed.subtract(stored)));
        }
    }
}
