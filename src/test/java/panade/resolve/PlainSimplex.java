package panade.resolve;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Least value of a linear form over {@code a x <= b, x >= 0} in whole numbers: the dictionary method with one
 * artificial variable (Chvátal, "Linear Programming", 1983, chapters 2 and 3, from memory), kept over a common
 * denominator. Written for these tests alone and sharing nothing with the program.
 */
final class PlainSimplex {
    /** After so many pivots the smallest index enters and leaves (Bland 1977), which cannot cycle. */
    private static final int BEFORE_BLAND = 60;

    private BigInteger denominator = BigInteger.ONE;
    /**
     * Row i says: denominator times basic variable i is {@code a[i][width] - sum a[i][j] nonbasic j}; last row: value.
     */
    private final BigInteger[][] a;

    private final int[] basic;
    private final int[] nonbasic;
    private final int height;
    private final int width;

    private PlainSimplex(BigInteger[][] a, int[] basic, int[] nonbasic) {
        this.a = a;
        this.basic = basic;
        this.nonbasic = nonbasic;
        this.height = basic.length;
        this.width = nonbasic.length;
    }

    /** {@code form x <= right}. */
    record Row(List<BigFraction> form, BigFraction right) {}

    /** Thrown where the value falls without end, which no test may ask for. */
    static final class Unbounded extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** A point of least value; empty when no point keeps all rows. */
    static Optional<List<BigFraction>> minimise(List<BigFraction> form, List<Row> rows) {
        int n = form.size();
        int m = rows.size();
        var a = new BigInteger[m + 1][n + 2];
        for (int i = 0; i < m; i++) {
            var all = new ArrayList<>(rows.get(i).form());
            all.add(rows.get(i).right());
            var whole = whole(all);
            System.arraycopy(whole, 0, a[i], 0, n);
            a[i][n] = BigInteger.ONE.negate();
            a[i][n + 1] = whole[n];
        }
        java.util.Arrays.fill(a[m], BigInteger.ZERO);
        a[m][n] = BigInteger.ONE.negate();
        var basic = new int[m];
        var nonbasic = new int[n + 1];
        for (int j = 0; j <= n; j++) {
            nonbasic[j] = j;
        }
        for (int i = 0; i < m; i++) {
            basic[i] = n + 1 + i;
        }
        var simplex = new PlainSimplex(a, basic, nonbasic);
        return simplex.feasible(n) ? Optional.of(simplex.best(form, n)) : Optional.empty();
    }

    private static BigInteger[] whole(List<BigFraction> values) {
        var scale = BigInteger.ONE;
        for (var value : values) {
            var bottom = value.getDenominator().abs();
            scale = scale.multiply(bottom).divide(scale.gcd(bottom));
        }
        var factor = scale;
        return values.stream()
                .map(value -> {
                    var top = value.getNumerator().multiply(factor).divide(value.getDenominator());
                    return top;
                })
                .toArray(BigInteger[]::new);
    }

    /** The first phase: the artificial variable comes in where a row is broken most and is driven to nothing. */
    private boolean feasible(int artificial) {
        int worst = -1;
        for (int i = 0; i < height; i++) {
            if (a[i][width].signum() < 0 && (worst < 0 || a[i][width].compareTo(a[worst][width]) < 0)) {
                worst = i;
            }
        }
        if (worst < 0) {
            return true;
        }
        pivot(worst, position(nonbasic, artificial));
        run(-1);
        int at = position(basic, artificial);
        if (at < 0) {
            return true;
        }
        if (a[at][width].signum() != 0) {
            return false;
        }
        for (int j = 0; j < width; j++) {
            if (a[at][j].signum() != 0) {
                pivot(at, j);
                return true;
            }
        }
        return true;
    }

    private List<BigFraction> best(List<BigFraction> form, int n) {
        objective(form, n);
        run(n);
        var point = new ArrayList<BigFraction>();
        for (int j = 0; j < n; j++) {
            int at = position(basic, j);
            point.add(at < 0 ? BigFraction.ZERO : BigFraction.of(a[at][width], denominator));
        }
        return point;
    }

    /** The value in terms of what is nonbasic now, over the common denominator. */
    private void objective(List<BigFraction> form, int n) {
        var whole = whole(form);
        var row = new BigInteger[width + 1];
        java.util.Arrays.fill(row, BigInteger.ZERO);
        for (int j = 0; j < n; j++) {
            int at = position(basic, j);
            if (at < 0) {
                int place = position(nonbasic, j);
                row[place] = row[place].subtract(whole[j].multiply(denominator));
            } else {
                for (int k = 0; k <= width; k++) {
                    row[k] = row[k].add(whole[j].multiply(a[at][k]));
                }
            }
        }
        a[height] = row;
    }

    /** Pivots until nothing nonbasic but the banned variable would bring the value down. */
    private void run(int banned) {
        for (int count = 0; ; count++) {
            int enter = entering(banned, count >= BEFORE_BLAND);
            if (enter < 0) {
                return;
            }
            pivot(leaving(enter), enter);
        }
    }

    private int entering(int banned, boolean smallest) {
        int best = -1;
        for (int j = 0; j < width; j++) {
            if (a[height][j].signum() > 0 && nonbasic[j] != banned && (best < 0 || isBetter(j, best, smallest))) {
                best = j;
            }
        }
        return best;
    }

    private boolean isBetter(int j, int best, boolean smallest) {
        return smallest ? nonbasic[j] < nonbasic[best] : a[height][j].compareTo(a[height][best]) > 0;
    }

    private int leaving(int enter) {
        int best = -1;
        for (int i = 0; i < height; i++) {
            if (a[i][enter].signum() > 0 && (best < 0 || isTighter(i, best, enter))) {
                best = i;
            }
        }
        if (best < 0) {
            throw new Unbounded();
        }
        return best;
    }

    private boolean isTighter(int i, int best, int enter) {
        int sign = a[i][width]
                .multiply(a[best][enter])
                .subtract(a[best][width].multiply(a[i][enter]))
                .signum();
        return sign < 0 || (sign == 0 && basic[i] < basic[best]);
    }

    private void pivot(int r, int s) {
        var p = a[r][s];
        for (int i = 0; i <= height; i++) {
            if (i != r) {
                combine(i, r, s, p);
            }
        }
        a[r][s] = denominator;
        denominator = p;
        if (p.signum() < 0) {
            denominator = p.negate();
            for (int i = 0; i <= height; i++) {
                for (int j = 0; j <= width; j++) {
                    a[i][j] = a[i][j].negate();
                }
            }
        }
        int out = basic[r];
        basic[r] = nonbasic[s];
        nonbasic[s] = out;
    }

    private void combine(int i, int r, int s, BigInteger p) {
        var factor = a[i][s];
        for (int j = 0; j <= width; j++) {
            if (j != s) {
                a[i][j] = a[i][j].multiply(p).subtract(factor.multiply(a[r][j])).divide(denominator);
            }
        }
        a[i][s] = factor.negate();
    }

    private static int position(int[] values, int wanted) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] == wanted) {
                return i;
            }
        }
        return -1;
    }
}
