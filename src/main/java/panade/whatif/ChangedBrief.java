package panade.whatif;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.Documents;
import panade.document.syntax.Amounts;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problem;
import panade.document.syntax.Problems;
import panade.document.syntax.Reading;
import panade.document.syntax.TypedField;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;

/**
 * Reads a brief with changes. What is typed goes through the reader of the documents, so it means what it would mean
 * there, and what is wrong with it is told as if it stood there.
 */
public final class ChangedBrief {
    private final Path file;
    private final Overrides overrides;
    private final Brief start;

    /**
     * A reader.
     *
     * @param overrides what the command line says
     * @param start the brief without changes
     */
    public ChangedBrief(Path file, Overrides overrides, Brief start) {
        this.file = file;
        this.overrides = overrides;
        this.start = start;
    }

    /** All offers of the lists, whether they may be used or not. */
    public static List<Offer> offers(Brief brief) {
        return Stream.concat(brief.offers().stream(), brief.otherOffers().stream())
                .toList();
    }

    /** Where a price that is typed for an offer is said to stand. */
    public static Origin placeOf(OfferId offer) {
        return new Origin(offer.list(), 0, 0, "/" + offer.row() + "/" + offer.ingredient());
    }

    /** The brief with changes, or everything that is wrong with them. */
    public Reading<Brief> with(Changes changes) {
        var problems = new ArrayList<Problem>();
        var prices = prices(changes.prices(), problems);
        var reading = Documents.readBrief(file, overriding(changes));
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            problems.addAll(0, rejected.problems());
        }
        return problems.isEmpty()
                ? new Reading.Accepted<>(bought(((Reading.Accepted<Brief>) reading).value(), prices, changes))
                : new Reading.Rejected<>(problems);
    }

    /** The overrides that say the same, prices and stock apart. */
    Overrides overriding(Changes changes) {
        var target = changes.target();
        boolean none = target != null && target.isBlank();
        var typed = new ArrayList<>(changes.limits());
        if (none) {
            typed.add(new TypedField(start.file(), "", "target", ""));
        }
        return new Overrides(
                overrides.prices(),
                changes.batch() == null ? overrides.batch() : changes.batch(),
                overrides.without(),
                none ? null : target == null ? overrides.target() : target,
                typed);
    }

    private Map<OfferId, BigFraction> prices(Map<OfferId, String> typed, List<Problem> problems) {
        var told = new Problems();
        var amounts = new Amounts(told, start.currency());
        var prices = new HashMap<OfferId, BigFraction>();
        typed.forEach((id, text) -> amounts.price(new TextNode(placeOf(id), text.strip()))
                .ifPresent(price -> prices.put(id, price.perKg())));
        problems.addAll(told.inOrder());
        return prices;
    }

    Path file() {
        return file;
    }

    Brief start() {
        return start;
    }

    private static Brief bought(Brief brief, Map<OfferId, BigFraction> prices, Changes changes) {
        var offers = brief.offers().stream()
                .filter(offer -> !changes.out().contains(offer.id()))
                .map(offer -> offer.withPrice(prices.getOrDefault(offer.id(), offer.pricePerKg())))
                .toList();
        return prices.isEmpty() && changes.out().isEmpty() ? brief : brief.offeringOnly(offers);
    }
}
