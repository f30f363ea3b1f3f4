package panade.compile;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.BoundId;
import panade.domain.Brief;
import panade.domain.Side;
import panade.domain.origin.Origin;
import panade.domain.purchase.Offer;
import panade.quantity.Quantity;

/** What a row stands for. */
public sealed interface Limit {
    /** Which row it is, whatever the number. */
    RowId id();

    /** What people read: the bound's name, or what can be had of what from whom. */
    String name();

    /** A row with a number that a document states and could state otherwise. */
    sealed interface OfNumber extends Limit {
        /** The number as it stands; of a fixed bound its ceiling. */
        Quantity number();

        /** Which of the bound's numbers it is. */
        Side side();

        /** Whose number it is; null for what can be had of an offer. */
        @Nullable
        BoundId boundId();

        /** Where it is written. */
        Origin origin();

        /** A JSON Pointer to it, side included where the bound is not fixed. */
        String path();

        /**
         * A brief with another number in its place, whatever else of that brief was changed before.
         *
         * @param side which of the bound's numbers; for an offer there is but one
         * @param to null to drop it
         */
        Brief with(Brief brief, Side side, @Nullable Quantity to);
    }

    /** One side of a bound, or both of a fixed one. */
    record OfBound(Bound bound, Side side) implements OfNumber {
        @Override
        public RowId id() {
            return new RowId.OfBound(bound.id(), side);
        }

        @Override
        public String name() {
            return bound.name();
        }

        @Override
        public Quantity number() {
            return Objects.requireNonNull(side == Side.MIN ? bound.min() : bound.max());
        }

        @Override
        public BoundId boundId() {
            return bound.id();
        }

        @Override
        public Origin origin() {
            return bound.origin();
        }

        @Override
        public String path() {
            return bound.path() + BriefCompiler.sideName(side);
        }

        @Override
        public Brief with(Brief brief, Side side, @Nullable Quantity to) {
            return brief.bounds().stream()
                    .filter(each -> each.id().equals(bound.id()))
                    .findFirst()
                    .map(current -> brief.replacing(current, current.withNumber(side, to)))
                    .orElse(brief);
        }
    }

    /** The most that can be had of an offer. */
    record OfOffer(Offer offer) implements OfNumber {
        @Override
        public RowId id() {
            return new RowId.OfOffer(offer.id());
        }

        @Override
        public String name() {
            return BriefCompiler.availabilityName(offer);
        }

        @Override
        public Quantity number() {
            return Objects.requireNonNull(offer.available());
        }

        @Override
        public Side side() {
            return Side.MAX;
        }

        @Override
        public @Nullable BoundId boundId() {
            return null;
        }

        @Override
        public Origin origin() {
            return offer.origin();
        }

        @Override
        public String path() {
            return offer.origin().pointer() + "/available";
        }

        @Override
        public Brief with(Brief brief, Side side, @Nullable Quantity to) {
            return brief.replacing(offer, offer.withAvailable(to));
        }
    }

    /** A tangent of what a sure bound must keep away; it follows from the bound, and asks for nothing of its own. */
    record OfCone(String name) implements Limit {
        @Override
        public RowId id() {
            return new RowId.OfCone(name);
        }
    }

    /** All shares together make the batch. */
    record OfBatch() implements Limit {
        @Override
        public RowId id() {
            return new RowId.OfBatch();
        }

        @Override
        public String name() {
            return "batch";
        }
    }
}
