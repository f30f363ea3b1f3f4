package panade.cli;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import panade.model.LinearModel;
import panade.solver.Solver;
import panade.solver.SolverAnswer;

/** Counts what a solver solves, and shows the count. */
final class WatchedSolver implements Solver {
    private final Solver solver;
    private final ProgressLine progress;
    private final AtomicLong solved = new AtomicLong();

    WatchedSolver(Solver solver, ProgressLine progress) {
        this.solver = solver;
        this.progress = progress;
    }

    /** Whether it was asked for anything. */
    boolean isAsked() {
        return solved.get() > 0;
    }

    @Override
    public String name() {
        return solver.name();
    }

    @Override
    public SolverAnswer solve(LinearModel model, Duration limit) {
        var answer = solver.solve(model, limit);
        progress.show(solved.incrementAndGet(), "blends tried");
        return answer;
    }
}
