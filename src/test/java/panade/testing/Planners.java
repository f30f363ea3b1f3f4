package panade.testing;

import panade.plan.Engines;
import panade.plan.Planner;
import panade.solver.ortools.OrToolsMixedSolver;
import panade.solver.ortools.OrToolsSolver;

/** The planners that tests ask. */
public final class Planners {
    /** Without a search engine for whole numbers: rules and whole packs are settled by branching alone. */
    public static final Planner LINEAR = new Planner(new OrToolsSolver());

    /** With every engine that the program has. */
    public static final Planner FULL =
            new Planner(new Engines(new OrToolsSolver(), OrToolsMixedSolver.cbc(), OrToolsMixedSolver.scip()));

    private Planners() {}
}
