package panade.solver;

import panade.model.Basis;

/** What a solver claims. */
public sealed interface SolverAnswer {
    /** A least-cost point exists, and this basis gives it. */
    record Optimal(Basis basis) implements SolverAnswer {}

    /** No point meets all rows. */
    record Infeasible() implements SolverAnswer {}

    /** The cost falls without end. */
    record Unbounded() implements SolverAnswer {}

    /** No claim: a limit was reached, numbers were hopeless, or the engine is not there. */
    record Undecided(String reason) implements SolverAnswer {}
}
