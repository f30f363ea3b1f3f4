package panade.scenario;

import java.util.Arrays;
import java.util.BitSet;

/**
 * A basis worked out: the inverse of its tight rows over its basic columns, which is all that is needed to find amounts
 * and ways out, and small. It is always made from the model itself and never from a neighbour's, so that it is the same
 * to the last bit however the basis was come by.
 */
final class Inverse {
    private static final double NOTHING = 1e-9;
    private static final double TIED = 1e-10;

    /** The most that an amount may seem to be below zero and still be taken for zero. */
    private static final double ROUNDING = 1e-8;

    private final Geometry geometry;
    private final BitSet basis;
    /** Basic columns and tight rows, in order. */
    private final int[] columns;

    private final int[] rows;
    /** By column, then by row. */
    private final double[][] inverse;

    private final double[] amounts;
    private final boolean sound;

    Inverse(Geometry geometry, BitSet basis) {
        this.geometry = geometry;
        this.basis = basis;
        columns = within(0, geometry.columns(), true);
        rows = within(geometry.columns(), geometry.variables(), false);
        amounts = new double[geometry.variables()];
        inverse = new double[columns.length][];
        sound = columns.length == rows.length && invert() && findsAmounts();
    }

    /** Whether the basis is one, and gives amounts that meet every row. */
    boolean isSound() {
        return sound;
    }

    /** The variables from one number to another that are basic, or those that are not, counted from the first. */
    private int[] within(int from, int to, boolean wanted) {
        var found = new int[to - from];
        int count = 0;
        for (int i = from; i < to; i++) {
            if (basis.get(i) == wanted) {
                found[count++] = i - from;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** Gauss and Jordan's elimination in place, with the largest pivot of each column. */
    private boolean invert() {
        int size = rows.length;
        var work = new double[size][size];
        var origin = new int[size];
        for (int r = 0; r < size; r++) {
            var line = geometry.line(rows[r]);
            origin[r] = r;
            for (int c = 0; c < size; c++) {
                work[r][c] = line[columns[c]];
            }
        }
        for (int c = 0; c < size; c++) {
            if (!clears(work, origin, c)) {
                return false;
            }
        }
        for (int c = 0; c < size; c++) {
            inverse[c] = new double[size];
            for (int r = 0; r < size; r++) {
                inverse[c][origin[r]] = work[c][r];
            }
        }
        return true;
    }

    private static boolean clears(double[][] work, int[] origin, int c) {
        int best = c;
        for (int r = c + 1; r < work.length; r++) {
            best = Math.abs(work[r][c]) > Math.abs(work[best][c]) ? r : best;
        }
        var pivot = work[best];
        if (Math.abs(pivot[c]) < NOTHING) {
            return false;
        }
        work[best] = work[c];
        work[c] = pivot;
        int moved = origin[best];
        origin[best] = origin[c];
        origin[c] = moved;
        double factor = 1 / pivot[c];
        pivot[c] = 1;
        for (int j = 0; j < pivot.length; j++) {
            pivot[j] *= factor;
        }
        for (int r = 0; r < work.length; r++) {
            double own = work[r][c];
            if (r != c && own != 0) {
                work[r][c] = 0;
                add(work[r], pivot, -own);
            }
        }
        return true;
    }

    private static void add(double[] line, double[] other, double factor) {
        for (int j = 0; j < line.length; j++) {
            line[j] += factor * other[j];
        }
    }

    private boolean findsAmounts() {
        for (int c = 0; c < columns.length; c++) {
            double amount = 0;
            for (int r = 0; r < rows.length; r++) {
                amount -= inverse[c][r] * geometry.line(rows[r])[geometry.columns()];
            }
            amounts[columns[c]] = amount;
        }
        boolean met = true;
        for (int i = 0; i < geometry.rows(); i++) {
            int slack = geometry.columns() + i;
            if (basis.get(slack)) {
                amounts[slack] = geometry.line(i)[geometry.columns()] + along(i, amounts);
                met &= !geometry.isLocked(slack) || amounts[slack] < ROUNDING;
            }
        }
        for (double amount : amounts) {
            met &= amount >= -ROUNDING;
        }
        return met;
    }

    /** A row's coefficients times values of the basic columns. */
    private double along(int row, double[] values) {
        var line = geometry.line(row);
        double total = 0;
        for (int column : columns) {
            total += line[column] * values[column];
        }
        return total;
    }

    /** The basic columns. */
    int[] columns() {
        return columns;
    }

    /** The value of every variable. */
    double[] amounts() {
        return amounts;
    }

    /** How fast each basic variable grows as a nonbasic one does, by variable. */
    private double[] rates(int entering) {
        var rates = new double[amounts.length];
        for (int r = 0; r < rows.length; r++) {
            double grown = entering < geometry.columns()
                    ? -geometry.line(rows[r])[entering]
                    : rows[r] == entering - geometry.columns() ? 1 : 0;
            for (int c = 0; grown != 0 && c < columns.length; c++) {
                rates[columns[c]] += inverse[c][r] * grown;
            }
        }
        for (int i = 0; i < geometry.rows(); i++) {
            if (basis.get(geometry.columns() + i)) {
                double own = entering < geometry.columns() ? geometry.line(i)[entering] : 0;
                rates[geometry.columns() + i] = own + along(i, rates);
            }
        }
        return rates;
    }

    /** The basic variable that has to leave when another comes in, or -1: the largest pivot among equals. */
    int leaving(int entering) {
        var rates = rates(entering);
        double least = Double.POSITIVE_INFINITY;
        for (int i = basis.nextSetBit(0); i >= 0; i = basis.nextSetBit(i + 1)) {
            least = Math.min(least, ratio(i, rates[i]));
        }
        int best = -1;
        for (int i = basis.nextSetBit(0); i >= 0; i = basis.nextSetBit(i + 1)) {
            boolean tied = least < Double.POSITIVE_INFINITY && ratio(i, rates[i]) <= least + TIED;
            best = tied && (best < 0 || Math.abs(rates[i]) > Math.abs(rates[best])) ? i : best;
        }
        return best;
    }

    /** How far a variable may grow before a basic one is in the way. */
    private double ratio(int variable, double rate) {
        if (geometry.isLocked(variable)) {
            return Math.abs(rate) > NOTHING ? 0 : Double.POSITIVE_INFINITY;
        }
        return rate < -NOTHING ? Math.max(0, amounts[variable]) / -rate : Double.POSITIVE_INFINITY;
    }

    /** A basic variable in terms of the nonbasic ones, by variable; those that never come in are left at zero. */
    double[] terms(int variable) {
        var weights = new double[rows.length];
        var terms = new double[amounts.length];
        if (variable < geometry.columns()) {
            System.arraycopy(inverse[Arrays.binarySearch(columns, variable)], 0, weights, 0, weights.length);
        } else {
            var line = geometry.line(variable - geometry.columns());
            for (int c = 0; c < columns.length; c++) {
                add(weights, inverse[c], line[columns[c]]);
            }
            System.arraycopy(line, 0, terms, 0, geometry.columns());
        }
        for (int r = 0; r < rows.length; r++) {
            var line = geometry.line(rows[r]);
            for (int j = 0; j < geometry.columns(); j++) {
                terms[j] -= weights[r] * line[j];
            }
            int slack = geometry.columns() + rows[r];
            terms[slack] = geometry.isLocked(slack) ? 0 : weights[r];
        }
        for (int column : columns) {
            terms[column] = 0;
        }
        return terms;
    }

    /** How a variable's reduced cost changes each other one's when it comes in for a basic one, by variable. */
    double[] exchange(int leaving, int entering) {
        var change = terms(leaving);
        double pivot = change[entering];
        for (int j = 0; j < change.length; j++) {
            change[j] /= -pivot;
        }
        change[entering] = -1;
        change[leaving] = geometry.isLocked(leaving) ? 0 : 1 / pivot;
        return change;
    }
}
