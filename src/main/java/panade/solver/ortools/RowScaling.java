package panade.solver.ortools;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;

/**
 * Brings each row's largest coefficient near one, so that rows of milligrams and of kilograms weigh alike. The factor
 * is an exact power of ten, and costs and columns stay as they are, so a basis means the same before and after.
 */
final class RowScaling {
    /** Decimal digits in a binary digit, in parts of 100,000. */
    private static final int DIGITS_PER_BIT = 30_103;

    private static final int PARTS = 100_000;

    private RowScaling() {}

    static LinearModel scaled(LinearModel model) {
        return new LinearModel(
                model.columns(), model.rows().stream().map(RowScaling::scaled).toList());
    }

    private static Row scaled(Row row) {
        var factor = row.form().isZero() ? BigFraction.ONE : factor(row.form().largest());
        return new Row(
                row.name(), row.form().scaled(factor), row.sense(), row.right().multiply(factor));
    }

    /** Counts bits rather than take a logarithm, which would fail on numbers beyond binary floating point. */
    private static BigFraction factor(BigFraction largest) {
        long bits = (long) largest.getNumerator().bitLength()
                - largest.getDenominator().bitLength();
        int power = (int) Math.floorDiv(bits * DIGITS_PER_BIT, (long) PARTS);
        var ten = BigFraction.of(BigInteger.TEN.pow(Math.abs(power)));
        return power > 0 ? ten.reciprocal() : ten;
    }
}
