package panade.buy;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A plan over all periods.
 *
 * @param periods one plan for each
 * @param objective what was made least: cash less what is left at the end is worth
 * @param bound below which that cannot be: the search's own word, or proved where packs need not be whole; null where
 *     none is known
 * @param finished whether the search says that nothing better exists, and its bound agrees
 */
public record MultiPeriodPlan(
        List<PurchasePlan> periods,
        BigFraction objective,
        @Nullable BigFraction bound,
        boolean finished) {
    public MultiPeriodPlan {
        periods = List.copyOf(periods);
    }

    /**
     * How far above the best plan this one may be, as a part of its cash; nothing when the search finished, empty where
     * that is not known.
     */
    public Optional<BigFraction> gap() {
        if (finished) {
            return Optional.of(BigFraction.ZERO);
        }
        if (bound == null || cash().signum() == 0) {
            return Optional.empty();
        }
        var above = objective.subtract(bound);
        return Optional.of(above.signum() <= 0 ? BigFraction.ZERO : above.divide(cash()));
    }

    /** Money paid in all. */
    public BigFraction cash() {
        return sum(PurchasePlan::cash);
    }

    /** Money paid for goods. */
    public BigFraction goodsMoney() {
        return sum(PurchasePlan::goods);
    }

    /** Money paid for delivery and for storage between periods. */
    public BigFraction deliveryAndStorage() {
        return sum(PurchasePlan::delivery).add(sum(PurchasePlan::storage));
    }

    /** What was on the shelf at first, at what such goods cost. */
    public BigFraction wasOnShelf() {
        return periods.get(0).wasOnShelf();
    }

    /** What is thrown away because it would not keep, at what was paid for it. */
    public BigFraction wasted() {
        return sum(PurchasePlan::wasted);
    }

    /** Money for what goes into the bowls. */
    public BigFraction inBowl() {
        return sum(PurchasePlan::inBowl);
    }

    /** Money that is left on the shelf at the end. */
    public BigFraction onShelf() {
        return periods.get(periods.size() - 1).onShelf();
    }

    /** Goods to order, over all periods; what is there as it is needed does not count. */
    public int goods() {
        return periods.stream().mapToInt(PurchasePlan::goodsToOrder).sum();
    }

    /** Orders, over all periods. */
    public int orders() {
        return (int) periods.stream()
                .flatMap(plan -> plan.orders().stream())
                .filter(PurchasePlan.Order::placed)
                .count();
    }

    /** The lines of all orders. */
    public Stream<PurchasePlan.Line> lines() {
        return periods.stream().flatMap(plan -> plan.lines().stream());
    }

    private BigFraction sum(Function<PurchasePlan, BigFraction> money) {
        return periods.stream().map(money).reduce(BigFraction.ZERO, BigFraction::add);
    }
}
