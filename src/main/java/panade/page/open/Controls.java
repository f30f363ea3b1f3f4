package panade.page.open;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Problem;
import panade.document.syntax.TypedField;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.page.open.OpenView.Typed;
import panade.quantity.Quantity;
import panade.whatif.ChangedBrief;
import panade.whatif.Changes;
import panade.whatif.PriceText;

/** Which field of the page stands for what of a brief. */
public final class Controls {
    private static final String BATCH = "batch";
    private static final String TARGET = "target";

    private final Brief start;
    private final List<Bound> bounds;
    private final List<Offer> offers;

    /** The fields for a brief as its documents state it. */
    public Controls(Brief start) {
        this.start = start;
        this.bounds = start.bounds().stream().filter(Controls::isTyped).toList();
        this.offers = ChangedBrief.offers(start);
    }

    /** Whether a bound stands in a brief as numbers that can be written anew. */
    static boolean isTyped(Bound bound) {
        return bound.kind() == LimitKind.BRIEF || bound.kind() == LimitKind.STAGE;
    }

    List<Bound> bounds() {
        return bounds;
    }

    List<Offer> offers() {
        return offers;
    }

    List<Typed> fields() {
        var target = start.target();
        return List.of(
                new Typed(BATCH, "Batch", start.batch().text()),
                new Typed(TARGET, "Target price", target == null ? "" : target.text()));
    }

    Typed min(int bound) {
        return limit(bound, "min", "least", bounds.get(bound).min());
    }

    Typed max(int bound) {
        return limit(bound, "max", "most", bounds.get(bound).max());
    }

    private Typed limit(int bound, String side, String word, @Nullable Quantity number) {
        var label = bounds.get(bound).title() + ", " + word;
        return new Typed("b" + bound + "." + side, label, number == null ? "" : number.text());
    }

    Typed price(int offer) {
        var each = offers.get(offer);
        return new Typed(
                "p" + offer,
                "Price of " + start.set().ingredient(each.ingredient()).name() + ", " + each.supplier(),
                PriceText.of(each.pricePerKg()));
    }

    String out(int offer) {
        return "o" + offer;
    }

    /** What a form says. Fields that are not known say nothing. */
    public Changes changes(Map<String, String> form) {
        var limits = new ArrayList<TypedField>();
        for (int i = 0; i < bounds.size(); i++) {
            addLimit(form, i, "min", limits);
            addLimit(form, i, "max", limits);
        }
        var prices = new LinkedHashMap<OfferId, String>();
        var out = new LinkedHashSet<OfferId>();
        for (int i = 0; i < offers.size(); i++) {
            var price = form.get("p" + i);
            if (price != null) {
                prices.put(offers.get(i).id(), price);
            }
            if (form.containsKey(out(i))) {
                out.add(offers.get(i).id());
            }
        }
        return new Changes(form.get(BATCH), form.get(TARGET), limits, prices, out);
    }

    private void addLimit(Map<String, String> form, int bound, String side, List<TypedField> limits) {
        var text = form.get("b" + bound + "." + side);
        if (text != null) {
            var place = bounds.get(bound).origin();
            limits.add(new TypedField(place.file(), place.pointer(), side, text));
        }
    }

    /** The field that a problem is about; empty where it is about none of the page. */
    public Optional<String> fieldOf(Problem problem) {
        var file = problem.origin().file();
        var pointer = problem.origin().pointer();
        if (file.equals("--" + BATCH) || file.equals("--" + TARGET)) {
            return Optional.of(file.substring(2));
        }
        for (int i = 0; i < offers.size(); i++) {
            if (problem.origin().equals(ChangedBrief.placeOf(offers.get(i).id()))) {
                return Optional.of("p" + i);
            }
        }
        return fieldAt(file, pointer);
    }

    /** The field of a bound's number. */
    Optional<String> fieldAt(@Nullable String file, String pointer) {
        for (int i = 0; i < bounds.size(); i++) {
            var place = bounds.get(i).origin();
            boolean within = pointer.equals(place.pointer() + "/min") || pointer.equals(place.pointer() + "/max");
            if (within && place.file().equals(file)) {
                return Optional.of(
                        "b" + i + pointer.substring(pointer.lastIndexOf('/')).replace('/', '.'));
            }
        }
        return Optional.empty();
    }
}
