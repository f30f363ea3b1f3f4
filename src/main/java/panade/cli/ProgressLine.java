package panade.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.function.BooleanSupplier;

/**
 * One line at the foot of a terminal that says how far a long run is. It is taken away before anything else is printed,
 * and does not come back once the answer has begun: standard output and standard error are the same screen there.
 */
final class ProgressLine {
    private static final Duration QUIET_TIME = Duration.ofSeconds(1);
    private static final Duration BETWEEN = Duration.ofMillis(100);

    private final PrintWriter terminal;
    private final BooleanSupplier shown;
    private final Duration quietTime;
    private final Instant start = Instant.now();
    private Instant last = Instant.EPOCH;
    private int width;
    private boolean over;

    /**
     * A line.
     *
     * @param terminal where it is written
     * @param shown whether anything may be shown; asked when there is something to show
     */
    ProgressLine(PrintWriter terminal, BooleanSupplier shown) {
        this(terminal, shown, QUIET_TIME);
    }

    ProgressLine(PrintWriter terminal, BooleanSupplier shown, Duration quietTime) {
        this.terminal = terminal;
        this.shown = shown;
        this.quietTime = quietTime;
    }

    /** Shows what was done so far, once a run has taken a second and ten times a second at most. */
    synchronized void show(long done, String what) {
        var now = Instant.now();
        var taken = Duration.between(start, now);
        boolean due =
                taken.compareTo(quietTime) >= 0 && Duration.between(last, now).compareTo(BETWEEN) >= 0;
        if (!over && due && shown.getAsBoolean()) {
            write(done + " " + what + ", " + taken.toSeconds() + " s");
            last = now;
        }
    }

    private void write(String words) {
        terminal.print("\r" + words + " ".repeat(Math.max(0, width - words.length())));
        terminal.flush();
        width = words.length();
    }

    /** Leaves the place as it was before. */
    synchronized void clear() {
        if (width > 0) {
            terminal.print("\r" + " ".repeat(width) + "\r");
            terminal.flush();
            width = 0;
        }
    }

    /** The answer begins: the line goes, and stays away. */
    synchronized void end() {
        clear();
        over = true;
    }
}
