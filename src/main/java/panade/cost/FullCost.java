package panade.cost;

import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Costs;
import panade.domain.purchase.Shelf;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * What a kilogram costs with all that the brief states beside the ingredients.
 *
 * @param ingredients money per kilogram weighed in
 * @param packedIngredients the same per kilogram that gets packed, after what is lost in making
 * @param labour money per packed kilogram at the brief's batch
 * @param packaging money per packed kilogram
 * @param overhead money per packed kilogram
 * @param cookedPart cooked kilograms per raw kilogram; null when nothing is said of cooking or some value is not known
 * @param serving weight of a serving in kilograms; null when not stated
 * @param sizes what a packed kilogram costs by weight of the batch in kilograms, at the same blend
 */
public record FullCost(
        BigFraction ingredients,
        BigFraction packedIngredients,
        BigFraction labour,
        BigFraction packaging,
        BigFraction overhead,
        @Nullable BigFraction cookedPart,
        @Nullable BigFraction serving,
        List<Size> sizes) {
    /** Numbers of the brief's own unit of weight at which the cost is told; the brief's batch is told besides. */
    private static final List<Integer> TOLD = List.of(1, 5, 20, 40, 60);

    private static final Costs NONE = new Costs(
            BigFraction.ZERO, BigFraction.ZERO, BigFraction.ZERO, BigFraction.ZERO, BigFraction.ZERO, BigFraction.ZERO);

    /** What a packed kilogram costs when that much is made at once. */
    public record Size(Quantity batch, BigFraction packed) {}

    /** Whether the brief says anything that makes a full cost differ from that of the ingredients. */
    public static boolean isStated(Brief brief) {
        var practice = brief.practice();
        return practice.costs() != null || practice.cookedWeight() != null || practice.serving() != null;
    }

    /** The full cost of a blend. */
    public static FullCost of(Brief brief, Blend blend) {
        var costs = Objects.requireNonNullElse(brief.practice().costs(), NONE);
        var serving = brief.practice().serving();
        var ingredients = blend.rawCostPerKg();
        return new FullCost(
                ingredients,
                costs.perPacked(ingredients),
                costs.labourPerPackedKg(brief.batch().base()),
                costs.packagingPerKg(),
                costs.overheadPerKg(),
                cookedPart(brief, blend),
                serving == null ? null : serving.base(),
                costs.minutes().signum() == 0 ? List.of() : sizes(brief, costs, ingredients));
    }

    private static @Nullable BigFraction cookedPart(Brief brief, Blend blend) {
        var cooked = brief.practice().cookedWeight();
        boolean known = cooked != null
                && blend.lines().stream().allMatch(line -> cooked.isKnown(line.use(), brief.composition()));
        return known && cooked != null ? new Audit(brief, blend).amount(cooked) : null;
    }

    private static List<Size> sizes(Brief brief, Costs costs, BigFraction ingredients) {
        // nobody makes a few grams at once: what is weighed in grams is told by kilograms
        var unit = brief.batch().unit().equals(Unit.GRAM)
                ? Unit.of("kg")
                : brief.batch().unit();
        var batches = new TreeMap<BigFraction, Quantity>();
        batches.put(brief.batch().base(), brief.batch());
        for (int number : TOLD) {
            var batch = Quantity.of(BigFraction.of(number), unit, number + " " + unit.symbol());
            batches.putIfAbsent(batch.base(), batch);
        }
        return batches.values().stream()
                .map(batch -> new Size(batch, costs.packedPerKg(ingredients, batch.base())))
                .toList();
    }

    /** Money per packed kilogram, all in. */
    public BigFraction packed() {
        return packedIngredients.add(labour).add(packaging).add(overhead);
    }

    /** Money per cooked kilogram, all in; null when the cookedPart is not known. */
    public @Nullable BigFraction cooked() {
        return cookedPart == null ? null : packed().divide(cookedPart);
    }

    /** Money per serving, all in; null when no serving is stated. */
    public @Nullable BigFraction perServing() {
        return serving == null ? null : packed().multiply(serving);
    }

    /**
     * Kilograms to sell a month before fixed costs are paid.
     *
     * @param fixedMonthly money that is paid a month whatever is made; it stands in for the overhead per kilogram
     * @param pricePerKg what the maker is paid
     * @return null when each kilogram sold loses money
     */
    public @Nullable BigFraction breakEven(BigFraction fixedMonthly, BigFraction pricePerKg) {
        var earned = pricePerKg.subtract(packed().subtract(overhead));
        return earned.signum() > 0 ? fixedMonthly.divide(earned) : null;
    }

    /** What the maker is paid where all margins but the last, which is the maker's own, are others'. */
    public static BigFraction paidPerKg(Shelf shelf) {
        var paid = shelf.price().perKg();
        for (var margin : shelf.margins().subList(0, Math.max(0, shelf.margins().size() - 1))) {
            paid = paid.multiply(BigFraction.ONE.subtract(margin));
        }
        return paid;
    }
}
