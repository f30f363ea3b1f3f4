package panade.scenario;

import static panade.scenario.SplitMix.GOLDEN;
import static panade.scenario.SplitMix.mixed;

import java.math.BigInteger;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Prices drawn at random, each evenly between its spread below and its spread above today's, each on its own. A draw is
 * a function of the seed and its number alone, so draws can be made in any order and made again, and it is a whole
 * number of small steps, so that it is known exactly.
 */
public final class PriceDraws {
    /** Steps from today's price to the end of its spread. */
    static final int STEPS = 1 << 21;

    private static final BigInteger ALL_STEPS = BigInteger.valueOf(STEPS);
    private static final long MASK = STEPS - 1L;
    private static final int DRAWS_IN_A_WORD = 3;
    private static final int BITS = 21;

    private final long seed;
    private final List<BigFraction> spreads;

    /**
     * Draws of as many prices as there are spreads.
     *
     * @param spreads how far each price may be off, as a fraction of it, below one
     */
    public PriceDraws(long seed, List<BigFraction> spreads) {
        this.seed = mixed(seed + GOLDEN);
        this.spreads = List.copyOf(spreads);
    }

    /** How many prices there are. */
    int count() {
        return spreads.size();
    }

    /** Whether a price is ever anything but today's. */
    public boolean moves(int price) {
        return spreads.get(price).signum() != 0;
    }

    /** Each spread in binary floating point. */
    double[] widths() {
        return spreads.stream().mapToDouble(BigFraction::doubleValue).toArray();
    }

    /** Writes how many steps each price is off in one draw: odd numbers, evenly spread on both sides of nothing. */
    void steps(long draw, int[] into) {
        long state = mixed(seed ^ (draw * GOLDEN));
        long word = 0;
        for (int price = 0; price < into.length; price++) {
            if (price % DRAWS_IN_A_WORD == 0) {
                state += GOLDEN;
                word = mixed(state);
            }
            into[price] = (int) (((word & MASK) << 1) + 1 - STEPS);
            word >>>= BITS;
        }
    }

    /** What each price is multiplied by in one draw. */
    public List<BigFraction> factors(long draw) {
        var steps = new int[count()];
        steps(draw, steps);
        return IntStream.range(0, steps.length)
                .mapToObj(price -> factor(price, steps[price]))
                .toList();
    }

    /** What a price is multiplied by when it is that many steps off. */
    BigFraction factor(int price, int steps) {
        return BigFraction.ONE.add(spreads.get(price).multiply(BigFraction.of(BigInteger.valueOf(steps), ALL_STEPS)));
    }
}
