package panade.assemble;

import org.jspecify.annotations.Nullable;
import panade.cost.FullCost;
import panade.cost.OptionalSections;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Costs;
import panade.result.FullCostResult;
import panade.result.FullCostResult.BreakEven;
import panade.result.FullCostResult.Making;
import panade.result.FullCostResult.Size;

/** Makes the full cost of a result. */
final class FullCosts {
    private FullCosts() {}

    /** Null when the brief states nothing beside the ingredients. */
    static @Nullable FullCostResult of(Brief brief, Blend blend, OptionalSections.@Nullable BreakEven asked) {
        return FullCost.isStated(brief)
                ? result(FullCost.of(brief, blend), asked, brief.practice().costs())
                : null;
    }

    private static FullCostResult result(
            FullCost full, OptionalSections.@Nullable BreakEven asked, @Nullable Costs costs) {
        return new FullCostResult(
                full.ingredients(),
                full.packedIngredients(),
                full.labour(),
                full.packaging(),
                full.overhead(),
                full.packed(),
                full.cookedPart(),
                full.cooked(),
                full.perServing(),
                full.sizes().stream()
                        .map(size -> new Size(size.batch().text(), size.packed()))
                        .toList(),
                asked == null ? null : breakEven(full, asked),
                full.packedIngredients().subtract(full.ingredients()),
                full.serving(),
                costs == null ? null : making(costs));
    }

    private static BreakEven breakEven(FullCost full, OptionalSections.BreakEven asked) {
        return new BreakEven(
                full.breakEven(asked.fixedMonthly(), asked.pricePerKg()), asked.fixedMonthly(), asked.pricePerKg());
    }

    private static Making making(Costs costs) {
        return new Making(costs.processLoss(), costs.minutes(), costs.minutesPerLb(), costs.perHour());
    }
}
