package panade.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    public static final LinearForm ZERO = new LinearForm(Collections.emptySortedMap());

    private final SortedMap<Integer, BigFraction> coefficients;
    /** Made when it is first asked for. */
    private @Nullable WholeForm whole;

    private LinearForm(SortedMap<Integer, BigFraction> coefficients) {
        var kept = new TreeMap<>(coefficients);
        kept.values().removeIf(value -> value.signum() == 0);
        this.coefficients = Collections.unmodifiableSortedMap(kept);
    }

    /** The form with coefficients by column. */
    public static LinearForm of(Map<Integer, BigFraction> coefficients) {
        return new LinearForm(new TreeMap<>(coefficients));
    }

    /** So much of one column. */
    public static LinearForm of(int column, BigFraction coefficient) {
        return of(Map.of(column, coefficient));
    }

    /** A form over the columns from nought on, so many of them. */
    public static LinearForm over(int columns, IntFunction<BigFraction> coefficient) {
        var all = new TreeMap<Integer, BigFraction>();
        for (int j = 0; j < columns; j++) {
            var value = coefficient.apply(j);
            if (value.signum() != 0) {
                all.put(j, value);
            }
        }
        return new LinearForm(all);
    }

    /** The sum of those among so many columns for which a condition holds. */
    public static LinearForm sumOver(int columns, IntPredicate included) {
        return over(columns, j -> included.test(j) ? BigFraction.ONE : BigFraction.ZERO);
    }

    /** The sum of columns, each counted once. */
    public static LinearForm sumOf(Collection<Integer> columns) {
        var all = new TreeMap<Integer, BigFraction>();
        columns.forEach(column -> all.put(column, BigFraction.ONE));
        return new LinearForm(all);
    }

    /** Coefficients by column index; a column that is absent counts nothing. */
    public SortedMap<Integer, BigFraction> coefficients() {
        return coefficients;
    }

    /** The same in whole numbers over one denominator. */
    public WholeForm whole() {
        var known = whole;
        if (known == null) {
            known = WholeForm.of(coefficients);
            whole = known;
        }
        return known;
    }

    /** The coefficient of a column. */
    public BigFraction at(int column) {
        return coefficients.getOrDefault(column, BigFraction.ZERO);
    }

    /** The columns that count, in ascending order. */
    public Set<Integer> columns() {
        return coefficients.keySet();
    }

    /** Their coefficients, in the same order; none is zero. */
    public Collection<BigFraction> values() {
        return coefficients.values();
    }

    /** Every column that counts with its coefficient, in ascending order. */
    public void forEach(BiConsumer<Integer, BigFraction> action) {
        coefficients.forEach(action);
    }

    /** Whether no column counts. */
    public boolean isZero() {
        return coefficients.isEmpty();
    }

    /** The value at a point. */
    public BigFraction dot(List<BigFraction> point) {
        var total = BigFraction.ZERO;
        for (var term : coefficients.entrySet()) {
            var amount = point.get(term.getKey());
            if (amount.signum() != 0) {
                total = total.add(term.getValue().multiply(amount));
            }
        }
        return total;
    }

    /** The sum with another form. */
    public LinearForm plus(LinearForm other) {
        var sum = new TreeMap<>(coefficients);
        other.forEach((j, value) -> sum.merge(j, value, BigFraction::add));
        return new LinearForm(sum);
    }

    /** The form with so much more of one column. */
    public LinearForm plus(int column, BigFraction more) {
        var sum = new TreeMap<>(coefficients);
        sum.merge(column, more, BigFraction::add);
        return new LinearForm(sum);
    }

    /** The difference from another form. */
    public LinearForm minus(LinearForm other) {
        return plus(other.negated());
    }

    /** The form with its sign turned. */
    public LinearForm negated() {
        return scaled(BigFraction.ONE.negate());
    }

    /** The form times a factor. */
    public LinearForm scaled(BigFraction factor) {
        return scaledBy(j -> factor);
    }

    /** The form with each coefficient times a factor of its column. */
    public LinearForm scaledBy(IntFunction<BigFraction> factor) {
        var scaled = new TreeMap<Integer, BigFraction>();
        forEach((j, value) -> scaled.put(j, value.multiply(factor.apply(j))));
        return new LinearForm(scaled);
    }

    /** The same form over columns that stand so many places later. */
    public LinearForm shifted(int places) {
        var shifted = new TreeMap<Integer, BigFraction>();
        forEach((j, value) -> shifted.put(j + places, value));
        return new LinearForm(shifted);
    }

    /** The coefficient of every one of so many columns, zeros included. */
    public List<BigFraction> dense(int columns) {
        var all = new ArrayList<BigFraction>(columns);
        for (int j = 0; j < columns; j++) {
            all.add(at(j));
        }
        return all;
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
        return other instanceof LinearForm form && coefficients.equals(form.coefficients);
    }

    @Override
    public int hashCode() {
        return coefficients.hashCode();
    }

    @Override
    public String toString() {
        return coefficients.toString();
    }
}
