package panade.buy;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.purchase.Offer;
import panade.domain.purchase.StoreRoom;
import panade.model.LinearForm;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/**
 * What to order in one period so that the store room holds all that is needed: whole packs, smallest orders, minimum
 * order values and delivery charges. What is left goes on to the next period.
 */
final class PurchaseModel {
    private final ModelBuilder ledger;
    private final StoreRoom room;
    private final @Nullable PurchaseModel before;
    private final LeftoverWorth worth;
    private final BigFraction storing;
    private final Map<Offer, Integer> bought = new LinkedHashMap<>();
    private final Map<String, Integer> ordering = new TreeMap<>();
    private final Map<String, Integer> left = new TreeMap<>();
    private final Map<String, Integer> wasted = new TreeMap<>();
    private final Map<String, Need> needs = new TreeMap<>();
    private final Map<String, BigFraction> prices = new TreeMap<>();

    /**
     * The purchases of a period.
     *
     * @param before the period before; null for the first, which begins with what is on hand
     * @param worth what a leftover counts for
     * @param storing money for each kilogram that is left
     */
    PurchaseModel(
            ModelBuilder ledger,
            StoreRoom room,
            @Nullable PurchaseModel before,
            LeftoverWorth worth,
            BigFraction storing) {
        this.ledger = ledger;
        this.room = room;
        this.before = before;
        this.worth = worth;
        this.storing = storing;
    }

    /**
     * What is needed of an ingredient and what can be bought of it.
     *
     * @param fixed kilograms as bought that are needed in any case
     * @param form kilograms as bought by column of what is made
     * @param mostUsed no plan uses more than that in the period
     * @param most no plan buys more than that at once, but to fill up an order
     * @param spoils whether some of it may have to be thrown away
     */
    record Need(
            String ingredient,
            BigFraction fixed,
            LinearForm form,
            BigFraction mostUsed,
            BigFraction most,
            boolean spoils) {}

    void add(Need need, List<Offer> offers) {
        var id = need.ingredient();
        needs.put(id, need);
        var balance = need.form().negated();
        for (var offer : offers) {
            balance = balance.plus(column(offer, need), kilograms(offer));
        }
        prices.put(id, price(offers));
        int leftover = ledger.column("left " + id, storing.subtract(worthPerKg(id)));
        left.put(id, leftover);
        balance = balance.plus(leftover, BigFraction.ONE.negate());
        if (need.spoils()) {
            int waste = ledger.column("waste " + id, BigFraction.ZERO);
            wasted.put(id, waste);
            balance = balance.plus(waste, BigFraction.ONE.negate());
        }
        balance = balance.plus(storedForm(id));
        ledger.row(new Row("store " + id, balance, Sense.EQUAL, need.fixed().subtract(storedKg(id))));
    }

    /** What a kilogram of an ingredient that is left counts for. */
    BigFraction worthPerKg(String id) {
        return worth.of(id).multiply(prices.getOrDefault(id, BigFraction.ZERO));
    }

    /** What the period begins with where that is open: what the period before leaves. */
    LinearForm storedForm(String id) {
        return before == null ? LinearForm.ZERO : LinearForm.of(before.leftColumn(id), BigFraction.ONE);
    }

    /** Kilograms that the period begins with where that is known: in the first. */
    BigFraction storedKg(String id) {
        return before == null ? room.onHand(id) : BigFraction.ZERO;
    }

    /** What a kilogram is reckoned at: the lowest price at which it can be had. */
    static BigFraction price(List<Offer> offers) {
        return offers.stream()
                .map(Offer::pricePerKg)
                .min(Comparator.naturalOrder())
                .orElse(BigFraction.ZERO);
    }

    /** Kilograms in one step of buying: a pack, or one kilogram where any weight is sold. */
    static BigFraction kilograms(Offer offer) {
        var pack = offer.pack();
        return pack == null ? BigFraction.ONE : pack.base();
    }

    private int column(Offer offer, Need need) {
        var step = kilograms(offer);
        var cost = offer.pricePerKg().multiply(step);
        var name = "packs " + offer.ingredient();
        int column = offer.pack() == null ? ledger.column(name, cost) : ledger.wholeColumn(name, cost);
        bought.put(offer, column);
        var minimum =
                offer.minimum() == null ? BigFraction.ZERO : offer.minimum().base();
        var most = need.most().add(minimum).add(step).add(filler(offer));
        var available = offer.available();
        if (available != null) {
            ledger.row(new Row("available", Map.of(column, step), Sense.AT_MOST, available.base()));
        }
        addOrder(offer, column, step, most);
        // a minimum of a pack or less is met by any pack; what is sold by weight can always be too little
        if (minimum.signum() > 0 && (offer.pack() == null || minimum.compareTo(step) > 0)) {
            addMinimum(column, step, minimum, most);
        }
        return column;
    }

    /** A supplier who asks nothing of an order needs no switch for one. */
    private void addOrder(Offer offer, int column, BigFraction step, BigFraction most) {
        var terms = room.termsOf(offer.supplier());
        if (terms.delivery().signum() > 0 || terms.minimumOrder().signum() > 0) {
            int order = ordering.computeIfAbsent(
                    offer.supplier(), supplier -> ledger.newSwitch("order " + supplier, terms.delivery()));
            ledger.row(new Row("order", Map.of(column, step, order, most.negate()), Sense.AT_MOST, BigFraction.ZERO));
        }
    }

    private void addMinimum(int column, BigFraction step, BigFraction minimum, BigFraction most) {
        int some = ledger.newSwitch("some", BigFraction.ZERO);
        ledger.row(new Row("some", Map.of(column, step, some, most.negate()), Sense.AT_MOST, BigFraction.ZERO));
        ledger.row(new Row("least", Map.of(column, step, some, minimum.negate()), Sense.AT_LEAST, BigFraction.ZERO));
    }

    /** Kilograms that would make up a supplier's minimum order alone. */
    private BigFraction filler(Offer offer) {
        var least = room.termsOf(offer.supplier()).minimumOrder();
        return offer.pricePerKg().signum() == 0 ? BigFraction.ZERO : least.divide(offer.pricePerKg());
    }

    /** Adds the minimum orders, once all offers are in. */
    void finish() {
        ordering.forEach((supplier, column) -> {
            var least = room.termsOf(supplier).minimumOrder();
            if (least.signum() > 0) {
                ledger.row(
                        new Row("minimum order", worthOf(supplier, column, least), Sense.AT_LEAST, BigFraction.ZERO));
            }
        });
    }

    private LinearForm worthOf(String supplier, int column, BigFraction least) {
        var form = LinearForm.of(column, least.negate());
        for (var each : bought.entrySet()) {
            var offer = each.getKey();
            if (offer.supplier().equals(supplier)) {
                form = form.plus(each.getValue(), offer.pricePerKg().multiply(kilograms(offer)));
            }
        }
        return form;
    }

    /** The column of what is left of an ingredient. */
    int leftColumn(String ingredient) {
        return Objects.requireNonNull(left.get(ingredient));
    }

    /** What the period needs of an ingredient. */
    Need need(String ingredient) {
        return Objects.requireNonNull(needs.get(ingredient));
    }

    /** Offers of an ingredient. */
    List<Offer> offersOf(String ingredient) {
        return bought.keySet().stream()
                .filter(offer -> offer.ingredient().equals(ingredient))
                .toList();
    }

    /** The column of what is bought of an offer. */
    int column(Offer offer) {
        return Objects.requireNonNull(bought.get(offer));
    }

    /** Ingredients that are bought or kept. */
    Set<String> ingredients() {
        return left.keySet();
    }

    /** Steps bought of each offer at a point. */
    Map<Offer, BigFraction> bought(List<BigFraction> point) {
        var steps = new LinkedHashMap<Offer, BigFraction>();
        bought.forEach((offer, column) -> steps.put(offer, point.get(column)));
        return steps;
    }

    /** Suppliers that goods come from at a point. */
    Set<String> ordered(List<BigFraction> point) {
        var suppliers = new TreeSet<String>();
        bought.forEach((offer, column) -> {
            if (point.get(column).signum() > 0) {
                suppliers.add(offer.supplier());
            }
        });
        return suppliers;
    }

    /** Kilograms of an ingredient that are there before anything is bought. */
    BigFraction carried(String ingredient, List<BigFraction> point) {
        return before == null ? room.onHand(ingredient) : before.left(ingredient, point);
    }

    /** Kilograms of an ingredient that are thrown away at a point. */
    BigFraction wasted(String ingredient, List<BigFraction> point) {
        var column = wasted.get(ingredient);
        return column == null ? BigFraction.ZERO : point.get(column);
    }

    /** Kilograms of an ingredient that are left at a point. */
    BigFraction left(String ingredient, List<BigFraction> point) {
        return point.get(leftColumn(ingredient));
    }
}
