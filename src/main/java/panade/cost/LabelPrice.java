package panade.cost;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.LabelOrder;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;

/**
 * What keeping a printed label costs.
 *
 * @param freePerKg money per kilogram of the cheapest blend under any label
 * @param extraPerKg how much more the cheapest costs that keeps the label
 */
public record LabelPrice(BigFraction freePerKg, BigFraction extraPerKg) {

    /** The price of a label; empty when the brief keeps none. */
    public static Optional<LabelPrice> of(Planner planner, Blended kept) {
        if (kept.asked().practice().sameLabel() == null) {
            return Optional.empty();
        }
        var cost = kept.blend().costPerKg();
        return planner.cheapest(LabelOrder.free(kept.asked()))
                .orUndecided()
                .map(free -> new LabelPrice(free.costPerKg(), cost.subtract(free.costPerKg())));
    }
}
