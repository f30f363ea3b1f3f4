package panade.buy;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.purchase.Storage;
import panade.model.LinearForm;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/** What the store room holds at most, must hold at the end, and how long goods may wait in it. */
record StorageRows(ModelBuilder ledger, List<PurchaseModel> purchases, Storage storage) {
    void add() {
        storage.most()
                .forEach((id, most) -> purchases.stream()
                        .filter(purchase -> purchase.ingredients().contains(id))
                        .forEach(purchase -> limit(purchase, id, Sense.AT_MOST, most)));
        var last = purchases.get(purchases.size() - 1);
        storage.closing().forEach((id, least) -> {
            if (last.ingredients().contains(id)) {
                limit(last, id, Sense.AT_LEAST, least);
            }
        });
        storage.keeps().forEach(this::addKeeps);
    }

    private void limit(PurchaseModel purchase, String id, Sense sense, BigFraction right) {
        ledger.row(new Row("store " + id, LinearForm.of(purchase.leftColumn(id), BigFraction.ONE), sense, right));
    }

    /** What is left must be used up within so many periods, the oldest first. */
    private void addKeeps(String id, int periods) {
        for (int t = 0; t + periods < purchases.size(); t++) {
            if (purchases.get(t).ingredients().contains(id)) {
                var form = LinearForm.of(purchases.get(t).leftColumn(id), BigFraction.ONE);
                var fixed = BigFraction.ZERO;
                for (int later = t + 1; later <= t + periods; later++) {
                    var need = purchases.get(later).need(id);
                    form = form.minus(need.form());
                    fixed = fixed.add(need.fixed());
                }
                ledger.row(new Row("keeps " + id, form, Sense.AT_MOST, fixed));
            }
        }
    }
}
