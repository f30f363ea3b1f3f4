package panade.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.bench.BatchSheet.Fail;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Use;
import panade.domain.purchase.Offer;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * What weights come to, measured line by line in exact fractions. It knows nothing of the model that weights were found
 * with, so it can say whether what that model claims is so.
 *
 * @param exact the blend that the weights were rounded from
 * @param uses what is weighed, in the order of the weights
 */
record WeighedBatch(Brief brief, Blend exact, List<Use> uses) {
    WeighedBatch {
        uses = List.copyOf(uses);
    }

    /** A limit that is broken, and by how many kilograms (or, without mass, by how much) in the batch as weighed. */
    private record Miss(Fail fail, BigFraction amount) {}

    /** Bounds that weights in kilograms break, and goods of which they take more than can be had. */
    List<Fail> fails(List<BigFraction> weights) {
        return List.copyOf(misses(weights).values().stream().map(Miss::fail).toList());
    }

    /** Whether weights break nothing but what other weights break too, and that no further. */
    boolean isAsGood(List<BigFraction> weights, List<BigFraction> others) {
        var had = misses(others);
        return misses(weights).entrySet().stream().allMatch(entry -> {
            var before = had.get(entry.getKey());
            return before != null && entry.getValue().amount().compareTo(before.amount()) <= 0;
        });
    }

    private Map<String, Miss> misses(List<BigFraction> weights) {
        var total = sum(weights);
        var misses = new LinkedHashMap<String, Miss>();
        if (total.signum() == 0) {
            brief.bounds().forEach(bound -> addNothing(bound, misses));
            return misses;
        }
        var kilogram = Unit.of("kg");
        var made = brief.withBatch(Quantity.of(total, kilogram, brief.batch().text()));
        var blend = blend(weights);
        var audit = new Audit(made, blend);
        for (var bound : made.bounds()) {
            add(bound, bound.min(), true, audit, total, misses);
            add(bound, bound.max(), false, audit, total, misses);
        }
        blend.lines().stream().map(Blend.Line::offer).distinct().forEach(offer -> add(offer, audit, total, misses));
        return misses;
    }

    private static void addNothing(Bound bound, Map<String, Miss> misses) {
        var min = bound.min();
        if (min != null && min.base().signum() > 0) {
            var path = bound.path() + "/min";
            var needs = bound.unit().fromBase(min.base());
            misses.put(path, new Miss(new Fail(path, bound.name(), null, needs, bound.unit(), false), min.base()));
        }
    }

    private void add(
            Bound bound,
            @Nullable Quantity limit,
            boolean isMin,
            Audit audit,
            BigFraction total,
            Map<String, Miss> misses) {
        if (limit == null || audit.slack(bound, limit, isMin).signum() >= 0) {
            return;
        }
        var path = bound.path() + (isMin ? "/min" : "/max");
        misses.put(
                path,
                new Miss(
                        new Fail(
                                path,
                                bound.name(),
                                audit.value(bound).orElse(null),
                                bound.unit().fromBase(limit.base()),
                                bound.unit(),
                                bound.isFixed(brief.batch())),
                        audit.slack(bound, limit, isMin).negate().multiply(total)));
    }

    private static void add(Offer offer, Audit audit, BigFraction total, Map<String, Miss> misses) {
        var available = offer.available();
        if (available == null) {
            return;
        }
        var over = audit.bought(offer).multiply(total).subtract(available.base());
        if (over.signum() > 0) {
            var name = offer.ingredient() + " available " + offer.supplier();
            var unit = available.unit();
            var reaches = unit.fromBase(over.add(available.base()));
            misses.put(
                    name, new Miss(new Fail(name, name, reaches, unit.fromBase(available.base()), unit, false), over));
        }
    }

    static BigFraction sum(List<BigFraction> weights) {
        return weights.stream().reduce(BigFraction.ZERO, BigFraction::add);
    }

    /**
     * The blend that weights make. Each supplier's part of an ingredient is that of the exact blend as far as there are
     * goods; what is weighed beyond that comes from the others, the cheapest first.
     */
    Blend blend(List<BigFraction> weights) {
        var total = sum(weights);
        var lines = new ArrayList<Blend.Line>();
        for (var id : uses.stream().map(Use::ingredient).distinct().toList()) {
            var weighed = weightOf(id, weights);
            var parts = parts(id, weighed);
            var usable = brief.set().ingredient(id).usable();
            for (int l = 0; l < uses.size(); l++) {
                var use = uses.get(l);
                var share = weights.get(l).divide(total);
                if (use.ingredient().equals(id) && share.signum() > 0) {
                    parts.forEach((offer, kilograms) -> {
                        var part = share.multiply(kilograms).divide(weighed);
                        lines.add(new Blend.Line(
                                use,
                                offer,
                                part,
                                part.multiply(offer.pricePerKg()).divide(usable)));
                    });
                }
            }
        }
        return new Blend(List.copyOf(lines), BigFraction.ONE);
    }

    private BigFraction weightOf(String id, List<BigFraction> weights) {
        var weight = BigFraction.ZERO;
        for (int l = 0; l < uses.size(); l++) {
            weight = uses.get(l).ingredient().equals(id) ? weight.add(weights.get(l)) : weight;
        }
        return weight;
    }

    /** Kilograms of an ingredient from each supplier. */
    private Map<Offer, BigFraction> parts(String id, BigFraction weighed) {
        var planned = new LinkedHashMap<Offer, BigFraction>();
        exact.lines().stream()
                .filter(line -> line.use().ingredient().equals(id))
                .forEach(line -> planned.merge(line.offer(), line.share(), BigFraction::add));
        var times = weighed.divide(exact.shareOf(id));
        var parts = new LinkedHashMap<Offer, BigFraction>();
        planned.forEach((offer, share) -> parts.put(offer, smaller(share.multiply(times), most(offer))));
        var open = weighed.subtract(sum(List.copyOf(parts.values())));
        for (var offer : cheapestFirst(id, planned)) {
            var had = parts.getOrDefault(offer, BigFraction.ZERO);
            var more = most(offer).map(most -> most.subtract(had));
            var taken = smaller(open, more);
            if (taken.signum() > 0) {
                parts.put(offer, had.add(taken));
                open = open.subtract(taken);
            }
        }
        if (open.signum() > 0) {
            // nobody has that much: it is left where it was, to be told as broken
            parts.merge(planned.keySet().iterator().next(), open, BigFraction::add);
        }
        parts.values().removeIf(part -> part.signum() == 0);
        return parts;
    }

    private List<Offer> cheapestFirst(String id, Map<Offer, BigFraction> planned) {
        var offers = new ArrayList<>(planned.keySet());
        brief.offersFor(id).stream()
                .filter(offer -> !planned.containsKey(offer))
                .forEach(offers::add);
        offers.sort(Comparator.comparing(Offer::pricePerKg));
        return offers;
    }

    /** Kilograms, after trimming, that can be had of an offer; empty when there is no end to it. */
    private Optional<BigFraction> most(Offer offer) {
        var usable = brief.set().ingredient(offer.ingredient()).usable();
        return Optional.ofNullable(offer.available())
                .map(available -> available.base().multiply(usable));
    }

    private static BigFraction smaller(BigFraction a, Optional<BigFraction> b) {
        return b.filter(other -> other.compareTo(a) < 0).orElse(a);
    }
}
