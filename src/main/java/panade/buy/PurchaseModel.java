package panade.buy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Offer;
import panade.domain.StoreRoom;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;

/**
 * What to order so that a store room holds all that is needed: whole packs, smallest orders, minimum order values and
 * delivery charges. Needs are stated or left to columns of the caller's.
 */
final class PurchaseModel {
    private final StoreRoom room;
    private final BigFraction worth;
    private final List<Column> columns;
    private final List<Row> rows;
    private final Set<Integer> whole = new HashSet<>();
    private final Map<Offer, Integer> bought = new LinkedHashMap<>();
    private final Map<String, Integer> ordering = new TreeMap<>();
    private final Map<String, Integer> left = new TreeMap<>();

    /**
     * A model that begins with the columns and rows of what is made.
     *
     * @param worth what a leftover counts for, as a part of its price
     */
    PurchaseModel(LinearModel made, Set<Integer> wholeOfMade, StoreRoom room, BigFraction worth) {
        this.room = room;
        this.worth = worth;
        this.columns = new ArrayList<>(made.columns());
        this.rows = new ArrayList<>(made.rows());
        whole.addAll(wholeOfMade);
    }

    /**
     * What is needed of an ingredient and what can be bought of it.
     *
     * @param fixed kilograms as bought that are needed in any case
     * @param form kilograms as bought by column of what is made
     * @param most no plan needs more than that
     */
    record Need(String ingredient, BigFraction fixed, Map<Integer, BigFraction> form, BigFraction most) {}

    void add(Need need, List<Offer> offers) {
        var balance = new HashMap<Integer, BigFraction>();
        for (var offer : offers) {
            balance.put(column(offer, need), kilograms(offer));
        }
        need.form().forEach((j, amount) -> balance.merge(j, amount.negate(), BigFraction::add));
        int leftover = newColumn(
                "left " + need.ingredient(), worth.multiply(price(offers)).negate());
        left.put(need.ingredient(), leftover);
        balance.put(leftover, BigFraction.ONE.negate());
        var owed = need.fixed().subtract(room.onHand(need.ingredient()));
        rows.add(new Row("store " + need.ingredient(), balance, Sense.EQUAL, owed));
    }

    /** What a kilogram is reckoned at: the lowest price at which it can be had. */
    static BigFraction price(List<Offer> offers) {
        return offers.stream()
                .map(Offer::pricePerKg)
                .reduce((a, b) -> a.subtract(b).signum() <= 0 ? a : b)
                .orElse(BigFraction.ZERO);
    }

    /** Kilograms in one step of buying: a pack, or one kilogram where any weight is sold. */
    static BigFraction kilograms(Offer offer) {
        var pack = offer.pack();
        return pack == null ? BigFraction.ONE : pack.base();
    }

    private int column(Offer offer, Need need) {
        var step = kilograms(offer);
        int column = newColumn("packs " + offer.ingredient(), offer.pricePerKg().multiply(step));
        bought.put(offer, column);
        if (offer.pack() != null) {
            whole.add(column);
        }
        var minimum =
                offer.minimum() == null ? BigFraction.ZERO : offer.minimum().base();
        var most = need.most().add(minimum).add(step).add(filler(offer));
        var available = offer.available();
        if (available != null) {
            rows.add(new Row("available", Map.of(column, step), Sense.AT_MOST, available.base()));
        }
        rows.add(new Row(
                "order", Map.of(column, step, ordering(offer), most.negate()), Sense.AT_MOST, BigFraction.ZERO));
        if (minimum.subtract(step).signum() > 0) {
            addMinimum(column, step, minimum, most);
        }
        return column;
    }

    /** Kilograms that would make up a supplier's minimum order alone. */
    private BigFraction filler(Offer offer) {
        var least = room.termsOf(offer.supplier()).minimumOrder();
        return offer.pricePerKg().signum() == 0 ? BigFraction.ZERO : least.divide(offer.pricePerKg());
    }

    private void addMinimum(int column, BigFraction step, BigFraction minimum, BigFraction most) {
        int some = newSwitch("some");
        rows.add(new Row("some", Map.of(column, step, some, most.negate()), Sense.AT_MOST, BigFraction.ZERO));
        rows.add(new Row("least", Map.of(column, step, some, minimum.negate()), Sense.AT_LEAST, BigFraction.ZERO));
    }

    private int ordering(Offer offer) {
        return ordering.computeIfAbsent(offer.supplier(), supplier -> {
            int column = newSwitch("order " + supplier);
            columns.set(
                    column,
                    new Column("order " + supplier, room.termsOf(supplier).delivery()));
            return column;
        });
    }

    private int newSwitch(String name) {
        int column = newColumn(name, BigFraction.ZERO);
        whole.add(column);
        rows.add(MixedModel.limit(column, Sense.AT_MOST, BigInteger.ONE));
        return column;
    }

    private int newColumn(String name, BigFraction cost) {
        columns.add(new Column(name, cost));
        return columns.size() - 1;
    }

    /** The finished model. */
    MixedModel model() {
        var all = new ArrayList<>(rows);
        ordering.forEach((supplier, column) -> {
            var least = room.termsOf(supplier).minimumOrder();
            if (least.signum() > 0) {
                all.add(new Row("minimum order", worthOf(supplier, column, least), Sense.AT_LEAST, BigFraction.ZERO));
            }
        });
        return new MixedModel(new LinearModel(columns, all), whole);
    }

    private Map<Integer, BigFraction> worthOf(String supplier, int column, BigFraction least) {
        var form = new HashMap<Integer, BigFraction>();
        bought.forEach((offer, packs) -> {
            if (offer.supplier().equals(supplier)) {
                form.put(packs, offer.pricePerKg().multiply(kilograms(offer)));
            }
        });
        form.put(column, least.negate());
        return form;
    }

    /** Steps bought of each offer at a point. */
    Map<Offer, BigFraction> bought(List<BigFraction> point) {
        var steps = new LinkedHashMap<Offer, BigFraction>();
        bought.forEach((offer, column) -> steps.put(offer, point.get(column)));
        return steps;
    }

    /** Suppliers that an order goes to at a point. */
    Set<String> ordered(List<BigFraction> point) {
        var suppliers = new LinkedHashSet<String>();
        ordering.forEach((supplier, column) -> {
            if (point.get(column).signum() > 0) {
                suppliers.add(supplier);
            }
        });
        return suppliers;
    }

    /** Whether the model knows of an ingredient. */
    boolean holds(String ingredient) {
        return left.containsKey(ingredient);
    }

    /** Kilograms of an ingredient that are left at a point. */
    BigFraction left(String ingredient, List<BigFraction> point) {
        return point.get(Objects.requireNonNull(left.get(ingredient)));
    }
}
