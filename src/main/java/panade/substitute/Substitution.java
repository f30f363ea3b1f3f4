package panade.substitute;

import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.explain.conflict.Conflict.Relaxation;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;

/**
 * What happens when ingredients are out.
 *
 * @param out ids of what is out, other lots included
 * @param before the best blend with it
 * @param after the best blend without it, or the proof that there is none
 * @param standIns each candidate that could do one of its jobs, tried alone, the cheapest first
 */
public record Substitution(Set<String> out, Blended before, Outcome after, List<StandIn> standIns) {

    /** The same with the explanation of what there is without it complete, or undecided where a part is not settled. */
    public Substitution explained() {
        return new Substitution(out, before, after.explained(), standIns);
    }

    /**
     * One stand-in on its own: others of the missing one's kinds that are new to the blend are left out too.
     *
     * @param ingredient its id
     * @param blended the best blend with it; null when it cannot do
     * @param share how much of it the blend takes; zero when the rest make up without it
     * @param failure when it cannot do, the number that would have to give, and how far; null when no single one would
     *     do
     * @param undecided why neither a blend nor its impossibility is proved; null when one of them is
     */
    public record StandIn(
            String ingredient,
            @Nullable Blended blended,
            BigFraction share,
            @Nullable Relaxation failure,
            @Nullable String undecided) {

        /** Whether a blend exists with it. */
        public boolean works() {
            return blended != null;
        }
    }
}
