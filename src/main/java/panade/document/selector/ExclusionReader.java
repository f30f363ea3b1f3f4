package panade.document.selector;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.selector.CandidateReader.Reason;
import panade.document.selector.Ceilings.Ceiling;
import panade.domain.Bound;
import panade.domain.Exclusion;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;

/** Works out what each thing that keeps ingredients out would let in were it lifted alone. */
public final class ExclusionReader {
    private final IngredientSet set;
    private final Map<String, List<Offer>> offers;
    private final Set<String> candidates;
    private final List<Reason> reasons;
    private final List<Ceiling> idle;

    public ExclusionReader(IngredientSet set, List<Offer> offers, Set<String> candidates, List<Reason> reasons) {
        this.set = set;
        this.offers = offers.stream().collect(Collectors.groupingBy(Offer::ingredient));
        this.candidates = candidates;
        this.reasons = reasons;
        this.idle = Ceilings.all(set).stream()
                .filter(ceiling -> ceiling.lots().stream().noneMatch(candidates::contains))
                .toList();
    }

    /** The brief's own exclusions, then what is out of stock or sold by nobody, ingredient by ingredient. */
    public List<Exclusion> read() {
        var exclusions = new ArrayList<Exclusion>();
        for (var reason : reasons) {
            var let = letIn(reason);
            if (!let.isEmpty()) {
                exclusions.add(exclusion(reason.name(), reason.path(), let));
            }
        }
        set.ingredients().keySet().stream().filter(this::cannotBeHad).forEach(id -> {
            var name = id + ", if it could be bought";
            exclusions.add(exclusion(name, "/prices", Set.of(id)));
        });
        return List.copyOf(exclusions);
    }

    /** What can be had, is kept out by this reason, and by no other. */
    private Set<String> letIn(Reason reason) {
        var ids = new LinkedHashSet<>(reason.ids());
        ids.removeAll(candidates);
        ids.removeIf(id -> !hasOffer(id) || isKeptOutBesides(reason, id));
        return ids;
    }

    private boolean isKeptOutBesides(Reason reason, String id) {
        return reasons.stream()
                .anyMatch(other -> !other.equals(reason) && other.ids().contains(id));
    }

    private boolean cannotBeHad(String id) {
        boolean keptOut = reasons.stream().anyMatch(reason -> reason.ids().contains(id));
        return !keptOut && !hasOffer(id);
    }

    private boolean hasOffer(String id) {
        return listed(id).stream().anyMatch(CandidateReader::isToBeHad);
    }

    private List<Offer> listed(String id) {
        return offers.getOrDefault(id, List.of());
    }

    private Exclusion exclusion(String name, String path, Set<String> ids) {
        var let = new ArrayList<Offer>();
        boolean priced = true;
        for (var id : ids) {
            var found = offersOf(id);
            let.addAll(found.isEmpty() ? List.of(gift(id)) : found);
            priced &= !found.isEmpty();
        }
        return new Exclusion(name, path, ids, List.copyOf(let), ceilings(ids), priced);
    }

    /** What can be had of it; if all of it is out of stock, what could be had if it were not. */
    private List<Offer> offersOf(String id) {
        var all = listed(id);
        var toBeHad = all.stream().filter(CandidateReader::isToBeHad).toList();
        return toBeHad.isEmpty()
                ? all.stream().map(offer -> offer.withAvailable(null)).toList()
                : toBeHad;
    }

    private Offer gift(String id) {
        var origin = set.ingredient(id).origin();
        return new Offer(
                OfferId.unlisted(id), id, "nobody", BigFraction.ZERO, null, null, null, "no price is known", origin);
    }

    /** Ceilings that begin to matter when some ingredients come in. */
    private List<Bound> ceilings(Set<String> ids) {
        return idle.stream()
                .filter(ceiling -> ids.stream().anyMatch(ceiling.lots()::contains))
                .map(Ceiling::bound)
                .toList();
    }
}
