package panade.scenario;

import java.math.BigInteger;
import java.util.Arrays;

/** Sums of many whole numbers: quick for a while, then carried over, so that neither order nor number matters. */
final class Sums {
    private final long[] running;
    private final BigInteger[] carried;

    Sums(int count) {
        running = new long[count];
        carried = new BigInteger[count];
        Arrays.fill(carried, BigInteger.ZERO);
    }

    /** Where to add; what is added between two carries must fit. */
    long[] running() {
        return running;
    }

    void carry() {
        for (int i = 0; i < running.length; i++) {
            if (running[i] != 0) {
                carried[i] = carried[i].add(BigInteger.valueOf(running[i]));
                running[i] = 0;
            }
        }
    }

    BigInteger get(int index) {
        return carried[index].add(BigInteger.valueOf(running[index]));
    }

    void add(Sums other) {
        for (int i = 0; i < carried.length; i++) {
            carried[i] = get(i).add(other.get(i));
            running[i] = 0;
        }
    }
}
