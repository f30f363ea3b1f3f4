package panade.domain;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Remark;
import panade.domain.pantry.Composition;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.domain.purchase.TargetPrice;
import panade.quantity.Quantity;

/**
 * Everything asked of one blend, ready to compute with: references resolved, lots of an ingredient expanded, what may
 * not be used left out.
 *
 * @param title the product's name
 * @param file the document it was read from
 * @param set the pantry
 * @param composition what the ingredients hold, assumptions applied
 * @param currency the money's code; empty when no document states one
 * @param batch the weight made at once
 * @param candidates ids of ingredients that can be bought, are not avoided and are allowed
 * @param offers offers for candidates only, in the order of the price lists
 * @param otherOffers offers of the lists for what may not be used, or that cannot be had today
 * @param bounds the brief's bounds, then the stages' shares and bounds, then ceilings on use from the set
 * @param stages in order; the last is {@link Stage#MIX}
 * @param target the price per kilogram hoped for, as written; null when there is none
 * @param practice the rest of the brief: rules, cooking, costs, scale and serving
 * @param exclusions what keeps other ingredients out, each lifted alone
 * @param remarks what the documents say that may not be meant
 * @param notes what the answer was made under, where that is not the brief as written
 */
public record Brief(
        String title,
        String file,
        IngredientSet set,
        Composition composition,
        String currency,
        Quantity batch,
        Set<String> candidates,
        List<Offer> offers,
        List<Offer> otherOffers,
        List<Bound> bounds,
        List<Stage> stages,
        @Nullable TargetPrice target,
        Practice practice,
        List<Exclusion> exclusions,
        List<Remark> remarks,
        List<String> notes) {
    public Brief {
        if (offers.stream().map(Offer::id).distinct().count() != offers.size()) {
            throw new IllegalArgumentException("an offer is listed twice");
        }
        if (bounds.stream().map(Bound::id).distinct().count() != bounds.size()) {
            throw new IllegalArgumentException("a bound is listed twice");
        }
    }

    /** Every place where a candidate may be weighed in, stage by stage. */
    public List<Use> uses() {
        return stages.stream()
                .flatMap(stage -> stage.ingredients().stream()
                        .filter(candidates::contains)
                        .sorted()
                        .map(ingredient -> new Use(ingredient, stage.id())))
                .toList();
    }

    /** Money per kilogram of an offer's goods as weighed in, after trimming. */
    public BigFraction costPerKg(Offer offer) {
        return offer.costPerKg(set.ingredient(offer.ingredient()).usable());
    }

    /** Kilograms as bought of so many kilograms of an ingredient as weighed in. */
    public BigFraction asBought(String ingredient, BigFraction weighed) {
        return weighed.divide(set.ingredient(ingredient).usable());
    }

    /** The offers for one candidate, in the order of the price lists. */
    public List<Offer> offersFor(String ingredient) {
        return offers.stream()
                .filter(offer -> offer.ingredient().equals(ingredient))
                .toList();
    }

    /** Every offer of the lists for an ingredient, whether it may be used or not; what can be had comes alone. */
    public List<Offer> listedFor(String ingredient) {
        var some = offersFor(ingredient);
        return some.isEmpty()
                ? otherOffers.stream()
                        .filter(offer -> offer.ingredient().equals(ingredient))
                        .toList()
                : some;
    }

    /** Every offer of the lists for an ingredient, what can be had first. */
    public List<Offer> everyOfferFor(String ingredient) {
        return Stream.concat(offers.stream(), otherOffers.stream())
                .filter(offer -> offer.ingredient().equals(ingredient))
                .toList();
    }

    /** The offers of every ingredient that has one, each in the order of the price lists. */
    public Map<String, List<Offer>> offersByIngredient() {
        return offers.stream().collect(Collectors.groupingBy(Offer::ingredient));
    }

    /** The brief with one exclusion lifted. */
    public Brief allowing(Exclusion exclusion) {
        return with(
                union(candidates, exclusion.ingredients()),
                joined(offers, exclusion.offers()),
                joined(bounds, exclusion.ceilings()));
    }

    /** The brief with those ingredients kept out. */
    public Brief without(Set<String> ids) {
        var rest = new LinkedHashSet<>(candidates);
        rest.removeAll(ids);
        return with(
                rest,
                offers.stream()
                        .filter(offer -> !ids.contains(offer.ingredient()))
                        .toList(),
                bounds);
    }

    /** The brief as far as some offers go: only what they are for may be used. */
    public Brief offeringOnly(List<Offer> some) {
        var rest = new LinkedHashSet<>(candidates);
        rest.retainAll(some.stream().map(Offer::ingredient).toList());
        return with(
                rest,
                some.stream().filter(offer -> rest.contains(offer.ingredient())).toList(),
                bounds);
    }

    /** The brief with other offers, whatever they are for. */
    public Brief offering(List<Offer> others) {
        return with(candidates, others, bounds);
    }

    /** The brief with one bound in another's place. */
    public Brief replacing(Bound old, Bound fresh) {
        var changed = bounds.stream()
                .map(bound -> bound.id().equals(old.id()) ? fresh : bound)
                .toList();
        return with(candidates, offers, changed);
    }

    /** The brief with one offer in another's place. */
    public Brief replacing(Offer old, Offer fresh) {
        var changed = offers.stream()
                .map(offer -> offer.id().equals(old.id()) ? fresh : offer)
                .toList();
        return with(candidates, changed, bounds);
    }

    /** The brief with other bounds. */
    public Brief withBounds(List<Bound> others) {
        return with(candidates, offers, others);
    }

    /** The brief with more remarks; one that it has already stays alone. */
    public Brief remarking(List<Remark> more) {
        return in(
                title,
                set,
                composition,
                joined(remarks, more).stream().distinct().toList(),
                notes);
    }

    /** The brief by another title. */
    public Brief called(String name) {
        return in(name, set, composition, remarks, notes);
    }

    /** The brief with one note more on what the answer was made under. */
    public Brief noting(String note) {
        return in(title, set, composition, remarks, joined(notes, List.of(note)));
    }

    /** The brief with other rules. */
    public Brief withRules(List<Rule> rules) {
        return with(candidates, offers, bounds, batch, practice.withRules(rules));
    }

    /** The brief with another label to keep; null for none. Its bounds stay as they are. */
    public Brief keeping(@Nullable SameLabel label) {
        return with(candidates, offers, bounds, batch, practice.withLabel(label));
    }

    /** The brief made in another quantity. */
    public Brief withBatch(Quantity otherBatch) {
        return with(candidates, offers, bounds, otherBatch, practice);
    }

    /** The brief made from a pantry that differs in what its ingredients hold. */
    public Brief withIngredientSet(IngredientSet other) {
        return in(title, other, composition.in(other), remarks, notes);
    }

    private Brief in(String name, IngredientSet pantry, Composition held, List<Remark> told, List<String> noted) {
        return new Brief(
                name,
                file,
                pantry,
                held,
                currency,
                batch,
                candidates,
                offers,
                otherOffers,
                bounds,
                stages,
                target,
                practice,
                exclusions,
                told,
                noted);
    }

    /** Whether some bound is to be sure to hold although contents vary. */
    public boolean isSure() {
        return bounds.stream().anyMatch(bound -> bound.sure() != null);
    }

    /** The brief for contents that are known: no bound keeps away from its numbers. */
    public Brief asStated() {
        return withBounds(bounds.stream().map(bound -> bound.withSureness(null)).toList());
    }

    /** Whether every value that the bounds need of the ingredients that may be used is known. */
    public boolean isKnown() {
        return uses().stream()
                .allMatch(use -> bounds.stream()
                        .allMatch(bound -> bound.of().isKnown(use, composition)
                                && (bound.per() == null || bound.per().isKnown(use, composition))));
    }

    private Brief with(Set<String> others, List<Offer> fresh, List<Bound> otherBounds) {
        return with(others, fresh, otherBounds, batch, practice);
    }

    private Brief with(
            Set<String> others,
            List<Offer> fresh,
            List<Bound> otherBounds,
            Quantity otherBatch,
            Practice otherPractice) {
        return new Brief(
                title,
                file,
                set,
                composition,
                currency,
                otherBatch,
                others,
                fresh,
                otherOffers,
                otherBounds,
                stages,
                target,
                otherPractice,
                exclusions,
                remarks,
                notes);
    }

    private static Set<String> union(Set<String> a, Set<String> b) {
        var union = new LinkedHashSet<>(a);
        union.addAll(b);
        return union;
    }

    private static <T> List<T> joined(List<T> a, List<T> b) {
        return Stream.concat(a.stream(), b.stream()).toList();
    }

    /** The remarks on several briefs, each once, in the order of the briefs. */
    public static List<Remark> remarksOn(List<Brief> briefs) {
        Set<Remark> remarks = new LinkedHashSet<>();
        briefs.forEach(brief -> remarks.addAll(brief.remarks()));
        return List.copyOf(remarks);
    }
}
