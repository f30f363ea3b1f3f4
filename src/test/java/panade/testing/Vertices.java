package panade.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel;
import panade.model.LinearModel.Sense;

/**
 * The corners of a small bounded model by trying every choice of tight rows and zero columns, each solved by Gauss's
 * elimination. It shares nothing with the simplex method.
 */
public record Vertices(LinearModel model, List<List<BigFraction>> points) {
    /** The corners of a model whose rows leave no way to infinity. */
    public static Vertices of(LinearModel model) {
        var points = new ArrayList<List<BigFraction>>();
        choose(model, 0, new ArrayList<>(), points);
        return new Vertices(model, points.stream().distinct().toList());
    }

    /** The least cost; empty where no point meets all rows. */
    public Optional<BigFraction> leastCost() {
        return points.stream().map(model::costAt).min(Vertices::compare);
    }

    /** The cheapest corners. */
    public List<List<BigFraction>> cheapest() {
        var least = leastCost();
        return points.stream()
                .filter(point -> compare(model.costAt(point), least.orElseThrow()) == 0)
                .toList();
    }

    /** The least or most of a figure over the cheapest corners. */
    public BigFraction extreme(Function<List<BigFraction>, BigFraction> figure, boolean most) {
        var values = cheapest().stream().map(figure);
        return (most ? values.max(Vertices::compare) : values.min(Vertices::compare)).orElseThrow();
    }

    /** The order of two fractions by the sign of their difference. */
    public static int compare(BigFraction a, BigFraction b) {
        return a.subtract(b).signum();
    }

    private static void choose(LinearModel model, int next, List<Integer> tight, List<List<BigFraction>> points) {
        int columns = model.columns().size();
        if (tight.size() == columns) {
            solved(model, tight).filter(point -> meets(model, point)).ifPresent(points::add);
            return;
        }
        for (int i = next; i < model.rows().size() + columns; i++) {
            tight.add(i);
            choose(model, i + 1, tight, points);
            tight.remove(tight.size() - 1);
        }
    }

    private static boolean meets(LinearModel model, List<BigFraction> point) {
        return point.stream().allMatch(value -> value.signum() >= 0)
                && model.rows().stream().allMatch(row -> {
                    int side = compare(row.activity(point), row.right());
                    return side == 0 || row.sense() == (side > 0 ? Sense.AT_LEAST : Sense.AT_MOST);
                });
    }

    /** The point at which some rows are tight and some columns zero; empty where they do not fix one. */
    private static Optional<List<BigFraction>> solved(LinearModel model, List<Integer> tight) {
        int n = model.columns().size();
        var table = new BigFraction[n][];
        for (int i = 0; i < n; i++) {
            table[i] = equation(model, tight.get(i));
        }
        for (int step = 0; step < n; step++) {
            int pivot = step;
            while (pivot < n && table[pivot][step].signum() == 0) {
                pivot++;
            }
            if (pivot == n) {
                return Optional.empty();
            }
            var row = table[pivot];
            table[pivot] = table[step];
            table[step] = row;
            clear(table, step);
        }
        return Optional.of(java.util.Arrays.stream(table).map(row -> row[n]).toList());
    }

    private static void clear(BigFraction[][] table, int step) {
        var pivot = table[step][step];
        for (int j = 0; j < table[step].length; j++) {
            table[step][j] = table[step][j].divide(pivot);
        }
        for (int i = 0; i < table.length; i++) {
            var factor = table[i][step];
            for (int j = 0; i != step && j < table[i].length; j++) {
                table[i][j] = table[i][j].subtract(factor.multiply(table[step][j]));
            }
        }
    }

    private static BigFraction[] equation(LinearModel model, int tight) {
        int n = model.columns().size();
        var equation = new BigFraction[n + 1];
        for (int j = 0; j < n; j++) {
            equation[j] = unit(tight - model.rows().size() == j);
        }
        equation[n] = BigFraction.ZERO;
        if (tight < model.rows().size()) {
            var row = model.rows().get(tight);
            for (int j = 0; j < n; j++) {
                equation[j] = coefficient(model, tight, j);
            }
            equation[n] = row.right();
        }
        return equation;
    }

    /** What one unit of a column adds to a row. */
    private static BigFraction coefficient(LinearModel model, int row, int column) {
        var point = new ArrayList<BigFraction>();
        for (int j = 0; j < model.columns().size(); j++) {
            point.add(unit(j == column));
        }
        return model.rows().get(row).activity(point);
    }

    private static BigFraction unit(boolean one) {
        return one ? BigFraction.ONE : BigFraction.ZERO;
    }
}
