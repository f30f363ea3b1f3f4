package panade.solver.ortools;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPSolverParameters.DoubleParam;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import panade.model.MixedModel;
import panade.solver.MixedAnswer;

/** A mixed-integer model copied into native memory, and what the engine there says of it when asked for the optimum. */
final class MixedSearch {
    private final MPSolver solver;
    private final NativeModel model;
    private final MixedModel mixed;

    MixedSearch(MPSolver solver, MixedModel mixed) {
        this.solver = solver;
        this.mixed = mixed;
        this.model = new NativeModel(solver, mixed.relaxed(), mixed.whole());
    }

    MixedAnswer answer() {
        var parameters = new MPSolverParameters();
        try {
            // the gap that is usual would do for less than the optimum
            parameters.setDoubleParam(DoubleParam.RELATIVE_MIP_GAP, 0);
            return answer(solver.solve(parameters));
        } finally {
            parameters.delete();
        }
    }

    private MixedAnswer answer(MPSolver.ResultStatus status) {
        return switch (status) {
            case OPTIMAL, FEASIBLE ->
                new MixedAnswer.Found(
                        values(), decimal(solver.objective().bestBound()), status == MPSolver.ResultStatus.OPTIMAL);
            case INFEASIBLE -> new MixedAnswer.Infeasible();
            default -> new MixedAnswer.Undecided("the search ended with " + status);
        };
    }

    private Map<Integer, BigInteger> values() {
        var values = new HashMap<Integer, BigInteger>();
        for (int column : mixed.whole()) {
            values.put(column, whole(decimal(model.columns()[column].solutionValue())));
        }
        return values;
    }

    private static BigInteger whole(BigDecimal value) {
        return value.setScale(0, RoundingMode.HALF_EVEN).toBigInteger();
    }

    private static BigDecimal decimal(double value) {
        return Double.isFinite(value) ? BigDecimal.valueOf(value) : BigDecimal.ZERO;
    }
}
