package panade.solver.ortools;

import java.time.Duration;
import java.util.Optional;
import panade.model.LinearModel;
import panade.solver.Solver;
import panade.solver.SolverAnswer;

/** Stands at the border to native code: lets only vetted models over it, and turns every failure into an answer. */
public final class OrToolsSolver implements Solver {
    /** Why no engine in native code answers on this machine; empty where they do. */
    public static Optional<String> missing() {
        return NativeLibraries.fault();
    }

    @Override
    public String name() {
        return "GLOP";
    }

    /** A model without rows or columns never reaches native code, where some such models end the process. */
    @Override
    public SolverAnswer solve(LinearModel model, Duration limit) {
        if (model.columns().isEmpty() || model.rows().isEmpty()) {
            return new SolverAnswer.Undecided("the model has no rows or no columns");
        }
        var scaled = RowScaling.scaled(model);
        var violation = ModelValidator.violation(scaled);
        if (violation.isPresent()) {
            return new SolverAnswer.Undecided(violation.get());
        }
        var fault = NativeLibraries.fault();
        return fault.isPresent() ? new SolverAnswer.Undecided(fault.get()) : Glop.solve(scaled, limit);
    }
}
