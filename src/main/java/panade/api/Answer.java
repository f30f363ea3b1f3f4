package panade.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.assemble.BlendResults;
import panade.assemble.NoBlendResults;
import panade.cost.OptionalSections;
import panade.plan.Outcome;
import panade.result.BlendResult;
import panade.result.BoundResult;
import panade.result.NoBlendResult;

/** What came of a product: a proved blend, the proof that there is none, or nothing that could be proved. */
public sealed interface Answer {
    /** What each of the three cases comes to. */
    default <R> R fold(Function<Blend, R> blend, Function<NoBlend, R> none, Function<Undecided, R> undecided) {
        if (this instanceof Blend found) {
            return blend.apply(found);
        }
        return this instanceof NoBlend proof ? none.apply(proof) : undecided.apply((Undecided) this);
    }

    /** The cheapest blend, proved. Reasons are worked out when they are asked for, each once. */
    final class Blend implements Answer {
        private final Outcome.Blended found;

        Blend(Outcome.Blended found) {
            this.found = found;
        }

        /** The least cost in money per kilogram; cooked where the brief says so. Exact. */
        public BigFraction costPerKg() {
            return found.blend().costPerKg();
        }

        /** Shares of the batch by ingredient id, over all stages; they add to one. Exact. */
        public Map<String, BigFraction> shares() {
            var shares = new LinkedHashMap<String, BigFraction>();
            found.blend()
                    .lines()
                    .forEach(line -> shares.merge(line.use().ingredient(), line.share(), BigFraction::add));
            return shares;
        }

        /**
         * Every bound with its value, what binds, and what moving its number by one does to the least cost.
         *
         * @throws panade.model.Unproved where a rate cannot be proved
         */
        public List<BoundResult> bounds() {
            return BlendResults.bounds(found);
        }

        /**
         * All that {@code panade blend --json} tells, but for the room around the blend, which
         * {@link Product#explain()} measures.
         *
         * @throws panade.model.Unproved where a part of it cannot be proved
         */
        public BlendResult result() {
            return BlendResults.of(found, OptionalSections.NONE);
        }
    }

    /** Proof that no blend keeps every bound. */
    final class NoBlend implements Answer {
        private final Outcome.Conflicted found;

        NoBlend(Outcome.Conflicted found) {
            this.found = found;
        }

        /** Bounds that cannot hold together, and single changes that would do; each was solved with. */
        public NoBlendResult result() {
            return NoBlendResults.of(found);
        }
    }

    /**
     * Neither a blend nor that there is none could be proved in the time there was.
     *
     * @param reason a clause without a full stop
     */
    record Undecided(String reason) implements Answer {}
}
