package panade.plan;

import panade.certify.Branching;
import panade.certify.Certifier;
import panade.certify.Verdict;

/** How it was proved that no blend meets a brief; it can be made of a proof alone. */
public sealed interface Contradiction {
    /** What found it. */
    String engine();

    /** The bounds alone contradict each other: multipliers add their rows up to nothing being more than something. */
    record Sum(Verdict.Impossible proof) implements Contradiction {
        @Override
        public String engine() {
            return proof.engine();
        }
    }

    /** The bounds leave blends, and every choice that the rules leave was ruled out, each set of them exactly. */
    record RuledOut(Branching.Proof proof) implements Contradiction {
        /**
         * Takes a closed proof.
         *
         * @throws IllegalArgumentException if something is left open or a point was found
         */
        public RuledOut {
            if (!proof.isImpossible() || proof.best().isPresent()) {
                throw new IllegalArgumentException("nothing is proved impossible: " + proof);
            }
        }

        @Override
        public String engine() {
            return Certifier.EXACT_ENGINE;
        }
    }
}
