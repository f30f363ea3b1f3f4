package panade.scenario;

/** The mixing of SplitMix64 (Steele, Lea and Flood, OOPSLA 2014): numbers as good as random from a counted state. */
final class SplitMix {
    /** The odd number nearest to 2^64 divided by the golden ratio. */
    static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private SplitMix() {}

    /** The finishing function. */
    static long mixed(long state) {
        long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
