package panade.plan;

import java.time.Duration;
import panade.model.MixedModel;
import panade.solver.MixedAnswer;
import panade.solver.MixedSolver;
import panade.solver.Solver;

/**
 * The solvers that are asked.
 *
 * @param linear for linear models
 * @param mixed for models with few whole numbers
 * @param plans for models with many, which may take long and can be interrupted
 */
public record Engines(Solver linear, MixedSolver mixed, MixedSolver plans) {
    /** Linear models only; models with whole numbers are branched on without a first guess. */
    public static Engines linear(Solver solver) {
        return new Engines(solver, new Unasked(), new Unasked());
    }

    private static final class Unasked implements MixedSolver {
        @Override
        public String name() {
            return "branching";
        }

        @Override
        public MixedAnswer solve(MixedModel model, Duration limit) {
            return new MixedAnswer.Undecided("no solver was asked", false);
        }

        @Override
        public void interrupt() {
            // nothing ever runs
        }
    }
}
