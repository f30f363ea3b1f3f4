package panade.solver.ortools;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPSolverParameters.IntegerParam;
import java.util.Set;
import panade.model.LinearModel;

/**
 * One model held in GLOP and solved again and again at other costs, each time from the last basis: what anybody would
 * do with the solver alone. Presolve off, scaling on, which is the fastest setting whose answers are right.
 */
public final class WarmGlop implements AutoCloseable {
    private final MPSolver solver;
    private final NativeModel model;
    private final MPSolverParameters parameters;

    public WarmGlop(LinearModel linear) {
        NativeLibraries.fault().ifPresent(fault -> {
            throw new IllegalStateException(fault);
        });
        parameters = new MPSolverParameters();
        solver = MPSolver.createSolver("GLOP");
        model = new NativeModel(solver, RowScaling.scaled(linear), Set.of());
        parameters.setIntegerParam(IntegerParam.PRESOLVE, MPSolverParameters.PresolveValues.PRESOLVE_OFF.swigValue());
        parameters.setIntegerParam(IntegerParam.SCALING, MPSolverParameters.ScalingValues.SCALING_ON.swigValue());
        parameters.setIntegerParam(IntegerParam.LP_ALGORITHM, MPSolverParameters.LpAlgorithmValues.PRIMAL.swigValue());
    }

    /** The least cost at other costs of the columns. */
    public double leastCost(double[] costs) {
        var objective = solver.objective();
        for (int j = 0; j < costs.length; j++) {
            objective.setCoefficient(model.columns()[j], costs[j]);
        }
        if (solver.solve(parameters) != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("GLOP did not find the optimum");
        }
        return objective.value();
    }

    @Override
    public void close() {
        parameters.delete();
        solver.delete();
    }
}
