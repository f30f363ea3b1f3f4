package panade.padic;

import java.math.BigInteger;

/** Arithmetic modulo the Mersenne prime 2^31 - 1, chosen because products of two residues fit in a long. */
final class Residues {
    static final long PRIME = 2_147_483_647L;
    static final BigInteger BIG_PRIME = BigInteger.valueOf(PRIME);

    private Residues() {}

    /** The residue from 0 up. */
    static long of(BigInteger value) {
        return value.bitLength() < Long.SIZE
                ? Math.floorMod(value.longValue(), PRIME)
                : value.mod(BIG_PRIME).longValue();
    }

    /** A residue minus a product of two. */
    static long minusProduct(long from, long a, long b) {
        return Math.floorMod(from - a * b % PRIME, PRIME);
    }

    /** The residue that gives one when multiplied by this one, which is not zero. */
    static long inverse(long value) {
        return BigInteger.valueOf(value).modInverse(BIG_PRIME).longValue();
    }
}
