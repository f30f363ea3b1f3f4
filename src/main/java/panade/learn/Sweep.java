package panade.learn;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Sums of squares and products, solved in place by sweeping (Goodnight, The American Statistician 33, 1979), in whole
 * numbers over one common denominator, where every division is exact (Edmonds 1967). A column that depends on those
 * before it, which exact numbers show without doubt, is left out.
 */
final class Sweep {
    private final BigInteger[][] sums;
    private final Scales scales;
    private final List<Integer> dependent = new ArrayList<>();
    private final List<BigInteger> denominators = new ArrayList<>(List.of(BigInteger.ONE));

    /** What makes each column, and all weights, whole numbers. */
    private record Scales(List<BigInteger> columns, BigInteger weight) {
        static Scales of(List<List<BigFraction>> rows, List<BigFraction> weights, int width) {
            var columns = new ArrayList<BigInteger>();
            for (int j = 0; j < width; j++) {
                int column = j;
                columns.add(common(rows.stream().map(row -> row.get(column)).toList()));
            }
            return new Scales(columns, common(weights));
        }

        BigInteger response() {
            return columns.get(columns.size() - 1);
        }
    }

    private Sweep(BigInteger[][] sums, Scales scales) {
        this.sums = sums;
        this.scales = scales;
    }

    /** The least common denominator. */
    private static BigInteger common(List<BigFraction> values) {
        var common = BigInteger.ONE;
        for (var value : values) {
            var denominator = value.getDenominator().abs();
            common = common.divide(common.gcd(denominator)).multiply(denominator);
        }
        return common;
    }

    private static BigInteger whole(BigFraction value, BigInteger scale) {
        return value.getNumerator().multiply(scale.divide(value.getDenominator()));
    }

    /**
     * Sweeps all columns but the last.
     *
     * @param rows one for each observation, the response last
     * @param weights of the rows
     */
    static Sweep of(List<List<BigFraction>> rows, List<BigFraction> weights, int width) {
        var sums = new BigInteger[width][width];
        for (var row : sums) {
            Arrays.fill(row, BigInteger.ZERO);
        }
        var scales = Scales.of(rows, weights, width);
        for (int k = 0; k < rows.size(); k++) {
            add(rows.get(k), whole(weights.get(k), scales.weight()), scales, sums);
        }
        var sweep = new Sweep(sums, scales);
        for (int k = 0; k < width - 1; k++) {
            sweep.sweepColumn(k);
        }
        return sweep;
    }

    private static void add(List<BigFraction> row, BigInteger weight, Scales scales, BigInteger[][] sums) {
        var values = new BigInteger[row.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = whole(row.get(i), scales.columns().get(i));
        }
        for (int i = 0; i < values.length; i++) {
            var weighed = values[i].multiply(weight);
            for (int j = 0; j < values.length && weighed.signum() != 0; j++) {
                sums[i][j] = sums[i][j].add(weighed.multiply(values[j]));
            }
        }
    }

    private BigInteger denominator() {
        return denominators.get(denominators.size() - 1);
    }

    private void sweepColumn(int k) {
        var pivot = sums[k][k];
        if (pivot.signum() == 0) {
            dependent.add(k);
            return;
        }
        for (int i = 0; i < sums.length; i++) {
            if (i != k) {
                subtract(k, i, pivot);
            }
        }
        sums[k][k] = denominator();
        denominators.add(pivot);
    }

    private void subtract(int k, int i, BigInteger pivot) {
        var factor = sums[i][k];
        for (int j = 0; j < sums.length; j++) {
            if (j != k) {
                var cross = sums[i][j].multiply(pivot).subtract(factor.multiply(sums[k][j]));
                sums[i][j] = cross.divide(denominator());
            }
        }
        sums[i][k] = factor.negate();
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
        var scale = BigInteger.ONE;
        for (int k = 0; k < sums.length - 1; k++) {
            if (!dependent.contains(k)) {
                scale = scale.multiply(scales.columns().get(k).pow(2)).multiply(scales.weight());
            }
        }
        return BigFraction.of(denominator(), scale);
    }

    /** What of the response is left over. */
    BigFraction residual() {
        var scale = scales.response().pow(2).multiply(scales.weight());
        return BigFraction.of(
                sums[sums.length - 1][sums.length - 1], denominator().multiply(scale));
    }

    BigFraction coefficient(int column) {
        if (dependent.contains(column)) {
            return BigFraction.ZERO;
        }
        return BigFraction.of(
                sums[column][sums.length - 1].multiply(scales.columns().get(column)),
                denominator().multiply(scales.response()));
    }

    /** What the coefficients make of a row without its response; there must be no dependent column. */
    BigFraction fitted(List<BigFraction> row) {
        var scaled = new ScaledRow(row);
        var sum = BigInteger.ZERO;
        for (int j = 0; j < row.size(); j++) {
            sum = sum.add(scaled.values[j].multiply(sums[j][sums.length - 1]));
        }
        return BigFraction.of(sum, denominator().multiply(scales.response()).multiply(scaled.denominator));
    }

    /** The row's variance in variances of the error; there must be no dependent column. */
    BigFraction form(List<BigFraction> row) {
        var scaled = new ScaledRow(row);
        var sum = BigInteger.ZERO;
        for (int i = 0; i < row.size(); i++) {
            var inner = BigInteger.ZERO;
            for (int j = 0; j < row.size() && scaled.values[i].signum() != 0; j++) {
                inner = inner.add(scaled.values[j].multiply(sums[i][j]));
            }
            sum = sum.add(inner.multiply(scaled.values[i]));
        }
        return BigFraction.of(sum.multiply(scales.weight()), denominator().multiply(scaled.denominator.pow(2)));
    }

    /** A row in the columns' scales, in whole numbers over a denominator of its own. */
    private final class ScaledRow {
        private final BigInteger denominator;
        private final BigInteger[] values;

        ScaledRow(List<BigFraction> row) {
            var scaled = new ArrayList<BigFraction>();
            for (int j = 0; j < row.size(); j++) {
                scaled.add(row.get(j).multiply(scales.columns().get(j)));
            }
            denominator = common(scaled);
            values = scaled.stream().map(value -> whole(value, denominator)).toArray(BigInteger[]::new);
        }
    }
}
