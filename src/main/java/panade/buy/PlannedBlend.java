package panade.buy;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Offer;

/** A product's blend in a plan, with the goods that the plan buys for it at what is paid for them. */
public final class PlannedBlend {
    private PlannedBlend() {}

    /**
     * The blend.
     *
     * @param brief of the product
     * @param index of the product
     */
    public static Blend of(PurchasePlan plan, Brief brief, int index) {
        var offers = new LinkedHashMap<String, Offer>();
        var lines = plan.blends().get(index).lines().stream()
                .map(line -> {
                    var id = line.use().ingredient();
                    var offer = offers.computeIfAbsent(id, ingredient -> bought(plan, brief, ingredient));
                    var cost = line.share().multiply(brief.costPerKg(offer));
                    return new Blend.Line(line.use(), offer, line.share(), cost);
                })
                .toList();
        return new Blend(lines, BigFraction.ONE);
    }

    /** The offer that most of an ingredient is bought of, at the mean of what is paid; what is on hand has any. */
    private static Offer bought(PurchasePlan plan, Brief brief, String ingredient) {
        var offer = plan.lines().stream()
                .filter(line -> line.offer().ingredient().equals(ingredient))
                .max(Comparator.comparing(PurchasePlan.Line::kilograms))
                .map(PurchasePlan.Line::offer)
                .orElseGet(() -> brief.offersFor(ingredient).get(0));
        var paid = paid(plan).getOrDefault(ingredient, offer.pricePerKg());
        return offer.withPrice(paid).withAvailable(null);
    }

    private static Map<String, BigFraction> paid(PurchasePlan plan) {
        var paid = new LinkedHashMap<String, BigFraction>();
        plan.store().forEach(stock -> paid.put(stock.ingredient(), stock.paidPerKg()));
        return paid;
    }
}
