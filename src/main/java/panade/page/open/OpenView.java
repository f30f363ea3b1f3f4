package panade.page.open;

import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.page.Content.Proof;
import panade.page.Content.Stages;
import panade.page.Corridor;
import panade.page.PageView.Headline;
import panade.report.Block;

/**
 * What the page to work on shows, worded.
 *
 * @param title the product's name
 * @param facts what it was opened from, each a short line
 * @param version of the documents that it was opened from
 * @param saveAs a name for a brief that says what is changed
 * @param fields of the batch and the target
 * @param headline what came of the brief as it stands
 * @param said the same in a sentence, for whoever hears the page
 * @param moved what differs from the start
 * @param stages what goes in; null where there is no blend
 * @param conflict why there is no blend; null where there is one
 * @param bounds those that are typed into, in the order of the brief
 * @param others limits of the pantry, the price lists and the rules that the blend comes near
 * @param prices of all offers
 * @param proof null where nothing is proved
 * @param remarks on the documents
 */
public record OpenView(
        String title,
        List<String> facts,
        String version,
        String saveAs,
        List<Typed> fields,
        Headline headline,
        String said,
        Moved moved,
        @Nullable Stages stages,
        @Nullable Conflict conflict,
        List<BoundEntry> bounds,
        List<Block> others,
        List<PriceEntry> prices,
        @Nullable Proof proof,
        List<Block> remarks) {
    public OpenView {
        facts = List.copyOf(facts);
        fields = List.copyOf(fields);
        bounds = List.copyOf(bounds);
        others = List.copyOf(others);
        prices = List.copyOf(prices);
        remarks = List.copyOf(remarks);
    }

    /**
     * A field that is typed into.
     *
     * @param name of the form's field
     * @param label what it is, for whoever does not see where it stands
     * @param start what the documents say; empty where they say nothing
     */
    public record Typed(String name, String label, String start) {}

    /**
     * A bound.
     *
     * @param id of its row
     * @param value with its unit; empty where there is no blend or no bound
     * @param corridor where the value lies; null as before
     * @param touch words for where the blend touches it; empty where it does not
     * @param words what comes of that
     */
    public record BoundEntry(
            String id,
            String name,
            Typed min,
            Typed max,
            String value,
            @Nullable Corridor corridor,
            String touch,
            String words) {}

    /**
     * An offer.
     *
     * @param id of its row
     * @param out name of the form's field that says it cannot be had
     * @param had whether it can be had and may be used at the start
     * @param words how much of it goes in, or why it cannot be had
     */
    public record PriceEntry(
            String id, String ingredient, String supplier, Typed price, String out, boolean had, String words) {}

    /** What differs from the start: sentences, and shares that moved. */
    public record Moved(List<String> sentences, List<Block> shares) {}

    /** Why there is no blend, and what would make one possible. */
    public record Conflict(List<Block> sets, List<Cure> cures, List<Block> words) {}

    /**
     * A change that makes a blend possible.
     *
     * @param form the change as a form; empty where it cannot be made on the page
     */
    public record Cure(String words, String cost, String form) {}
}
