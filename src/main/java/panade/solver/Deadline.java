package panade.solver;

import java.time.Duration;

/**
 * When a search has to end with what it has. Searches through choices of ingredients have no bound of their own.
 *
 * @param at on the clock of {@link System#nanoTime()}
 */
public record Deadline(long at) {
    /** The deadline after some time from now. */
    public static Deadline in(Duration time) {
        return new Deadline(System.nanoTime() + time.toNanos());
    }

    /** Whether the time is over. */
    public boolean isOver() {
        return at - System.nanoTime() <= 0;
    }

    /** The time that is left, at most so much. */
    public Duration left(Duration most) {
        var left = Duration.ofNanos(Math.max(0, at - System.nanoTime()));
        return left.compareTo(most) < 0 ? left : most;
    }

    /** The earlier of this deadline and one after some time from now. */
    public Deadline within(Duration time) {
        return in(left(time));
    }
}
