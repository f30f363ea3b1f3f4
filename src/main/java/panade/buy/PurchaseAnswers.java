package panade.buy;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.domain.purchase.OrderTerms;

/**
 * Three ways to buy for the same products.
 *
 * @param periods what is made when
 * @param exact money if any weight could be bought, delivery, minimum orders and storage aside
 * @param keeping the cheapest blends by weight, rounded up to packs
 * @param adapting blends that may change to suit packs, leftovers counted at what they are worth
 * @param saving the same, leftovers counted as nothing
 * @param smallOrders what would fall short of a minimum order if goods were bought by exact weight
 */
public record PurchaseAnswers(
        List<Period> periods,
        BigFraction exact,
        PlanSearch keeping,
        PlanSearch adapting,
        PlanSearch saving,
        List<SmallOrder> smallOrders) {
    public PurchaseAnswers {
        periods = List.copyOf(periods);
        smallOrders = List.copyOf(smallOrders);
    }

    /**
     * An order that would not reach its supplier's minimum.
     *
     * @param goods money for goods, bought by exact weight for the cheapest blends of a period
     */
    public record SmallOrder(String period, OrderTerms terms, BigFraction goods) {
        /** Money that is missing. */
        public BigFraction missing() {
            return terms.minimumOrder().subtract(goods);
        }
    }

    /** What may not be meant in any of the products' briefs. */
    public List<Remark> remarks() {
        return Brief.remarksOn(periods.stream()
                .flatMap(period -> period.products().stream())
                .map(product -> product.best().asked())
                .toList());
    }

    /** The plan with the cheapest blends by weight; empty when none was found. */
    public Optional<MultiPeriodPlan> frozen() {
        return keeping.plan();
    }

    /** The plan with blends that suit packs; empty when none was found. */
    public Optional<MultiPeriodPlan> adapted() {
        return adapting.plan();
    }

    /** The plan that takes the least cash; empty when none was found. */
    public Optional<MultiPeriodPlan> leastCash() {
        return saving.plan();
    }

    /** The products of the first period, which are those of every period. */
    public List<Product> products() {
        return periods.get(0).products();
    }
}
