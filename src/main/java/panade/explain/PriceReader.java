package panade.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.sensitivity.Sensitivity;
import panade.certify.sensitivity.Sensitivity.Entrance;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.explain.Explanation.Entry;
import panade.explain.Explanation.Nearest;
import panade.explain.Explanation.Unused;
import panade.explain.Explanation.Used;
import panade.lazy.Lazy;
import panade.model.LinearForm;
import panade.model.Unproved;
import panade.quantity.Unit;

/** Reads prices: how far a used one may move, and where an unused one comes in. */
final class PriceReader {
    /** How far below its entering price an unused ingredient is imagined when its saving is told. */
    static final BigFraction SAVING_TEST_DISCOUNT = BigFraction.of(5, 100);

    /** How many unused ingredients a cook is told of unasked. */
    private static final int NEAREST = 20;

    /** A fall that no price can have. */
    private static final BigFraction AT_NO_PRICE = BigFraction.of(2);

    private static final BigFraction CENT_PER_LB = BigFraction.of(1, 100).divide(Unit.POUND.factor());
    /** How often a rate for the cooked weight is taken anew at most; far more than any model needs. */
    private static final int MOST_RATES = 100;

    private static final BigFraction HALF_A_PER_CENT = BigFraction.of(5, 1000);

    private final Brief brief;
    private final CompiledBrief compiled;
    private final Blend blend;
    private final Sensitivity sensitivity;
    private final Optional<PerCooked> perCooked;
    /** What each column costs, in money per kilogram as weighed. */
    private final Lazy<List<BigFraction>> costs;

    private final Lazy<Map<String, List<Offer>>> offers;

    PriceReader(Brief brief, CompiledBrief compiled, Blend blend, Sensitivity sensitivity) {
        this.perCooked = PerCooked.of(brief, compiled, blend);
        this.brief = brief;
        this.compiled = compiled;
        this.blend = blend;
        this.sensitivity = sensitivity;
        this.offers = new Lazy<>(brief::offersByIngredient);
        this.costs = new Lazy<>(() -> compiled.columns().stream()
                .map(source -> brief.costPerKg(source.offer()))
                .toList());
    }

    List<Used> used() {
        return blend.lines().stream()
                .map(Blend.Line::offer)
                .distinct()
                .sorted(Comparator.comparing(Offer::ingredient).thenComparing(Offer::supplier))
                .map(this::used)
                .toList();
    }

    private Used used(Offer offer) {
        var price = offer.pricePerKg();
        var moving = shared(weights(offer));
        var down = sensitivity.priceLimit(moving, -1).map(price::subtract);
        var up = sensitivity.priceLimit(moving, 1).map(price::add);
        return new Used(
                offer.ingredient(),
                offer.supplier(),
                price,
                down.filter(from -> from.signum() >= 0).orElse(null),
                up.orElse(null));
    }

    List<Unused> unused() {
        return idle().stream().map(this::unused).toList();
    }

    /** Whether all that is unused can be told without tiring anybody. */
    boolean isShort() {
        return idle().size() <= NEAREST;
    }

    /**
     * The few that are nearest to coming in. What an ingredient would lose by being taken bounds from below how far its
     * price must fall, so the search ends where that is more than the last of those found needs.
     */
    Nearest nearest() {
        var waiting = idle().stream()
                .map(ingredient -> new Waiting(ingredient, leastFall(ingredient)))
                .sorted(Comparator.comparing(Waiting::leastFall))
                .toList();
        var found = new TreeSet<>(Comparator.comparing(PriceReader::fall).thenComparing(Unused::ingredient));
        for (var next : waiting) {
            if (found.size() == NEAREST && fall(found.last()).compareTo(next.leastFall()) <= 0) {
                break;
            }
            found.add(unused(next.ingredient()));
            if (found.size() > NEAREST) {
                found.pollLast();
            }
        }
        return new Nearest(List.copyOf(found), waiting.size() - found.size());
    }

    private record Waiting(String ingredient, BigFraction leastFall) {}

    private List<String> idle() {
        var used = blend.lines().stream().map(line -> line.use().ingredient()).collect(Collectors.toSet());
        return brief.candidates().stream()
                .filter(ingredient -> !used.contains(ingredient))
                .sorted()
                .toList();
    }

    private BigFraction leastFall(String ingredient) {
        var offer = cheapest(ingredient);
        return offer.pricePerKg().signum() <= 0
                ? BigFraction.ZERO
                : sensitivity.leastFall(weights(offer)).divide(offer.pricePerKg());
    }

    /** How much of its price must go before it comes in; more than all of it where it comes in at no price. */
    private static BigFraction fall(Unused unused) {
        var entry = unused.entry();
        var price = unused.pricePerKg();
        return entry == null || price.signum() <= 0
                ? AT_NO_PRICE
                : price.subtract(entry.at()).divide(price);
    }

    private Unused unused(String ingredient) {
        var cheapest = cheapest(ingredient);
        return new Unused(ingredient, cheapest.supplier(), cheapest.pricePerKg(), entry(cheapest));
    }

    private Offer cheapest(String ingredient) {
        return offers.get().getOrDefault(ingredient, List.of()).stream()
                .min(Comparator.comparing(Offer::pricePerKg))
                .orElseThrow();
    }

    private @Nullable Entry entry(Offer offer) {
        var entrance = sensitivity.entering(weights(offer), compiled.columnsOf(offer.ingredient()));
        return entrance.filter(found -> offer.pricePerKg().compareTo(found.by()) > 0)
                .map(found -> entry(offer, found))
                .orElse(null);
    }

    private Entry entry(Offer offer, Entrance entrance) {
        var at = offer.pricePerKg().subtract(entrance.by());
        var cost = blend.costPerKg();
        var saving = cost.subtract(leastCostAt(costsWith(offer, lowered(at))));
        boolean worthwhile =
                saving.compareTo(CENT_PER_LB) >= 0 || saving.compareTo(cost.multiply(HALF_A_PER_CENT)) >= 0;
        return new Entry(at, shareOf(offer.ingredient(), entrance.after()), saving, worthwhile);
    }

    /** The least cost at other prices; per cooked weight it is found as the first was, cost by cost. */
    private BigFraction leastCostAt(List<BigFraction> costs) {
        if (perCooked.isEmpty()) {
            return total(costs, sensitivity.leastPointAt(costs));
        }
        var cooked = perCooked.get();
        var rate = cooked.cost();
        for (int step = 0; step < MOST_RATES; step++) {
            var point = sensitivity.leastPointAt(lessPerCooked(costs, rate));
            var weight = cooked.weightAt(point);
            if (weight.signum() == 0) {
                // nothing costs less per cooked weight than the rate, or a blend that keeps some would be found
                return rate;
            }
            var found = total(costs, point).divide(weight);
            if (found.equals(rate)) {
                return found;
            }
            rate = found;
        }
        throw new Unproved("the cost per cooked weight still fell after " + MOST_RATES + " steps");
    }

    private List<BigFraction> lessPerCooked(List<BigFraction> costs, BigFraction rate) {
        var form = perCooked.orElseThrow().form();
        var less = new ArrayList<BigFraction>();
        for (int j = 0; j < costs.size(); j++) {
            less.add(costs.get(j).subtract(rate.multiply(form.at(j))));
        }
        return less;
    }

    private static BigFraction total(List<BigFraction> costs, List<BigFraction> point) {
        var total = BigFraction.ZERO;
        for (int j = 0; j < costs.size(); j++) {
            if (point.get(j).signum() != 0) {
                total = total.add(costs.get(j).multiply(point.get(j)));
            }
        }
        return total;
    }

    /** Per cooked weight, a price that moves also moves the cost that is taken off each cooked kilogram. */
    private LinearForm shared(LinearForm weights) {
        if (perCooked.isEmpty()) {
            return weights;
        }
        var cooked = perCooked.get();
        var bought = weights.dot(compiled.pointOf(blend));
        var each = bought.divide(cooked.weight());
        return weights.minus(cooked.form().scaled(each));
    }

    private static BigFraction lowered(BigFraction price) {
        return price.multiply(BigFraction.ONE.subtract(SAVING_TEST_DISCOUNT));
    }

    private List<BigFraction> costsWith(Offer offer, BigFraction price) {
        var changed = new ArrayList<>(costs.get());
        var moved = brief.costPerKg(offer.withPrice(price));
        for (int j : compiled.columnsOf(offer.id())) {
            changed.set(j, moved);
        }
        return changed;
    }

    private BigFraction shareOf(String ingredient, List<BigFraction> point) {
        return compiled.shareOf(ingredient).dot(point);
    }

    /** What one unit of an offer's price adds to the cost of each of its columns. */
    private LinearForm weights(Offer offer) {
        return compiled.boughtOf(offer, brief);
    }
}
