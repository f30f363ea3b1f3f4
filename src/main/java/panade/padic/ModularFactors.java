package panade.padic;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Triangular factors of a matrix modulo a prime. Each pivot is taken from the row with the fewest entries left and,
 * there, from the column with the fewest (after Markowitz, Management Science 3, 1957), so that sparse matrices stay
 * sparse. Where the matrix is singular modulo the prime there are none.
 */
final class ModularFactors {
    private final int size;
    /** Upper factor in the rows and columns of later pivots, multipliers of the lower one in those of earlier ones. */
    private final long[][] cell;

    private final int[] pivotRow;
    private final int[] pivotColumn;
    private final long[] inverse;
    private final int[][] below;
    private final int[][] beside;
    private final int[] inRow;
    private final int[] inColumn;
    private final boolean[] rowDone;
    private final boolean[] columnDone;

    private ModularFactors(SquareMatrix matrix) {
        size = matrix.size();
        cell = new long[size][size];
        pivotRow = new int[size];
        pivotColumn = new int[size];
        inverse = new long[size];
        below = new int[size][];
        beside = new int[size][];
        inRow = new int[size];
        inColumn = new int[size];
        rowDone = new boolean[size];
        columnDone = new boolean[size];
        for (int i = 0; i < size; i++) {
            for (var term : matrix.row(i).entrySet()) {
                set(i, term.getKey(), Residues.of(term.getValue()));
            }
        }
    }

    /** The factors; empty where there are none. */
    static Optional<ModularFactors> of(SquareMatrix matrix) {
        var factors = new ModularFactors(matrix);
        for (int step = 0; step < factors.size; step++) {
            if (!factors.eliminate(step)) {
                return Optional.empty();
            }
        }
        return Optional.of(factors);
    }

    private void set(int i, int j, long value) {
        int change = (value == 0 ? 0 : 1) - (cell[i][j] == 0 ? 0 : 1);
        inRow[i] += change;
        inColumn[j] += change;
        cell[i][j] = value;
    }

    private boolean eliminate(int step) {
        int r = fewest(inRow, rowDone, i -> true);
        int c = r < 0 ? -1 : fewest(inColumn, columnDone, j -> cell[r][j] != 0);
        if (c < 0) {
            return false;
        }
        pivotRow[step] = r;
        pivotColumn[step] = c;
        inverse[step] = Residues.inverse(cell[r][c]);
        rowDone[r] = true;
        columnDone[c] = true;
        beside[step] = IntStream.range(0, size)
                .filter(j -> !columnDone[j] && cell[r][j] != 0)
                .toArray();
        below[step] = IntStream.range(0, size)
                .filter(i -> !rowDone[i] && cell[i][c] != 0)
                .toArray();
        Arrays.stream(beside[step]).forEach(j -> inColumn[j]--);
        for (int i : below[step]) {
            subtract(i, r, c, step);
        }
        return true;
    }

    private void subtract(int i, int r, int c, int step) {
        long factor = cell[i][c] * inverse[step] % Residues.PRIME;
        inRow[i]--;
        for (int j : beside[step]) {
            set(i, j, Residues.minusProduct(cell[i][j], factor, cell[r][j]));
        }
        cell[i][c] = factor;
    }

    private int fewest(int[] counts, boolean[] done, IntPredicate usable) {
        int best = -1;
        for (int k = 0; k < size; k++) {
            if (!done[k] && (best < 0 || counts[k] < counts[best]) && usable.test(k)) {
                best = k;
            }
        }
        return best;
    }

    /** The solution of {@code A x = right}, all modulo the prime; uses up the right side. */
    long[] solve(long[] right) {
        for (int step = 0; step < size; step++) {
            long known = right[pivotRow[step]];
            if (known != 0) {
                for (int i : below[step]) {
                    right[i] = Residues.minusProduct(right[i], cell[i][pivotColumn[step]], known);
                }
            }
        }
        var solution = new long[size];
        for (int step = size - 1; step >= 0; step--) {
            int r = pivotRow[step];
            long rest = right[r];
            for (int j : beside[step]) {
                rest = Residues.minusProduct(rest, cell[r][j], solution[j]);
            }
            solution[pivotColumn[step]] = rest * inverse[step] % Residues.PRIME;
        }
        return solution;
    }

    /** The solution of {@code y A = right}, all modulo the prime; uses up the right side. */
    long[] solveTransposed(long[] right) {
        var solution = new long[size];
        for (int step = 0; step < size; step++) {
            int r = pivotRow[step];
            solution[r] = right[pivotColumn[step]] * inverse[step] % Residues.PRIME;
            if (solution[r] != 0) {
                for (int j : beside[step]) {
                    right[j] = Residues.minusProduct(right[j], cell[r][j], solution[r]);
                }
            }
        }
        for (int step = size - 1; step >= 0; step--) {
            long rest = solution[pivotRow[step]];
            for (int i : below[step]) {
                rest = Residues.minusProduct(rest, cell[i][pivotColumn[step]], solution[i]);
            }
            solution[pivotRow[step]] = rest;
        }
        return solution;
    }
}
