package panade.api;

import java.nio.file.Path;
import panade.document.syntax.Overrides;
import panade.plan.Engines;
import panade.plan.Planner;
import panade.solver.ortools.OrToolsMixedSolver;
import panade.solver.ortools.OrToolsSolver;

/** Opens briefs. Solving is safe from any thread; the native solvers answer one question at a time. */
public final class Panade {
    private static final Planner PLANNER =
            new Planner(new Engines(new OrToolsSolver(), OrToolsMixedSolver.cbc(), OrToolsMixedSolver.scip()));

    private Panade() {}

    /**
     * Reads a brief with its ingredient set, price lists and whatever it is based on.
     *
     * @param brief a JSON document as {@code panade blend} takes it
     * @return the product, or everything that is wrong with any of the documents; no exception is thrown for what
     *     stands in them
     */
    public static Opened open(Path brief) {
        return Product.read(PLANNER, brief, Overrides.NONE);
    }
}
