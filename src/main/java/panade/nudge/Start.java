package panade.nudge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Measure;
import panade.domain.Use;
import panade.domain.origin.Origin;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * What is made now, beside the brief that it is changed under.
 *
 * @param brief with the batch that is made now
 * @param shares of the batch by line of the formula; they sum to one and none is zero
 * @param suppliers what part of a line is whose goods, together one; a line that is not there, a part without a name,
 *     and one whose supplier does not sell it to this brief are bought from the cheapest
 */
public record Start(Brief brief, Map<Use, BigFraction> shares, Map<Use, Map<String, BigFraction>> suppliers) {
    private static final Origin KEPT = new Origin("--keep", 0, 0, "");

    public Start {
        shares = Map.copyOf(shares);
        suppliers = Map.copyOf(suppliers);
        var whole = shares.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
        if (!whole.equals(BigFraction.ONE)) {
            throw new IllegalArgumentException("shares sum to " + whole);
        }
    }

    /** A formula that is bought from the cheapest. */
    public Start(Brief brief, Map<Use, BigFraction> shares) {
        this(brief, shares, Map.of());
    }

    /** The share of a line; zero where the formula has none. */
    public BigFraction shareOf(Use use) {
        return shares.getOrDefault(use, BigFraction.ZERO);
    }

    /** The formula as it is bought; what nobody sells costs nothing there, and is told apart. */
    public Blend blend() {
        var lines = new ArrayList<Blend.Line>();
        for (var stage : brief.stages()) {
            shares.entrySet().stream()
                    .filter(each -> each.getKey().stage().equals(stage.id()))
                    .sorted(Comparator.comparing((Map.Entry<Use, BigFraction> each) -> each.getValue())
                            .reversed()
                            .thenComparing(each -> each.getKey().ingredient()))
                    .forEach(each -> lines.addAll(lines(each.getKey(), each.getValue())));
        }
        return new Blend(List.copyOf(lines), BigFraction.ONE);
    }

    private List<Blend.Line> lines(Use use, BigFraction share) {
        return suppliers.getOrDefault(use, Map.of("", BigFraction.ONE)).entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(part -> line(use, part.getKey(), share.multiply(part.getValue())))
                .toList();
    }

    private Blend.Line line(Use use, String supplier, BigFraction share) {
        var listed = brief.listedFor(use.ingredient());
        var named = listed.stream()
                .filter(offer -> offer.supplier().equals(supplier))
                .toList();
        return (named.isEmpty() ? listed : named)
                .stream()
                        .min(Comparator.comparing(Offer::pricePerKg))
                        .map(offer -> new Blend.Line(use, offer, share, share.multiply(brief.costPerKg(offer))))
                        .orElseGet(() -> new Blend.Line(use, unsold(use.ingredient()), share, BigFraction.ZERO));
    }

    private static Offer unsold(String id) {
        return new Offer(OfferId.unlisted(id), id, "", BigFraction.ZERO, null, null, null, "", KEPT);
    }

    /** The same bought from the cheapest. */
    public Start boughtCheapest() {
        return new Start(brief, shares);
    }

    /** Ids of what the formula holds and no list sells. */
    public Set<String> unsold() {
        var ids = new TreeSet<String>();
        shares.keySet().stream()
                .map(Use::ingredient)
                .filter(id -> brief.listedFor(id).isEmpty())
                .forEach(ids::add);
        return ids;
    }

    /**
     * Half the sum of the absolute changes of shares, line by line; which supplier's goods they are changes nothing.
     */
    public BigFraction movedTo(Blend blend) {
        return lines(blend).stream()
                .map(use -> changeTo(blend, use).abs())
                .reduce(BigFraction.ZERO, BigFraction::add)
                .divide(2);
    }

    /** Ids of the ingredients of which any line weighs something else, in order. */
    public Set<String> changedIn(Blend blend) {
        var changed = new TreeSet<String>();
        lines(blend).stream()
                .filter(use -> changeTo(blend, use).signum() != 0)
                .forEach(use -> changed.add(use.ingredient()));
        return changed;
    }

    private static BigFraction shareIn(Blend blend, Use use) {
        return blend.lines().stream()
                .filter(line -> line.use().equals(use))
                .map(Blend.Line::share)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** How much more of the batch a line makes up in a blend than in the formula. */
    public BigFraction changeTo(Blend blend, Use use) {
        return shareIn(blend, use).subtract(shareOf(use));
    }

    private List<Use> lines(Blend blend) {
        return Stream.concat(shares.keySet().stream(), blend.lines().stream().map(Blend.Line::use))
                .distinct()
                .toList();
    }

    /**
     * Ids of what the formula holds and the brief has no place for: it is not sold, not allowed, or not in that stage.
     */
    public Set<String> homeless() {
        var places = Set.copyOf(brief.uses());
        var ids = new TreeSet<String>();
        shares.keySet().stream().filter(use -> !places.contains(use)).forEach(use -> ids.add(use.ingredient()));
        return ids;
    }

    /** The same with every line of some ingredients held as it is made, by bounds like any others. */
    public Start keeping(Set<String> ids) {
        var bounds = new ArrayList<>(brief.bounds());
        Stream.concat(shares.keySet().stream(), brief.uses().stream())
                .distinct()
                .filter(use -> ids.contains(use.ingredient()))
                .map(this::kept)
                .forEach(bounds::add);
        return new Start(brief.withBounds(bounds), shares, suppliers);
    }

    private Bound kept(Use use) {
        var name = brief.set().ingredient(use.ingredient()).name() + " in " + title(use.stage()) + " as made";
        var part = new Measure.Part(Map.of(), Map.of(use.ingredient(), BigFraction.ONE), use.stage());
        var share = Quantity.of(shareOf(use).multiply(100), Unit.PERCENT, "as made");
        return new Bound(
                LimitKind.BRIEF,
                name,
                "--keep " + use.ingredient() + " in " + use.stage(),
                new Measure(name, Unit.PERCENT, List.of(part)),
                null,
                share,
                share,
                "raw",
                KEPT);
    }

    private String title(String stage) {
        return brief.stages().stream()
                .filter(each -> each.id().equals(stage))
                .map(each -> each.title())
                .findFirst()
                .orElse(stage);
    }
}
