package panade.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;

/** Checks that the lines of a blend are of what may be used, make one batch, and cost what they say. */
final class LineCheck {
    private final Brief brief;
    private final Blend blend;
    private final Ledger ledger;
    private final Map<OfferId, Offer> offers;
    private final Map<String, Stage> stages;

    LineCheck(Brief brief, Blend blend, Ledger ledger) {
        this.brief = brief;
        this.blend = blend;
        this.ledger = ledger;
        this.offers = brief.offers().stream().collect(Collectors.toMap(Offer::id, Function.identity()));
        this.stages = brief.stages().stream().collect(Collectors.toMap(Stage::id, Function.identity()));
    }

    List<String> faults() {
        var faults = new ArrayList<String>();
        blend.lines().forEach(line -> check(line, faults));
        if (!ledger.whole().equals(BigFraction.ONE)) {
            faults.add("does not make one batch: its shares add up to " + ledger.whole());
        }
        if (!blend.weight().equals(weight())) {
            faults.add("is costed for another weight than it has");
        }
        return faults;
    }

    private void check(Blend.Line line, List<String> faults) {
        var id = line.use().ingredient();
        var stage = stages.get(line.use().stage());
        var offer = offers.get(line.offer().id());
        if (line.share().signum() <= 0) {
            faults.add("lists " + id + " with a share that is not above nothing");
        }
        if (!brief.candidates().contains(id)) {
            faults.add("uses " + id + ", which may not be used");
        }
        if (stage == null || !stage.ingredients().contains(id)) {
            faults.add("puts " + id + " into the stage " + line.use().stage() + ", where it does not belong");
        }
        if (offer == null || !offer.ingredient().equals(id)) {
            faults.add("buys " + id + " from " + line.offer().supplier() + ", who does not offer it");
            return;
        }
        checkMoney(line, offer, faults);
    }

    private void checkMoney(Blend.Line line, Offer offer, List<String> faults) {
        var id = line.use().ingredient();
        var cost = line.share()
                .multiply(offer.pricePerKg())
                .divide(brief.set().ingredient(id).usable());
        if (!line.costPerKg().equals(cost)) {
            faults.add("costs " + id + " at another price than its offer's");
        }
        var there = ledger.at(id, line.use().stage());
        var drawn = line.share().multiply(ledger.ofIngredient(id));
        if (!drawn.equals(there.multiply(ledger.ofOffer(offer.id())))) {
            faults.add("draws the suppliers of " + id + " differently from stage to stage");
        }
    }

    /** What the cost is counted for, per kilogram of batch. */
    private BigFraction weight() {
        var cooked = brief.practice().cookedWeight();
        return brief.practice().perCooked() && cooked != null ? ledger.of(cooked) : BigFraction.ONE;
    }
}
