package panade.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * What one taster is served in a triangle test, from left to right.
 *
 * @param cups which of the two samples is in each
 * @param codes what stands on each
 */
public record TriangleServing(List<Sample> cups, List<Integer> codes) {
    /** The two that are compared. */
    public enum Sample {
        A,
        B
    }

    /** Each sample twice, with the other before, between and after: no place and no sample is odd more often. */
    private static final List<List<Sample>> ORDERS = List.of(
            List.of(Sample.A, Sample.A, Sample.B),
            List.of(Sample.B, Sample.B, Sample.A),
            List.of(Sample.A, Sample.B, Sample.A),
            List.of(Sample.B, Sample.A, Sample.B),
            List.of(Sample.B, Sample.A, Sample.A),
            List.of(Sample.A, Sample.B, Sample.B));

    /** How many tasters have codes of their own. */
    public static final int MOST_TASTERS = 300;

    public TriangleServing {
        cups = List.copyOf(cups);
        codes = List.copyOf(codes);
    }

    /**
     * A serving for each taster: the six orders as evenly as their number allows, in random order, no code twice.
     *
     * @param tasters at most 300
     */
    public static List<TriangleServing> serve(int tasters, long seed) {
        if (tasters > MOST_TASTERS) {
            throw new IllegalArgumentException("Codes of three digits are enough for " + MOST_TASTERS + " tasters.");
        }
        var random = new Random(seed);
        var codes = BlindCodes.draw(3 * tasters, random.nextLong());
        var orders = new ArrayList<List<Sample>>();
        while (orders.size() < tasters) {
            var six = new ArrayList<>(ORDERS);
            Collections.shuffle(six, random);
            orders.addAll(six);
        }
        var servings = new ArrayList<TriangleServing>();
        for (int i = 0; i < tasters; i++) {
            servings.add(new TriangleServing(orders.get(i), codes.subList(3 * i, 3 * i + 3)));
        }
        return servings;
    }

    /** The place of the cup unlike the other two, from nought. */
    public int odd() {
        return cups.get(0) == cups.get(1) ? 2 : cups.get(0) == cups.get(2) ? 1 : 0;
    }
}
