package panade.padic;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** A square matrix of whole numbers, most of them zero. */
public final class SquareMatrix {
    /** Whole numbers of fewer bits are small: a line of them times residues, and what is carried on, fit in a long. */
    private static final int SMALL = 61;

    private final List<Map<Integer, BigInteger>> rows;
    /** The columns and the values of each row; no values where one of the matrix is not small. */
    private final int[][] columns;

    private final long[][] values;
    private final boolean small;

    /**
     * A matrix.
     *
     * @param rows what is not zero, by column from 0 to one less than the number of rows
     */
    public SquareMatrix(List<? extends Map<Integer, BigInteger>> rows) {
        var copy = new ArrayList<Map<Integer, BigInteger>>();
        // in order of columns, so that the same matrix is always worked through in the same order
        rows.forEach(row -> copy.add(new TreeMap<>(row)));
        this.rows = List.copyOf(copy);
        this.columns = this.rows.stream()
                .map(row -> row.keySet().stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
        this.small = this.rows.stream().allMatch(row -> sizes(row).bitLength() < SMALL);
        this.values = this.rows.stream()
                .map(row ->
                        row.values().stream().mapToLong(BigInteger::longValue).toArray())
                .toArray(long[][]::new);
    }

    int size() {
        return rows.size();
    }

    Map<Integer, BigInteger> row(int i) {
        return rows.get(i);
    }

    /** Whether all of it, and a right side, is small. */
    boolean isSmall(List<BigInteger> right) {
        return small && right.stream().allMatch(value -> value.bitLength() < SMALL);
    }

    /** Rows and columns exchanged. */
    public SquareMatrix transposed() {
        var turned = new ArrayList<Map<Integer, BigInteger>>();
        rows.forEach(row -> turned.add(new TreeMap<>()));
        for (int i = 0; i < size(); i++) {
            for (var term : rows.get(i).entrySet()) {
                turned.get(term.getKey()).put(i, term.getValue());
            }
        }
        return new SquareMatrix(turned);
    }

    /** The product with a vector of residues, a line. */
    BigInteger times(int i, long[] vector) {
        var total = BigInteger.ZERO;
        for (var term : rows.get(i).entrySet()) {
            long factor = vector[term.getKey()];
            if (factor != 0) {
                total = total.add(term.getValue().multiply(BigInteger.valueOf(factor)));
            }
        }
        return total;
    }

    /** The last 64 bits of the same, of a small matrix. */
    long lastBitsOfTimes(int i, long[] vector) {
        long total = 0;
        for (int k = 0; k < columns[i].length; k++) {
            total += values[i][k] * vector[columns[i][k]];
        }
        return total;
    }

    /** Whether the product with a vector is just that; over one denominator, for fractions are slow to add. */
    boolean productEquals(List<BigFraction> vector, List<BigInteger> right) {
        var common = vector.stream()
                .map(value -> value.getDenominator().abs())
                .reduce(BigInteger.ONE, (a, b) -> a.equals(b) ? a : a.multiply(b.divide(a.gcd(b))));
        var whole = vector.stream()
                .map(value -> value.getNumerator().multiply(common.divide(value.getDenominator())))
                .toList();
        for (int i = 0; i < size(); i++) {
            var rest = right.get(i).multiply(common);
            for (var term : rows.get(i).entrySet()) {
                rest = rest.subtract(whole.get(term.getKey()).multiply(term.getValue()));
            }
            if (rest.signum() != 0) {
                return false;
            }
        }
        return true;
    }

    /** A number of bits that neither numerators nor denominators of a solution exceed (Hadamard, Cramer). */
    int bits(List<BigInteger> right) {
        int bits = right.stream().mapToInt(BigInteger::bitLength).max().orElse(0);
        for (var row : rows) {
            bits += sizes(row).bitLength();
        }
        return bits;
    }

    private static BigInteger sizes(Map<Integer, BigInteger> row) {
        return row.values().stream().map(BigInteger::abs).reduce(BigInteger.ZERO, BigInteger::add);
    }
}
