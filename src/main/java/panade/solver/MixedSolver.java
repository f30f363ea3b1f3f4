package panade.solver;

import java.time.Duration;
import panade.model.MixedModel;

/** Solves mixed-integer models. What it says is a claim until it has been checked. */
public interface MixedSolver {
    /** Its name, for the record of which engine answered. */
    String name();

    /** Solves a model within a time limit; never throws for anything that is in the model. */
    MixedAnswer solve(MixedModel model, Duration limit);

    /** Ends what is being solved, in whatever thread, with the best there is; what is asked for later ends at once. */
    void interrupt();
}
