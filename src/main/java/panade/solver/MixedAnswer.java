package panade.solver;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;

/** What a mixed-integer solver claims. */
public sealed interface MixedAnswer {
    /**
     * A point exists with these whole numbers.
     *
     * @param values by column that must be whole
     * @param bound below which the solver says no cost can be, as far as binary floating point goes
     * @param finished whether it says that none is cheaper; false when a limit was reached
     */
    record Found(Map<Integer, BigInteger> values, BigDecimal bound, boolean finished) implements MixedAnswer {
        public Found {
            values = Map.copyOf(values);
        }
    }

    /** No point meets all rows. */
    record Infeasible() implements MixedAnswer {}

    /**
     * No claim.
     *
     * @param reason why, one clause
     * @param asked whether there was a solver to ask; where there was none, more time does not help
     */
    record Undecided(String reason, boolean asked) implements MixedAnswer {
        /** A solver that was asked made no claim. */
        public Undecided(String reason) {
            this(reason, true);
        }
    }
}
