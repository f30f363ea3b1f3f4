package panade.compile;

import panade.domain.BoundId;
import panade.domain.Side;
import panade.domain.purchase.OfferId;

/** Which row is meant, in whichever model of a brief and whatever its number. */
public sealed interface RowId {
    /** One side of a bound. */
    record OfBound(BoundId bound, Side side) implements RowId {}

    /** The most that can be had of an offer. */
    record OfOffer(OfferId offer) implements RowId {}

    /** All shares together make the batch. */
    record OfBatch() implements RowId {}

    /** A tangent of a cone, by its name. */
    record OfCone(String name) implements RowId {}
}
