package panade.solver.ortools;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPSolverParameters.IntegerParam;
import java.time.Duration;
import java.util.Set;
import panade.model.LinearModel;
import panade.solver.SolverAnswer;

/** Owns one model in native memory from its making to its deletion, and asks GLOP for its basis. */
final class Glop {
    private final MPSolver solver;
    private final NativeModel copy;

    private Glop(MPSolver solver, LinearModel model) {
        this.solver = solver;
        this.copy = new NativeModel(solver, model, Set.of());
    }

    /** The only place that makes and deletes a native solver; nothing native outlives this call. */
    static SolverAnswer solve(LinearModel model, Duration limit) {
        var solver = MPSolver.createSolver("GLOP");
        if (solver == null) {
            return new SolverAnswer.Undecided("GLOP is not in the native libraries");
        }
        try {
            solver.setTimeLimit(NativeModel.milliseconds(limit));
            return new Glop(solver, model).answer(model);
        } catch (IllegalArgumentException e) {
            // The Java wrapper throws on a status number it does not know.
            return new SolverAnswer.Undecided("GLOP ended with an unknown status: " + e.getMessage());
        } finally {
            solver.delete();
        }
    }

    /**
     * Presolve mistakes rows of tiny units for infeasible ones, and an unbounded model for an infeasible one. Without
     * scaling GLOP may never end. The dual simplex calls a model unbounded that is infeasible as well.
     */
    private SolverAnswer answer(LinearModel model) {
        var parameters = new MPSolverParameters();
        try {
            parameters.setIntegerParam(
                    IntegerParam.PRESOLVE, MPSolverParameters.PresolveValues.PRESOLVE_OFF.swigValue());
            parameters.setIntegerParam(IntegerParam.SCALING, MPSolverParameters.ScalingValues.SCALING_ON.swigValue());
            parameters.setIntegerParam(
                    IntegerParam.LP_ALGORITHM, MPSolverParameters.LpAlgorithmValues.PRIMAL.swigValue());
            return answer(solver.solve(parameters), model);
        } finally {
            parameters.delete();
        }
    }

    private SolverAnswer answer(MPSolver.ResultStatus status, LinearModel model) {
        return switch (status) {
            case OPTIMAL -> new SolverAnswer.Optimal(Bases.read(copy.columns(), copy.rows(), model));
            case INFEASIBLE -> new SolverAnswer.Infeasible();
            case UNBOUNDED -> new SolverAnswer.Unbounded();
            default -> new SolverAnswer.Undecided("GLOP ended with " + status);
        };
    }
}
