package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Three ways to buy for the same products.
 *
 * @param outcome of the search for the plan that is advised
 * @param searches what came of each search
 * @param exactWeights money if any weight could be bought, delivery, minimum orders and storage aside
 * @param frozen the cheapest blends by weight, rounded up to packs; null when no plan was found
 * @param adapted the plan that is advised, its blends suited to packs; null when none was found
 * @param leastCash the same with leftovers counted as nothing; null when none was found
 * @param smallOrders what would fall short of a minimum order if goods were bought by exact weight
 * @param sheets to weigh the blends by; null where none were asked for
 * @param shortages goods of which all sheets together weigh out more than the plan has; null where there are no sheets
 * @param remarks on the briefs
 * @param order for what, and how leftovers count
 * @param onHand what is on the shelf, the earliest date first
 * @param caution what to mind about all that is made
 */
public record BuyResult(
        @JsonUnwrapped Search outcome,
        Searches searches,
        BigFraction exactWeights,
        @Nullable Plan frozen,
        @Nullable Plan adapted,
        @Nullable Plan leastCash,
        List<SmallOrder> smallOrders,
        @JsonInclude(Include.NON_NULL) @Nullable List<BatchResult.Planned> sheets,
        @JsonInclude(Include.NON_NULL) @Nullable List<Shortage> shortages,
        List<RemarkLine> remarks,
        @JsonIgnore Order order,
        @JsonIgnore List<OnHand> onHand,
        @JsonIgnore Caution caution) {
    public BuyResult {
        smallOrders = List.copyOf(smallOrders);
        remarks = List.copyOf(remarks);
        onHand = List.copyOf(onHand);
    }

    /** The plans that were found. */
    public Stream<Plan> plans() {
        return Stream.of(frozen, adapted, leastCash).flatMap(Stream::ofNullable);
    }

    /** The periods of the plan that is advised; empty when none was found. */
    public List<Period> advised() {
        return adapted == null ? List.of() : adapted.periods();
    }

    /** What came of a search. */
    public enum Status {
        PLANNED,
        INFEASIBLE,
        UNDECIDED
    }

    /**
     * A search for a plan.
     *
     * @param proved whether it was proved in exact fractions that there is none, or is the search's own word; null
     *     unless there is none
     * @param reason why it came to nothing, one clause; null unless it did
     * @param asked whether there was a solver to ask; where there was none, more time does not help
     */
    public record Search(
            Status status,
            @JsonInclude(Include.NON_NULL) @Nullable Boolean proved,
            @JsonInclude(Include.NON_NULL) @Nullable String reason,
            @JsonIgnore boolean asked) {}

    /** The three searches. */
    public record Searches(Search frozen, Search adapted, Search leastCash) {}

    /**
     * A plan over all periods; money.
     *
     * @param cash paid in all
     * @param goodsMoney paid for goods
     * @param wasOnShelf what was there at first, at what such goods cost
     * @param inBowl what goes into the bowls
     * @param wasted what is thrown away because it would not keep
     * @param onShelf what is left at the end
     * @param gap how far above the best plan this one may be, as a part of its cash; null where that is not known
     * @param finished whether the search says that nothing better exists, and its bound agrees
     * @param goods how many goods are ordered
     * @param orders how many orders are placed
     */
    public record Plan(
            BigFraction cash,
            BigFraction goodsMoney,
            BigFraction deliveryAndStorage,
            BigFraction wasOnShelf,
            BigFraction inBowl,
            BigFraction wasted,
            BigFraction onShelf,
            @Nullable BigFraction gap,
            boolean finished,
            List<Period> periods,
            @JsonIgnore int goods,
            @JsonIgnore int orders) {
        public Plan {
            periods = List.copyOf(periods);
        }
    }

    /**
     * What to order in one period.
     *
     * @param period its name; empty when there is only one
     * @param cash money paid
     * @param storage money for keeping what is left
     * @param blends of each product, in the order in which they were asked for
     */
    public record Period(
            String period,
            BigFraction cash,
            BigFraction storage,
            List<SupplierOrder> orders,
            List<Line> lines,
            List<Stock> store,
            List<List<Use>> blends) {
        public Period {
            orders = List.copyOf(orders);
            lines = List.copyOf(lines);
            store = List.copyOf(store);
            blends = List.copyOf(blends);
        }
    }

    /**
     * What comes from one supplier; money.
     *
     * @param placed whether somebody has to order it; false for what is there as it is needed
     */
    public record SupplierOrder(
            String supplier,
            BigFraction goods,
            BigFraction delivery,
            BigFraction minimumOrder,
            int leadDays,
            boolean placed) {}

    /**
     * Goods of one offer.
     *
     * @param pack as the offer states it; null where any weight is sold
     * @param packs how many; null where any weight is sold
     * @param packKilograms what a pack holds; null where any weight is sold
     */
    public record Line(
            String supplier,
            String ingredient,
            @Nullable String pack,
            @Nullable BigFraction packs,
            BigFraction kilograms,
            BigFraction money,
            @JsonIgnore String name,
            @JsonIgnore @Nullable BigFraction packKilograms,
            @JsonIgnore BigFraction pricePerKg) {}

    /**
     * An ingredient in the store room; weights in kilograms as bought.
     *
     * @param before what is there before anything is bought
     * @param wasted what is thrown away because it would not keep
     * @param paidPerKg what a kilogram of it cost, or is reckoned at where none was bought
     */
    public record Stock(
            String ingredient,
            BigFraction before,
            BigFraction bought,
            BigFraction used,
            BigFraction wasted,
            BigFraction left,
            @JsonIgnore String name,
            @JsonIgnore BigFraction paidPerKg) {}

    /** Some of an ingredient in a blend; its share is of the batch, from whoever sells it. */
    public record Use(
            String ingredient,
            String stage,
            BigFraction share,
            @JsonIgnore String name) {}

    /**
     * An order that would not reach its supplier's minimum; money.
     *
     * @param goods bought by exact weight for the cheapest blends of a period
     * @param missing to the minimum
     */
    public record SmallOrder(String period, String supplier, BigFraction goods, BigFraction missing) {}

    /** Goods that are missing, in kilograms as bought. */
    public record Shortage(
            String period,
            String ingredient,
            BigFraction kilograms,
            @JsonIgnore String name) {}

    /**
     * For what is bought.
     *
     * @param periods how many there are
     * @param currency empty where none is stated
     * @param unit in which the kitchen keeps its stock
     * @param unitKilograms what one of that unit weighs
     * @param worth the part of its price that a leftover counts for
     * @param worths the same of ingredients for which it was told, in order of id
     */
    public record Order(
            List<Product> products,
            int periods,
            String currency,
            String unit,
            BigFraction unitKilograms,
            BigFraction worth,
            List<Worth> worths) {
        public Order {
            products = List.copyOf(products);
            worths = List.copyOf(worths);
        }
    }

    /** A product and how much of it is made in the first period, as typed. */
    public record Product(String title, String amount) {}

    /** The part of its price that a leftover of an ingredient counts for. */
    public record Worth(String name, BigFraction part) {}

    /**
     * Some of an ingredient that is on the shelf.
     *
     * @param bestBefore null where no date is told
     * @param past whether that date is past, so that it is not counted on
     * @param offered whether a supplier offers it for these products; no plan uses what none does
     * @param leftAtEnd kilograms of the ingredient at the end of the plan that is advised; null where it has none
     */
    public record OnHand(
            String name,
            BigFraction kilograms,
            @Nullable LocalDate bestBefore,
            boolean past,
            boolean offered,
            @Nullable BigFraction leftAtEnd) {}

    /**
     * What to mind.
     *
     * @param notes of the brief
     * @param allergens stated of anything that is used
     * @param notKnown names of ingredients of which none are stated
     */
    public record Caution(List<String> notes, List<String> allergens, List<String> notKnown) {}
}
