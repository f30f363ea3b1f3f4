package panade.design;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.WholeForm;

/**
 * What trials tell of a model's coefficients before anything is measured: the sums of squares and products of their
 * rows. Kept as its determinant and its adjugate in whole numbers, which one more row changes without any rounding or
 * search for common divisors: the adjugate becomes (d' A - w A v v' A) / d, where d' = d + w v' A v is the new
 * determinant.
 */
public final class Information {
    private final Scales scales;
    private final BigInteger[][] adjugate;
    private final BigInteger determinant;

    /** What makes each column of the rows, and every weight, whole. */
    record Scales(List<BigInteger> columns, BigInteger weight) {
        static Scales of(Collection<Run> runs) {
            var columns = new ArrayList<BigInteger>();
            int width = runs.iterator().next().row().size();
            for (int i = 0; i < width; i++) {
                int column = i;
                columns.add(WholeForm.commonDenominator(
                        runs.stream().map(run -> run.row().get(column)).toList()));
            }
            return new Scales(
                    columns,
                    WholeForm.commonDenominator(runs.stream().map(Run::weight).toList()));
        }

        BigInteger[] row(Run run) {
            var row = new BigInteger[columns.size()];
            for (int i = 0; i < row.length; i++) {
                row[i] = whole(run.row().get(i), columns.get(i));
            }
            return row;
        }

        BigInteger weight(Run run) {
            return whole(run.weight(), weight);
        }

        /** The moments of rows in whole numbers, times what makes all of them whole. */
        BigInteger[][] whole(Moments moments) {
            var scale = WholeForm.commonDenominator(
                    moments.means().stream().flatMap(List::stream).toList());
            var matrix = new BigInteger[columns.size()][columns.size()];
            for (int i = 0; i < matrix.length; i++) {
                for (int j = 0; j < matrix.length; j++) {
                    matrix[i][j] = whole(moments.means().get(i).get(j), scale)
                            .multiply(columns.get(i))
                            .multiply(columns.get(j));
                }
            }
            return matrix;
        }

        private static BigInteger whole(BigFraction value, BigInteger scale) {
            return value.getNumerator().multiply(scale.divide(value.getDenominator()));
        }
    }

    private Information(Scales scales, BigInteger[][] adjugate, BigInteger determinant) {
        this.scales = scales;
        this.adjugate = adjugate;
        this.determinant = determinant;
    }

    /** What trials tell; empty where they leave a coefficient open. There must be one at least. */
    public static Optional<Information> of(List<Run> runs) {
        return of(Scales.of(runs), runs);
    }

    /** Begins by believing something of every coefficient, and ends by taking that belief away. */
    static Optional<Information> of(Scales scales, List<Run> runs) {
        int width = scales.columns().size();
        var beliefs = identity(width);
        var information = new Information(scales, identity(width), BigInteger.ONE);
        for (var run : runs) {
            information = information.with(scales.row(run), scales.weight(run));
        }
        for (int i = 0; i < width && information.determinant.signum() != 0; i++) {
            information = information.with(beliefs[i], BigInteger.ONE.negate());
        }
        return information.determinant.signum() == 0 ? Optional.empty() : Optional.of(information);
    }

    private static BigInteger[][] identity(int width) {
        var identity = new BigInteger[width][width];
        for (int i = 0; i < width; i++) {
            Arrays.fill(identity[i], BigInteger.ZERO);
            identity[i][i] = BigInteger.ONE;
        }
        return identity;
    }

    /** The same with one more row of that weight, or less for a negative one. */
    Information with(BigInteger[] row, BigInteger weight) {
        var image = image(row);
        var after = determinant.add(weight.multiply(product(row, image)));
        var changed = new BigInteger[row.length][row.length];
        for (int i = 0; i < row.length; i++) {
            for (int j = 0; j <= i; j++) {
                var outer = weight.multiply(image[i]).multiply(image[j]);
                changed[i][j] = after.multiply(adjugate[i][j]).subtract(outer).divide(determinant);
                changed[j][i] = changed[i][j];
            }
        }
        return new Information(scales, changed, after);
    }

    /** The adjugate times a row. */
    BigInteger[] image(BigInteger[] row) {
        return product(adjugate, row);
    }

    static BigInteger[] product(BigInteger[][] matrix, BigInteger[] row) {
        var image = new BigInteger[row.length];
        for (int i = 0; i < row.length; i++) {
            image[i] = product(matrix[i], row);
        }
        return image;
    }

    static BigInteger product(BigInteger[] a, BigInteger[] b) {
        var sum = BigInteger.ZERO;
        for (int i = 0; i < a.length; i++) {
            sum = sum.add(a[i].multiply(b[i]));
        }
        return sum;
    }

    /** Of the rows in whole numbers. */
    BigInteger wholeDeterminant() {
        return determinant;
    }

    /**
     * The determinant of the sums of squares and products: the larger, the smaller the ellipsoid of the coefficients.
     */
    public BigFraction determinant() {
        var scale = BigInteger.ONE;
        for (var column : scales.columns()) {
            scale = scale.multiply(column.pow(2)).multiply(scales.weight());
        }
        return BigFraction.of(determinant, scale);
    }

    /** The variance of what is predicted where a trial would have this row, in variances of the error. */
    public BigFraction variance(List<BigFraction> row) {
        var sum = BigFraction.ZERO;
        for (int i = 0; i < adjugate.length; i++) {
            for (int j = 0; j < adjugate.length; j++) {
                sum = sum.add(row.get(i).multiply(row.get(j)).multiply(inverse(i, j)));
            }
        }
        return sum;
    }

    /** The mean variance of what is predicted over a region. */
    public BigFraction meanVariance(Moments moments) {
        var sum = BigFraction.ZERO;
        for (int i = 0; i < adjugate.length; i++) {
            for (int j = 0; j < adjugate.length; j++) {
                sum = sum.add(moments.means().get(i).get(j).multiply(inverse(i, j)));
            }
        }
        return sum;
    }

    private BigFraction inverse(int i, int j) {
        var scale = scales.columns().get(i).multiply(scales.columns().get(j)).multiply(scales.weight());
        return BigFraction.of(adjugate[i][j].multiply(scale), determinant);
    }
}
