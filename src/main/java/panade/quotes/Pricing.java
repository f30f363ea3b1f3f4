package panade.quotes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.quantity.Fractions;

/** Prices a blend as it stands at a brief's offers, the cheapest first, as far as each can be had. */
final class Pricing {
    private final Brief brief;

    Pricing(Brief brief) {
        this.brief = brief;
    }

    /** Money per kilogram of batch; empty when something in it cannot be bought in that amount. */
    Optional<BigFraction> cost(Blend blend) {
        var ids = new TreeSet<String>();
        blend.lines().forEach(line -> ids.add(line.use().ingredient()));
        var total = BigFraction.ZERO;
        for (var id : ids) {
            var cost = brief.candidates().contains(id) ? cost(id, blend) : Optional.<BigFraction>empty();
            if (cost.isEmpty()) {
                return Optional.empty();
            }
            total = total.add(cost.get());
        }
        return Optional.of(total);
    }

    private Optional<BigFraction> cost(String id, Blend blend) {
        var needed = brief.asBought(id, blend.shareOf(id));
        var cost = BigFraction.ZERO;
        for (var offer : cheapestFirst(id)) {
            var taken = Fractions.min(needed, mostOf(offer).orElse(needed));
            cost = cost.add(taken.multiply(offer.pricePerKg()));
            needed = needed.subtract(taken);
        }
        return needed.signum() == 0 ? Optional.of(cost) : Optional.empty();
    }

    /** The offers for an ingredient, the cheapest first. */
    List<Offer> cheapestFirst(String id) {
        return brief.offersFor(id).stream()
                .sorted(Comparator.comparing(Offer::pricePerKg).thenComparing(Offer::supplier))
                .toList();
    }

    /** The most that can be had of an offer per kilogram of batch; empty when there is no end to it. */
    Optional<BigFraction> mostOf(Offer offer) {
        var available = offer.available();
        return available == null
                ? Optional.empty()
                : Optional.of(available.base().divide(brief.batch().base()));
    }
}
