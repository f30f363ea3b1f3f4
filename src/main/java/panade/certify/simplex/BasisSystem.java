package panade.certify.simplex;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.model.WholeForm;
import panade.padic.PadicSystem;
import panade.padic.SquareMatrix;

/**
 * The square system of a basis, factored once: the rows that hold with nothing to spare, in the columns that may be
 * more than zero. Solved forwards it gives amounts, backwards multipliers, whatever stands on the other side. What it
 * says is no proof: the basis may be wrong.
 */
public final class BasisSystem {
    private final LinearModel model;
    private final List<Integer> rows;
    private final List<Integer> columns;
    /** What makes each row whole. */
    private final List<BigFraction> scales;

    private final PadicSystem system;

    private BasisSystem(
            LinearModel model,
            List<Integer> rows,
            List<Integer> columns,
            List<BigFraction> scales,
            PadicSystem system) {
        this.model = model;
        this.rows = rows;
        this.columns = columns;
        this.scales = scales;
        this.system = system;
    }

    /** A point and the multipliers that go with it. */
    public record Pair(List<BigFraction> point, List<BigFraction> multipliers) {}

    /** The system of a basis; empty where it is not square or cannot be solved so. */
    public static Optional<BasisSystem> of(LinearModel model, Basis basis) {
        var columns = basis.columns().stream().sorted().toList();
        var rows = new ArrayList<Integer>();
        for (int i = 0; i < model.rows().size(); i++) {
            if (!basis.rows().contains(i)) {
                rows.add(i);
            }
        }
        return rows.size() == columns.size() ? of(model, rows, columns) : Optional.empty();
    }

    private static Optional<BasisSystem> of(LinearModel model, List<Integer> rows, List<Integer> columns) {
        var places = new HashMap<Integer, Integer>();
        columns.forEach(j -> places.put(j, places.size()));
        var lines = new ArrayList<Map<Integer, BigInteger>>();
        var scales = new ArrayList<BigFraction>();
        for (int i : rows) {
            var form = model.rows().get(i).form().whole();
            var line = line(form, places);
            var shared = line.values().stream().reduce(BigInteger.ZERO, BigInteger::gcd);
            if (shared.signum() == 0) {
                return Optional.empty();
            }
            line.replaceAll((place, value) -> value.divide(shared));
            lines.add(line);
            scales.add(BigFraction.of(form.denominator(), shared));
        }
        return PadicSystem.of(new SquareMatrix(lines))
                .map(system -> new BasisSystem(model, rows, columns, scales, system));
    }

    private static Map<Integer, BigInteger> line(WholeForm form, Map<Integer, Integer> places) {
        var line = new HashMap<Integer, BigInteger>();
        for (int k = 0; k < form.size(); k++) {
            var place = places.get(form.column(k));
            if (place != null) {
                line.put(place, form.value(k));
            }
        }
        return line;
    }

    /** The amounts and multipliers of a basis; empty where its system is not square or cannot be solved so. */
    public static Optional<Pair> solve(LinearModel model, Basis basis) {
        return of(model, basis).flatMap(BasisSystem::solve);
    }

    /** The amounts and multipliers of the model itself. */
    public Optional<Pair> solve() {
        return amounts(i -> model.rows().get(i).right())
                .flatMap(point -> multipliers(j -> model.columns().get(j).cost())
                        .map(multipliers -> new Pair(point, multipliers)));
    }

    /**
     * The value of every column, zero for those that are not in the basis, where the basis' rows come to so much.
     *
     * @param right by row
     */
    public Optional<List<BigFraction>> amounts(IntFunction<BigFraction> right) {
        var sides = new ArrayList<BigFraction>();
        for (int k = 0; k < rows.size(); k++) {
            sides.add(right.apply(rows.get(k)).multiply(scales.get(k)));
        }
        return solved(sides, system::solve)
                .map(values -> spread(values, columns, model.columns().size()));
    }

    /**
     * The multiplier of every row, zero for those that are not in the basis, with which the basis' columns come to so
     * much.
     *
     * @param costs by column
     */
    public Optional<List<BigFraction>> multipliers(IntFunction<BigFraction> costs) {
        var sides = columns.stream().map(costs::apply).toList();
        return solved(sides, system::solveTransposed).map(values -> {
            var scaled = new ArrayList<BigFraction>();
            for (int k = 0; k < rows.size(); k++) {
                scaled.add(values.get(k).multiply(scales.get(k)));
            }
            return spread(scaled, rows, model.rows().size());
        });
    }

    private static Optional<List<BigFraction>> solved(
            List<BigFraction> sides, Function<List<BigInteger>, Optional<List<BigFraction>>> solver) {
        var scale = Integers.scaleOf(sides);
        return solver.apply(List.of(Integers.whole(sides, scale)))
                .map(values -> scale.equals(BigFraction.ONE)
                        ? values
                        : values.stream().map(value -> value.divide(scale)).toList());
    }

    private static List<BigFraction> spread(List<BigFraction> values, List<Integer> places, int size) {
        var all = new ArrayList<>(Collections.nCopies(size, BigFraction.ZERO));
        for (int k = 0; k < places.size(); k++) {
            all.set(places.get(k), values.get(k));
        }
        return all;
    }

    /** Sums over a model's rows, by column, in whole numbers over one denominator above zero. */
    record Combination(List<BigInteger> sums, BigInteger denominator) {}

    /**
     * What a combination of the rows comes to in each column.
     *
     * @param multipliers by row
     */
    static Combination combined(LinearModel model, List<BigFraction> multipliers) {
        var counting = IntStream.range(0, multipliers.size())
                .filter(i -> multipliers.get(i).signum() != 0)
                .boxed()
                .toList();
        var forms =
                counting.stream().map(i -> model.rows().get(i).form().whole()).toList();
        var common = WholeForm.commonDenominator(multipliers);
        var shared = forms.stream().map(WholeForm::denominator).reduce(BigInteger.ONE, BasisSystem::leastMultiple);
        var sums = new BigInteger[model.columns().size()];
        Arrays.fill(sums, BigInteger.ZERO);
        for (int k = 0; k < forms.size(); k++) {
            var form = forms.get(k);
            var factor = Integers.times(multipliers.get(counting.get(k)), common)
                    .multiply(shared.divide(form.denominator()));
            for (int term = 0; term < form.size(); term++) {
                sums[form.column(term)] = sums[form.column(term)].add(factor.multiply(form.value(term)));
            }
        }
        return new Combination(Arrays.asList(sums), common.multiply(shared));
    }

    private static BigInteger leastMultiple(BigInteger one, BigInteger other) {
        return one.divide(one.gcd(other)).multiply(other);
    }
}
