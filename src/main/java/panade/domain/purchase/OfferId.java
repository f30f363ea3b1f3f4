package panade.domain.purchase;

/**
 * Which offer is meant, whatever it says: two rows that read alike are two offers, and one row stays itself when its
 * price is changed or its file is named by another path.
 *
 * @param list the price list's own path, with links followed; empty where no list states the offer
 * @param row the line it begins in, counted from 1; 0 where no list states the offer
 * @param ingredient id of what is offered
 */
public record OfferId(String list, int row, String ingredient) {

    /** An offer that stands in no list, of which there is one for each ingredient at most. */
    public static OfferId unlisted(String ingredient) {
        return new OfferId("", 0, ingredient);
    }
}
