package panade.certify.simplex;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.padic.PadicSystem;
import panade.padic.SquareMatrix;

/**
 * The square system of a basis: the rows that hold with nothing to spare, in the columns that may be more than zero.
 * Solved forwards it gives the amounts, backwards the multipliers. What it says is no proof: the basis may be wrong.
 */
public final class BasisSystem {
    private final LinearModel model;
    private final List<Integer> rows;
    private final List<Integer> columns;
    private final List<BigFraction> scales = new ArrayList<>();
    private final List<BigInteger> right = new ArrayList<>();

    private BasisSystem(LinearModel model, Basis basis) {
        this.model = model;
        this.columns = basis.columns().stream().sorted().toList();
        this.rows = new ArrayList<>();
        for (int i = 0; i < model.rows().size(); i++) {
            if (!basis.rows().contains(i)) {
                rows.add(i);
            }
        }
    }

    /** A point and the multipliers that go with it. */
    public record Pair(List<BigFraction> point, List<BigFraction> multipliers) {}

    /** The amounts and multipliers of a basis; empty where its system is not square or cannot be solved so. */
    public static Optional<Pair> solve(LinearModel model, Basis basis) {
        var system = new BasisSystem(model, basis);
        return system.rows.size() == system.columns.size() ? system.solve() : Optional.empty();
    }

    private Optional<Pair> solve() {
        var costs = columns.stream().map(j -> model.columns().get(j).cost()).toList();
        var costScale = Integers.scaleOf(costs);
        return PadicSystem.of(matrix())
                .flatMap(system -> system.solve(right)
                        .flatMap(amounts -> system.solveTransposed(List.of(Integers.whole(costs, costScale)))
                                .map(prices -> new Pair(point(amounts), multipliers(prices, costScale)))));
    }

    private SquareMatrix matrix() {
        var places = new HashMap<Integer, Integer>();
        columns.forEach(j -> places.put(j, places.size()));
        var lines = new ArrayList<Map<Integer, BigInteger>>();
        for (int i : rows) {
            var row = model.rows().get(i);
            var indices =
                    row.form().columns().stream().filter(places::containsKey).toList();
            var values = new ArrayList<BigFraction>();
            indices.forEach(j -> values.add(row.form().at(j)));
            values.add(row.right());
            var scale = Integers.scaleOf(values);
            var whole = Integers.whole(values, scale);
            var line = new HashMap<Integer, BigInteger>();
            for (int k = 0; k < indices.size(); k++) {
                line.put(places.getOrDefault(indices.get(k), -1), whole[k]);
            }
            lines.add(line);
            scales.add(scale);
            right.add(whole[indices.size()]);
        }
        return new SquareMatrix(lines);
    }

    private List<BigFraction> point(List<BigFraction> amounts) {
        var point = new ArrayList<>(Collections.nCopies(model.columns().size(), BigFraction.ZERO));
        for (int k = 0; k < columns.size(); k++) {
            point.set(columns.get(k), amounts.get(k));
        }
        return point;
    }

    private List<BigFraction> multipliers(List<BigFraction> prices, BigFraction costScale) {
        var multipliers = new ArrayList<>(Collections.nCopies(model.rows().size(), BigFraction.ZERO));
        for (int k = 0; k < rows.size(); k++) {
            multipliers.set(rows.get(k), prices.get(k).multiply(scales.get(k)).divide(costScale));
        }
        return multipliers;
    }
}
