package panade.intake.table;

/**
 * One thing that differs from what was there.
 *
 * @param of the ingredient, the trait or the supplier and ingredient of an offer
 * @param field what of it; empty for all of it
 * @param before as it was written; empty when it was not there
 * @param after as it is written; empty when it is gone
 */
public record Change(Sort sort, String of, String field, String before, String after) {
    /** What happens. */
    public enum Sort {
        ADDED,
        CHANGED,
        /** Only for offers of a price list that is replaced. */
        GONE
    }
}
