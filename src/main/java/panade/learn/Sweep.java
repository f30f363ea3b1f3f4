package panade.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Sums of squares and products, solved in place by sweeping (Goodnight, The American Statistician 33, 1979). A column
 * that depends on those before it, which exact fractions show without doubt, is left out.
 */
final class Sweep {
    private final BigFraction[][] sums;
    private final List<Integer> dependent = new ArrayList<>();
    private final List<BigFraction> pivots = new ArrayList<>();

    private Sweep(BigFraction[][] sums) {
        this.sums = sums;
    }

    /**
     * Sweeps all columns but the last.
     *
     * @param rows one for each observation, the response last
     * @param weights of the rows
     */
    static Sweep of(List<List<BigFraction>> rows, List<BigFraction> weights, int width) {
        var sums = new BigFraction[width][width];
        for (var row : sums) {
            Arrays.fill(row, BigFraction.ZERO);
        }
        for (int k = 0; k < rows.size(); k++) {
            add(rows.get(k), weights.get(k), sums);
        }
        var sweep = new Sweep(sums);
        for (int k = 0; k < width - 1; k++) {
            sweep.sweepColumn(k);
        }
        return sweep;
    }

    private static void add(List<BigFraction> row, BigFraction weight, BigFraction[][] sums) {
        for (int i = 0; i < row.size(); i++) {
            var weighed = row.get(i).multiply(weight);
            if (weighed.signum() != 0) {
                for (int j = 0; j < row.size(); j++) {
                    sums[i][j] = sums[i][j].add(weighed.multiply(row.get(j)));
                }
            }
        }
    }

    private void sweepColumn(int k) {
        var pivot = sums[k][k];
        if (pivot.signum() == 0) {
            dependent.add(k);
            return;
        }
        pivots.add(pivot);
        for (int j = 0; j < sums.length; j++) {
            sums[k][j] = sums[k][j].divide(pivot);
        }
        for (int i = 0; i < sums.length; i++) {
            if (i != k) {
                subtract(k, i, pivot);
            }
        }
        sums[k][k] = pivot.reciprocal();
    }

    private void subtract(int k, int i, BigFraction pivot) {
        var factor = sums[i][k];
        if (factor.signum() == 0) {
            return;
        }
        for (int j = 0; j < sums.length; j++) {
            sums[i][j] = j == k ? factor.divide(pivot).negate() : sums[i][j].subtract(factor.multiply(sums[k][j]));
        }
    }

    /** Columns that depend on those before them, from nought. */
    List<Integer> dependent() {
        return dependent;
    }

    int rank() {
        return sums.length - 1 - dependent.size();
    }

    /** Of the sums of squares and products of all columns but the dependent ones. */
    BigFraction determinant() {
        return pivots.stream().reduce(BigFraction.ONE, BigFraction::multiply);
    }

    /** What of the response is left over. */
    BigFraction residual() {
        return sums[sums.length - 1][sums.length - 1];
    }

    BigFraction coefficient(int column) {
        return dependent.contains(column) ? BigFraction.ZERO : sums[column][sums.length - 1];
    }

    /** An element of the inverse; there must be no dependent column. */
    BigFraction inverse(int row, int column) {
        return sums[row][column];
    }
}
