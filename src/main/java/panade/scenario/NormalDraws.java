package panade.scenario;

import static panade.scenario.SplitMix.GOLDEN;
import static panade.scenario.SplitMix.mixed;

/**
 * Numbers drawn from the standard normal distribution, each on its own, to a thousandth. A draw is a function of the
 * seed and its number alone, and shares nothing with {@link PriceDraws} of the same seed.
 */
public final class NormalDraws {
    /** Parts of a standard deviation that a draw is a whole number of. */
    public static final int PARTS = 1000;

    private static final long APART = 0x6E6F726D616C73L;
    private static final double OF_53_BITS = 0x1p-53;

    private final long seed;

    /** The draws of a seed. */
    public NormalDraws(long seed) {
        this.seed = mixed(mixed(seed + GOLDEN) ^ APART);
    }

    /** How many thousandths of a standard deviation each of some numbers is off in one draw. */
    public int[] thousandths(long draw, int count) {
        var drawn = new int[count];
        long state = mixed(seed ^ (draw * GOLDEN));
        for (int i = 0; i < count; i++) {
            long first = mixed(state += GOLDEN);
            long second = mixed(state += GOLDEN);
            drawn[i] = (int) StrictMath.rint(PARTS * normal(first, second));
        }
        return drawn;
    }

    /** Box and Muller's (1958), by {@link StrictMath}, which gives the same on every machine. */
    private static double normal(long first, long second) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(((first >>> 11) + 1) * OF_53_BITS));
        return radius * StrictMath.cos(2 * Math.PI * ((second >>> 11) * OF_53_BITS));
    }
}
