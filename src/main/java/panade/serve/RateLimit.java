package panade.serve;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;

/** Lets so many through at once, and then so many a second. */
final class RateLimit {
    private static final long SECOND = Duration.ofSeconds(1).toNanos();

    private final int burst;
    private final long pause;
    private final LongSupplier nanos;
    private final AtomicLong free;

    RateLimit(int burst, int perSecond, LongSupplier nanos) {
        this.burst = burst;
        this.pause = SECOND / perSecond;
        this.nanos = nanos;
        this.free = new AtomicLong(nanos.getAsLong() - burst * pause);
    }

    /** Whether one more is let through now. */
    synchronized boolean tryPass() {
        long now = nanos.getAsLong();
        long earliest = now - burst * pause;
        if (free.get() - earliest < 0) {
            free.set(earliest);
        }
        if (free.get() - now > -pause) {
            return false;
        }
        free.addAndGet(pause);
        return true;
    }
}
