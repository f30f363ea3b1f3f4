package panade.cli;

import java.time.Duration;
import java.time.Instant;
import java.util.function.BooleanSupplier;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;
import panade.model.LinearModel;
import panade.solver.Solver;
import panade.solver.SolverAnswer;

/** Counts what a solver solves, and shows the count on standard error once a run has taken a second. */
final class WatchedSolver implements Solver, AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final int UNKNOWN = -1;

    private final Solver solver;
    private final BooleanSupplier shown;
    private final Instant start = Instant.now();
    private long solved;
    private @Nullable ProgressBar bar;

    /**
     * A solver that is watched.
     *
     * @param shown whether anything may be shown; asked when there is something to show
     */
    WatchedSolver(Solver solver, BooleanSupplier shown) {
        this.solver = solver;
        this.shown = shown;
    }

    @Override
    public String name() {
        return solver.name();
    }

    @Override
    public SolverAnswer solve(LinearModel model, Duration limit) {
        var answer = solver.solve(model, limit);
        solved++;
        boolean isLong = Duration.between(start, Instant.now()).compareTo(PATIENCE) > 0;
        if (bar == null && isLong && shown.getAsBoolean()) {
            bar = new ProgressBarBuilder()
                    .setTaskName("blends tried")
                    .setInitialMax(UNKNOWN)
                    .setUnit("", 1)
                    .setStyle(ProgressBarStyle.UNICODE_BLOCK)
                    .hideEta()
                    .clearDisplayOnFinish()
                    .build();
        }
        if (bar != null) {
            bar.stepTo(solved);
        }
        return answer;
    }

    /** Takes the bar off the screen. */
    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
    }
}
