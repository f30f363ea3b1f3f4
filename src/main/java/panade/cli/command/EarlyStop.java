package panade.cli.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import panade.solver.MixedSolver;

/**
 * While open, an interruption of the program (Ctrl-C) only ends the search; the program then has a while to print the
 * best that was found, and ends.
 */
public final class EarlyStop implements AutoCloseable {
    private static final int PATIENCE_SECONDS = 60;

    private final CountDownLatch printed = new CountDownLatch(1);
    private final MixedSolver search;
    private final Thread hook = new Thread(this::stop);
    private volatile boolean asked;

    public EarlyStop(MixedSolver search) {
        this.search = search;
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void stop() {
        asked = true;
        search.interrupt();
        try {
            boolean unused = printed.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether the program was interrupted. */
    boolean isAsked() {
        return asked;
    }

    /** What was found has been printed. */
    @Override
    public void close() {
        printed.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }
}
