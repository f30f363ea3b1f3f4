package panade.remark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.domain.pantry.Ingredient;
import panade.domain.purchase.Offer;
import panade.quantity.Decimal;

/** Remarks on ceilings on use above what a note beside them allows. Whether a law allows less is for a reviewer. */
final class NoteRemarks {
    private static final BigFraction HUNDRED = BigFraction.of(100);

    /** How notes state a ceiling; common practice, no source. */
    private static final Pattern CEILING =
            Pattern.compile("(?i)\\b(?:at most|up to|no more than|not (?:above|over|more than)|max(?:imum)?\\.?|limit)"
                    + "(?: (?:use|usage|level|dose|of|is|at|be))*:? ?(\\d{1,3}(?:\\.\\d{1,4})?) ?%");

    private NoteRemarks() {}

    static List<Remark> of(Brief brief) {
        var remarks = new ArrayList<Remark>();
        var offers = brief.offersByIngredient();
        for (var id : brief.candidates()) {
            var ingredient = brief.set().ingredient(id);
            notes(ingredient, offers.getOrDefault(id, List.of()))
                    .flatMap(note -> remark(ingredient, note).stream())
                    .findFirst()
                    .ifPresent(remarks::add);
        }
        return remarks;
    }

    private static Stream<String> notes(Ingredient ingredient, List<Offer> offers) {
        return Stream.concat(Stream.of(ingredient.note()), offers.stream().map(Offer::note));
    }

    private static Optional<Remark> remark(Ingredient ingredient, String note) {
        var match = CEILING.matcher(note);
        if (!match.find()) {
            return Optional.empty();
        }
        var allowed = Decimal.of(match.group(1)).divide(HUNDRED);
        var maxUse = ingredient.maxUse();
        if (maxUse != null && maxUse.base().compareTo(allowed) <= 0) {
            return Optional.empty();
        }
        var stated = maxUse == null ? "and no \"maxUse\" keeps it" : "and \"maxUse\" allows " + maxUse.text();
        return Optional.of(new Remark(
                ingredient.origin(),
                "The note of \"" + ingredient.id() + "\" says \"" + match.group() + "\", " + stated
                        + ". A blend may hold more than its supplier or a law allows. Write \"maxUse\": \""
                        + match.group(1)
                        + " %\" if the note holds for this use."));
    }
}
