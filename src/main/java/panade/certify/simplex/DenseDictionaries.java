package panade.certify.simplex;

import java.util.concurrent.atomic.AtomicInteger;

/** How many dense dictionaries were made: each is work that a sparse solve of a basis would have saved. */
public final class DenseDictionaries {
    private static final AtomicInteger MADE = new AtomicInteger();

    private DenseDictionaries() {}

    static void count() {
        MADE.incrementAndGet();
    }

    /** How many were made in this process so far. */
    public static int made() {
        return MADE.get();
    }
}
