package panade.solver.ortools;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.HashSet;
import panade.model.Basis;
import panade.model.LinearModel;

/** Reads the final basis, the only thing that is believed of a native answer, and that only until it is certified. */
final class Bases {
    private Bases() {}

    static Basis read(MPVariable[] columns, MPConstraint[] rows, LinearModel model) {
        var basicColumns = new HashSet<Integer>();
        var basicRows = new HashSet<Integer>();
        for (int j = 0; j < model.columns().size(); j++) {
            if (columns[j].basisStatus() == MPSolver.BasisStatus.BASIC) {
                basicColumns.add(j);
            }
        }
        for (int i = 0; i < model.rows().size(); i++) {
            if (rows[i].basisStatus() == MPSolver.BasisStatus.BASIC) {
                basicRows.add(i);
            }
        }
        return new Basis(basicColumns, basicRows);
    }
}
