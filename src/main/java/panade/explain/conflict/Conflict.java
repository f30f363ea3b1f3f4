package panade.explain.conflict;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.BoundId;
import panade.domain.Side;
import panade.domain.origin.Origin;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * Why no blend exists, and what would change that.
 *
 * @param sets irreducible sets of bounds and rules that cannot hold together: each is impossible, and without any one
 *     of its members that set is not
 * @param complete whether these are all such sets; false when only some were looked for or the search was cut short
 * @param separate how many sets were found of which no two share a member, so that as many changes are needed at least
 * @param proved whether it is proved that the first set cannot hold together; else that is the search's own word
 * @param cures single changes that each make a blend possible, cheapest first
 * @param combined changes that make a blend possible together, where no single number or rule does; empty when one does
 *     or none was found
 * @param combinedCost least cost after the joint move; null when there is none
 * @param open what could not be decided in time, in words
 */
public record Conflict(
        List<List<Member>> sets,
        boolean complete,
        int separate,
        boolean proved,
        List<Relaxation> cures,
        List<Relaxation> combined,
        @Nullable Cost combinedCost,
        List<String> open) {

    /**
     * One side of a bound in a conflict, or a rule.
     *
     * @param path JSON Pointer with the side, such as {@code /bounds/1/max}
     * @param words the bound and its limit as a cook reads it
     * @param frees whether the rest of the brief can hold without it
     */
    public record Member(String path, String name, String words, Origin origin, boolean frees) {}

    /**
     * What a blend costs then, in the basis of the brief.
     *
     * @param perKg money per kilogram
     * @param least whether it is proved that no blend costs less; else one may
     */
    public record Cost(BigFraction perKg, boolean least) {}

    /**
     * A change that makes a blend possible, or one of several that do together.
     *
     * @param path of the number or the exclusion
     * @param origin where that is written; null for what is kept out, which may be said in several places
     * @param name what changes
     * @param change how
     * @param cost least cost after it; null when no price is known, or it is not enough alone
     */
    public record Relaxation(
            String path,
            @Nullable Origin origin,
            String name,
            Change change,
            @Nullable Cost cost) {
        /** The least cost after it in money per kilogram; null when it is not known. */
        public @Nullable BigFraction costPerKg() {
            return cost == null ? null : cost.perKg();
        }
    }

    /** How something is changed. */
    public sealed interface Change {
        /**
         * A number moves, in the bound's own unit.
         *
         * @param bound whose number it is; null for the number of a rule or of an offer
         * @param side which of its numbers is written anew
         * @param kept the other side of a fixed bound of which only one side moves; null elsewhere
         */
        record Moves(
                @Nullable BoundId bound,
                Side side,
                BigFraction from,
                BigFraction to,
                Unit unit,
                @Nullable Quantity kept)
                implements Change {}

        /** A rule, or a label to keep, is given up. */
        record Drops() implements Change {}

        /** Something left out is allowed. */
        record Allows() implements Change {}
    }
}
