package panade.solver.ortools;

import com.google.ortools.linearsolver.MPSolver;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import panade.model.MixedModel;
import panade.solver.MixedAnswer;
import panade.solver.MixedSolver;

/** The border to native code for models with whole numbers; as watchful as {@link OrToolsSolver}. */
public final class OrToolsMixedSolver implements MixedSolver {
    /**
     * Not the engine's own hand on Ctrl-C, which would keep it from the rest of the program; and few rounds of cuts
     * before branching, which cost more than they gain on plans of purchases.
     */
    private static final String SCIP_SETTINGS =
            "misc/catchctrlc = FALSE\nseparating/maxroundsroot = 5\nseparating/maxcutsroot = 200";

    private final String engine;
    private final String settings;
    /** Also the lock under which native solvers are interrupted and deleted, so that none is both. */
    private final Set<MPSolver> running = new HashSet<>();

    private final AtomicBoolean interrupted = new AtomicBoolean();

    private OrToolsMixedSolver(String engine, String settings) {
        this.engine = engine;
        this.settings = settings;
    }

    /** CBC: quick with few whole numbers; it heeds neither interruption nor, strictly, its time limit. */
    public static OrToolsMixedSolver cbc() {
        return new OrToolsMixedSolver("CBC", "");
    }

    /** SCIP: for long searches. */
    public static OrToolsMixedSolver scip() {
        return new OrToolsMixedSolver("SCIP", SCIP_SETTINGS);
    }

    @Override
    public String name() {
        return engine;
    }

    @Override
    public MixedAnswer solve(MixedModel model, Duration limit) {
        if (model.relaxed().columns().isEmpty() || model.relaxed().rows().isEmpty()) {
            return new MixedAnswer.Undecided("the model has no rows or no columns");
        }
        var scaled = RowScaling.scaled(model.relaxed());
        var violation = ModelValidator.violation(scaled);
        if (violation.isPresent()) {
            return new MixedAnswer.Undecided(violation.get());
        }
        var fault = NativeLibraries.fault();
        return fault.isPresent()
                ? new MixedAnswer.Undecided(fault.get(), false)
                : search(new MixedModel(scaled, model.whole()), limit);
    }

    /** The only place that makes and deletes a native solver; nothing native outlives this call. */
    private MixedAnswer search(MixedModel model, Duration limit) {
        var solver = MPSolver.createSolver(engine);
        if (solver == null) {
            return new MixedAnswer.Undecided(engine + " is not in the native libraries", false);
        }
        try {
            solver.setTimeLimit(NativeModel.milliseconds(limit));
            solver.setSolverSpecificParametersAsString(settings);
            var search = new MixedSearch(solver, model);
            return starts(solver) ? search.answer() : new MixedAnswer.Undecided("interrupted");
        } catch (IllegalArgumentException e) {
            // The Java wrapper throws on a status number it does not know.
            return new MixedAnswer.Undecided(engine + " ended with an unknown status: " + e.getMessage());
        } finally {
            delete(solver);
        }
    }

    private boolean starts(MPSolver solver) {
        synchronized (running) {
            return !interrupted.get() && running.add(solver);
        }
    }

    private void delete(MPSolver solver) {
        synchronized (running) {
            running.remove(solver);
            solver.delete();
        }
    }

    @Override
    public void interrupt() {
        synchronized (running) {
            interrupted.set(true);
            running.forEach(MPSolver::interruptSolve);
        }
    }
}
