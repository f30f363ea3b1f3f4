package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * What taking a file in did, or would do.
 *
 * @param written whether the documents were written
 * @param refused whether nothing may be written, because something differs and nobody said what to do then
 * @param files the documents of the ingredient set that are concerned
 * @param guesses what columns were taken for because of their heads
 * @param previews the first rows as they were understood
 * @param notTaken rows that could not be taken: where, why, and what was expected
 * @param notes what was left out, and why
 * @param allergensNotKnown names of ingredients for which nobody says what they carry
 * @param keepsOld whether values that differ stay as they are
 * @param changesNothing whether no document comes out different from what is there
 */
public record ImportResult(
        boolean written,
        boolean refused,
        List<Document> files,
        List<Guess> guesses,
        List<Preview> previews,
        List<String> notTaken,
        List<String> notes,
        List<String> allergensNotKnown,
        @JsonIgnore boolean keepsOld,
        @JsonIgnore boolean changesNothing) {
    public ImportResult {
        files = List.copyOf(files);
        guesses = List.copyOf(guesses);
        previews = List.copyOf(previews);
        notTaken = List.copyOf(notTaken);
        notes = List.copyOf(notes);
        allergensNotKnown = List.copyOf(allergensNotKnown);
    }

    /**
     * What a column was taken for.
     *
     * @param sheet the sheet's name; empty where a file has only one table
     * @param heading as it stands in the table
     * @param as what it is in ours, such as {@code price per kg in USD}
     */
    public record Guess(String sheet, String heading, String as) {}

    /**
     * The first rows of what was read.
     *
     * @param of what they are: ingredients or prices
     * @param columns headings in plain words
     * @param rows cells in the same order; empty where nothing is stated
     * @param more how many rows follow that are not shown
     */
    public record Preview(String of, List<String> columns, List<List<String>> rows, int more) {
        public Preview {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /**
     * A document.
     *
     * @param file its path
     * @param isNew whether it is not there yet
     * @param changes what is different in it
     */
    public record Document(String file, @JsonProperty("new") boolean isNew, List<Change> changes) {
        public Document {
            changes = List.copyOf(changes);
        }
    }

    /**
     * One thing that differs from what was there.
     *
     * @param what what happens to it
     * @param of the ingredient, the trait or the supplier and ingredient of an offer
     * @param field what of it; empty for all of it
     * @param was as it was written; empty when it was not there
     * @param is as it is written; empty when it is gone
     */
    public record Change(Kind what, String of, String field, String was, String is) {}

    /** What happens to a value. */
    public enum Kind {
        ADDED,
        CHANGED,
        /** Only for offers of a price list that is replaced. */
        GONE
    }
}
