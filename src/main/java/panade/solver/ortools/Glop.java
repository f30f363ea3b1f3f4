package panade.solver.ortools;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPSolverParameters.IntegerParam;
import com.google.ortools.linearsolver.MPVariable;
import java.time.Duration;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.solver.SolverAnswer;

/**
 * Owns one model in native memory from its making to its deletion. Native objects get no names: a name given twice can
 * end the process.
 */
final class Glop {
    private static final Duration SHORTEST = Duration.ofMillis(1);
    private static final Duration LONGEST = Duration.ofDays(1);

    private final MPSolver solver;
    private final MPVariable[] columns;
    private final MPConstraint[] rows;

    private Glop(MPSolver solver, LinearModel model) {
        this.solver = solver;
        this.columns = new MPVariable[model.columns().size()];
        this.rows = new MPConstraint[model.rows().size()];
        for (int j = 0; j < columns.length; j++) {
            columns[j] = solver.makeNumVar(0, MPSolver.infinity(), "");
            solver.objective()
                    .setCoefficient(columns[j], model.columns().get(j).cost().doubleValue());
        }
        solver.objective().setMinimization();
        for (int i = 0; i < rows.length; i++) {
            rows[i] = constraint(model.rows().get(i));
        }
    }

    /** The only place that makes and deletes a native solver; nothing native outlives this call. */
    static SolverAnswer solve(LinearModel model, Duration limit) {
        var solver = MPSolver.createSolver("GLOP");
        if (solver == null) {
            return new SolverAnswer.Undecided("GLOP is not in the native libraries");
        }
        try {
            solver.setTimeLimit(milliseconds(limit));
            return new Glop(solver, model).answer(model);
        } catch (IllegalArgumentException e) {
            // The Java wrapper throws on a status number it does not know.
            return new SolverAnswer.Undecided("GLOP ended with an unknown status: " + e.getMessage());
        } finally {
            solver.delete();
        }
    }

    /** Never zero or less, which GLOP takes for no limit at all. */
    private static long milliseconds(Duration limit) {
        if (limit.compareTo(SHORTEST) < 0) {
            return SHORTEST.toMillis();
        }
        return limit.compareTo(LONGEST) > 0 ? LONGEST.toMillis() : limit.toMillis();
    }

    private MPConstraint constraint(Row row) {
        double right = row.right().doubleValue();
        double lower = row.sense() == Sense.AT_MOST ? -MPSolver.infinity() : right;
        double upper = row.sense() == Sense.AT_LEAST ? MPSolver.infinity() : right;
        var constraint = solver.makeConstraint(lower, upper, "");
        row.coefficients().forEach((j, value) -> constraint.setCoefficient(columns[j], value.doubleValue()));
        return constraint;
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
            case OPTIMAL -> new SolverAnswer.Optimal(Bases.read(columns, rows, model));
            case INFEASIBLE -> new SolverAnswer.Infeasible();
            case UNBOUNDED -> new SolverAnswer.Unbounded();
            default -> new SolverAnswer.Undecided("GLOP ended with " + status);
        };
    }
}
