package panade.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Numbers of three digits that tell a taster nothing, in random order, none twice; the same for the same seed. */
public final class BlindCodes {
    private static final int FIRST = 100;
    private static final int LAST = 999;

    private BlindCodes() {}

    /**
     * So many codes.
     *
     * @param count at most the 900 that there are
     */
    public static List<Integer> draw(int count, long seed) {
        var codes = new ArrayList<>(IntStream.rangeClosed(FIRST, LAST).boxed().toList());
        if (count > codes.size()) {
            throw new IllegalArgumentException(
                    "There are " + codes.size() + " codes of three digits, not " + count + ".");
        }
        Collections.shuffle(codes, new Random(seed));
        return List.copyOf(codes.subList(0, count));
    }
}
