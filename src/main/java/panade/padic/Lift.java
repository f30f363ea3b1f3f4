package panade.padic;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The solution of a system digit by digit, to the base of the prime: each digit is the solution, modulo the prime, of
 * what the digits before it leave over.
 */
interface Lift {
    /** Works out one digit more of every unknown. */
    void digit();

    /** The unknowns as far as they are known, modulo the prime to the number of digits. */
    BigInteger[] values();

    /**
     * The lift of a system.
     *
     * @param solver of the system modulo the prime; may use up what it is given
     */
    static Lift of(SquareMatrix matrix, List<BigInteger> right, UnaryOperator<long[]> solver) {
        return matrix.isSmall(right) ? new Small(matrix, right, solver) : new Large(matrix, right, solver);
    }

    /**
     * Where all numbers are small. What is left over is divisible by the prime, and the quotient is small again (no
     * more than a line's entries add up to), so that it is known from its last 64 bits: the prime is odd and has an
     * inverse modulo 2^64.
     */
    final class Small implements Lift {
        private static final long INVERSE = BigInteger.valueOf(Residues.PRIME)
                .modInverse(BigInteger.ONE.shiftLeft(Long.SIZE))
                .longValue();

        private final SquareMatrix matrix;
        private final UnaryOperator<long[]> solver;
        private final long[] rest;
        private long[][] digits = new long[8][];
        private int known;

        Small(SquareMatrix matrix, List<BigInteger> right, UnaryOperator<long[]> solver) {
            this.matrix = matrix;
            this.solver = solver;
            this.rest = right.stream().mapToLong(BigInteger::longValueExact).toArray();
        }

        @Override
        public void digit() {
            var residues = new long[rest.length];
            for (int i = 0; i < rest.length; i++) {
                residues[i] = Math.floorMod(rest[i], Residues.PRIME);
            }
            var digit = solver.apply(residues);
            for (int i = 0; i < rest.length; i++) {
                rest[i] = (rest[i] - matrix.lastBitsOfTimes(i, digit)) * INVERSE;
            }
            if (known == digits.length) {
                digits = Arrays.copyOf(digits, 2 * known);
            }
            digits[known++] = digit;
        }

        @Override
        public BigInteger[] values() {
            var powers = new BigInteger[known];
            powers[0] = BigInteger.ONE;
            for (int k = 1; k < known; k++) {
                powers[k] = powers[k - 1].multiply(Residues.BIG_PRIME);
            }
            var values = new BigInteger[rest.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = value(i, 0, known, powers);
            }
            return values;
        }

        /** The number that some digits of an unknown stand for, put together from two halves. */
        private BigInteger value(int i, int from, int to, BigInteger[] powers) {
            if (to - from == 1) {
                return BigInteger.valueOf(digits[from][i]);
            }
            int middle = (from + to) / 2;
            return value(i, middle, to, powers).multiply(powers[middle - from]).add(value(i, from, middle, powers));
        }
    }

    /** Where some number is large. */
    final class Large implements Lift {
        private final SquareMatrix matrix;
        private final UnaryOperator<long[]> solver;
        private final BigInteger[] rest;
        private final BigInteger[] value;
        private BigInteger modulus = BigInteger.ONE;

        Large(SquareMatrix matrix, List<BigInteger> right, UnaryOperator<long[]> solver) {
            this.matrix = matrix;
            this.solver = solver;
            this.rest = right.toArray(BigInteger[]::new);
            this.value = new BigInteger[rest.length];
            Arrays.fill(value, BigInteger.ZERO);
        }

        @Override
        public void digit() {
            var digit = solver.apply(Arrays.stream(rest).mapToLong(Residues::of).toArray());
            for (int i = 0; i < rest.length; i++) {
                value[i] = value[i].add(modulus.multiply(BigInteger.valueOf(digit[i])));
                rest[i] = rest[i].subtract(matrix.times(i, digit)).divide(Residues.BIG_PRIME);
            }
            modulus = modulus.multiply(Residues.BIG_PRIME);
        }

        @Override
        public BigInteger[] values() {
            return value.clone();
        }
    }
}
