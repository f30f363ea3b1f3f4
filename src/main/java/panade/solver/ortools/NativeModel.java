package panade.solver.ortools;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.time.Duration;
import java.util.Set;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/** A model copied into native memory. Native objects get no names: a name given twice can end the process. */
final class NativeModel {
    private static final Duration SHORTEST = Duration.ofMillis(1);
    private static final Duration LONGEST = Duration.ofDays(1);

    private final MPSolver solver;
    private final MPVariable[] columns;
    private final MPConstraint[] rows;

    /** Copies a model; whoever made the solver deletes it. */
    NativeModel(MPSolver solver, LinearModel model, Set<Integer> whole) {
        this.solver = solver;
        this.columns = new MPVariable[model.columns().size()];
        this.rows = new MPConstraint[model.rows().size()];
        for (int j = 0; j < columns.length; j++) {
            columns[j] = solver.makeVar(0, MPSolver.infinity(), whole.contains(j), "");
            solver.objective()
                    .setCoefficient(columns[j], model.columns().get(j).cost().doubleValue());
        }
        solver.objective().setMinimization();
        for (int i = 0; i < rows.length; i++) {
            rows[i] = constraint(model.rows().get(i));
        }
    }

    MPVariable[] columns() {
        return columns;
    }

    MPConstraint[] rows() {
        return rows;
    }

    /** Never zero or less, which is taken for no limit at all. */
    static long milliseconds(Duration limit) {
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
        // in order: among equally good answers the native solvers choose by the order in which they are told
        row.form().forEach((j, value) -> constraint.setCoefficient(columns[j], value.doubleValue()));
        return constraint;
    }
}
