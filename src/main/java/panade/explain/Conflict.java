package panade.explain;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Origin;
import panade.quantity.Unit;

/**
 * Why no blend exists, and what would change that.
 *
 * @param sets irreducible sets of bounds that cannot hold together: each is impossible, and without any one of its
 *     members it is not
 * @param complete whether these are all such sets; false when only some were looked for or the search was cut short
 * @param cures single changes that each make a blend possible, cheapest first
 * @param combined the least joint move, where no more than one number must give; empty when a single cure does it
 * @param combinedCostPerKg least cost after the joint move; null when there is none
 */
public record Conflict(
        List<List<Member>> sets,
        boolean complete,
        List<Cure> cures,
        List<Cure> combined,
        @Nullable BigFraction combinedCostPerKg) {

    /**
     * One side of a bound in a conflict.
     *
     * @param path JSON Pointer with the side, such as {@code /bounds/1/max}
     * @param words the bound and its limit as a cook reads it
     */
    public record Member(String path, String name, String words, Origin origin) {}

    /**
     * A change that makes a blend possible.
     *
     * @param path of the number or the exclusion
     * @param name what changes
     * @param change how
     * @param costPerKg least cost after it; null when no price is known
     */
    public record Cure(
            String path,
            String name,
            Change change,
            @Nullable BigFraction costPerKg) {}

    /** How something is changed. */
    public sealed interface Change {
        /** A number moves, in the bound's own unit. */
        record Moves(BigFraction from, BigFraction to, Unit unit) implements Change {}

        /** A rule is given up. */
        record Drops() implements Change {}

        /** Something left out is allowed. */
        record Allows() implements Change {}
    }
}
