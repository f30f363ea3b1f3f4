package panade.solver;

import java.time.Duration;
import panade.model.LinearModel;

/** Solves linear models. What it says is a claim until it has been certified. */
public interface Solver {
    /** Its name, for the record of which engine answered. */
    String name();

    /** Solves a model within a time limit; never throws for anything that is in the model. */
    SolverAnswer solve(LinearModel model, Duration limit);
}
