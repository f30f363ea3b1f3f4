package panade.model;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A sum of coefficient times column. Immutable; it holds no coefficient of zero, so that equal forms are equal values,
 * and its columns are always met in ascending order.
 */
public final class LinearForm {
    /** The form without columns. */
    public static final LinearForm ZERO = new LinearForm(new int[0], new BigFraction[0]);

    private final int[] columns;
    /** None is zero. */
    private final BigFraction[] values;
    /** Made when it is first asked for. */
    private @Nullable WholeForm whole;

    private LinearForm(int[] columns, BigFraction[] values) {
        this.columns = columns;
        this.values = values;
    }

    /** Gathers terms in ascending order of columns and drops those that count nothing. */
    private static final class Terms {
        private final int[] columns;
        private final BigFraction[] values;
        private int size;

        Terms(int most) {
            columns = new int[most];
            values = new BigFraction[most];
        }

        void add(int column, BigFraction value) {
            if (value.signum() != 0) {
                columns[size] = column;
                values[size++] = value;
            }
        }

        LinearForm form() {
            return size == columns.length
                    ? new LinearForm(columns, values)
                    : new LinearForm(Arrays.copyOf(columns, size), Arrays.copyOf(values, size));
        }
    }

    /** The form with coefficients by column. */
    public static LinearForm of(Map<Integer, BigFraction> coefficients) {
        var terms = new Terms(coefficients.size());
        new TreeMap<>(coefficients).forEach(terms::add);
        return terms.form();
    }

    /** So much of one column. */
    public static LinearForm of(int column, BigFraction coefficient) {
        var terms = new Terms(1);
        terms.add(column, coefficient);
        return terms.form();
    }

    /** A form over the columns from nought on, so many of them. */
    public static LinearForm over(int columns, IntFunction<BigFraction> coefficient) {
        var terms = new Terms(columns);
        for (int j = 0; j < columns; j++) {
            terms.add(j, coefficient.apply(j));
        }
        return terms.form();
    }

    /** The sum of those among so many columns for which a condition holds. */
    public static LinearForm sumOver(int columns, IntPredicate included) {
        return over(columns, j -> included.test(j) ? BigFraction.ONE : BigFraction.ZERO);
    }

    /** The sum of columns, each counted once. */
    public static LinearForm sumOf(Collection<Integer> columns) {
        var own =
                columns.stream().mapToInt(Integer::intValue).distinct().sorted().toArray();
        var ones = new BigFraction[own.length];
        Arrays.fill(ones, BigFraction.ONE);
        return new LinearForm(own, ones);
    }

    /** Coefficients by column index; a column that is absent counts nothing. */
    public SortedMap<Integer, BigFraction> coefficients() {
        var all = new TreeMap<Integer, BigFraction>();
        forEach(all::put);
        return Collections.unmodifiableSortedMap(all);
    }

    /** The same in whole numbers over one denominator. */
    public WholeForm whole() {
        var known = whole;
        if (known == null) {
            known = WholeForm.of(columns, values());
            whole = known;
        }
        return known;
    }

    /** The coefficient of a column. */
    public BigFraction at(int column) {
        int place = Arrays.binarySearch(columns, column);
        return place < 0 ? BigFraction.ZERO : values[place];
    }

    /** The columns that count, in ascending order. */
    public List<Integer> columns() {
        return Arrays.stream(columns).boxed().toList();
    }

    /** Their coefficients, in the same order; none is zero. */
    public List<BigFraction> values() {
        return Collections.unmodifiableList(Arrays.asList(values));
    }

    /** Every column that counts with its coefficient, in ascending order. */
    public void forEach(BiConsumer<Integer, BigFraction> action) {
        for (int term = 0; term < columns.length; term++) {
            action.accept(columns[term], values[term]);
        }
    }

    /** Whether no column counts. */
    public boolean isZero() {
        return columns.length == 0;
    }

    /** The value at a point. */
    public BigFraction dot(List<BigFraction> point) {
        var total = BigFraction.ZERO;
        for (int term = 0; term < columns.length; term++) {
            var amount = point.get(columns[term]);
            if (amount.signum() != 0) {
                total = total.add(values[term].multiply(amount));
            }
        }
        return total;
    }

    /** The sum with another form. */
    public LinearForm plus(LinearForm other) {
        var sum = new Terms(columns.length + other.columns.length);
        int mine = 0;
        int theirs = 0;
        while (mine < columns.length || theirs < other.columns.length) {
            int left = mine < columns.length ? columns[mine] : Integer.MAX_VALUE;
            int right = theirs < other.columns.length ? other.columns[theirs] : Integer.MAX_VALUE;
            if (left == right) {
                sum.add(left, values[mine++].add(other.values[theirs++]));
            } else if (left < right) {
                sum.add(left, values[mine++]);
            } else {
                sum.add(right, other.values[theirs++]);
            }
        }
        return sum.form();
    }

    /** The form with so much more of one column. */
    public LinearForm plus(int column, BigFraction more) {
        return plus(of(column, more));
    }

    /** The difference from another form. */
    public LinearForm minus(LinearForm other) {
        return plus(other.negated());
    }

    /** The form with its sign turned. */
    public LinearForm negated() {
        var turned = new BigFraction[values.length];
        Arrays.setAll(turned, term -> values[term].negate());
        return new LinearForm(columns, turned);
    }

    /** The form times a factor. */
    public LinearForm scaled(BigFraction factor) {
        return factor.equals(BigFraction.ONE) ? this : scaledBy(j -> factor);
    }

    /** The form with each coefficient times a factor of its column. */
    public LinearForm scaledBy(IntFunction<BigFraction> factor) {
        var scaled = new Terms(columns.length);
        forEach((j, value) -> scaled.add(j, value.multiply(factor.apply(j))));
        return scaled.form();
    }

    /** The same form over columns that stand so many places later. */
    public LinearForm shifted(int places) {
        var shifted = new int[columns.length];
        Arrays.setAll(shifted, term -> columns[term] + places);
        return new LinearForm(shifted, values);
    }

    /** The coefficient of every one of so many columns, zeros included. */
    public List<BigFraction> dense(int columns) {
        var all = new BigFraction[columns];
        Arrays.fill(all, BigFraction.ZERO);
        forEach((j, value) -> {
            if (j < columns) {
                all[j] = value;
            }
        });
        return Arrays.asList(all);
    }

    /** The largest coefficient without its sign; zero for a form without columns. */
    public BigFraction largest() {
        return values().stream()
                .map(BigFraction::abs)
                .max(Comparator.naturalOrder())
                .orElse(BigFraction.ZERO);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LinearForm form
                && Arrays.equals(columns, form.columns)
                && Arrays.equals(values, form.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(columns) + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return coefficients().toString();
    }
}
