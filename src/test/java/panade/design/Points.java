package panade.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;

/** Points and mixture regions, briefly written. */
final class Points {
    private Points() {}

    /** Values parted by blanks: decimals, or fractions such as {@code 1/3}. */
    static List<BigFraction> point(String values) {
        return Stream.of(values.split(" "))
                .map(value -> value.contains("/") ? BigFraction.parse(value) : Decimal.of(value))
                .toList();
    }

    /** Each lever at least and at most so much. */
    static List<LeverRow> between(String least, String most) {
        var rows = new ArrayList<LeverRow>();
        var lower = point(least);
        var upper = point(most);
        for (int i = 0; i < lower.size(); i++) {
            rows.add(new LeverRow(axis(lower.size(), i), lower.get(i)));
            rows.add(new LeverRow(axis(lower.size(), i), upper.get(i)).negated());
        }
        return rows;
    }

    /** All levers add to one. */
    static LeverRow whole(int levers) {
        return new LeverRow(Collections.nCopies(levers, BigFraction.ONE), BigFraction.ONE);
    }

    static List<BigFraction> axis(int levers, int axis) {
        var weights = new ArrayList<>(Collections.nCopies(levers, BigFraction.ZERO));
        weights.set(axis, BigFraction.ONE);
        return weights;
    }

    /** All points of a simplex whose shares are whole numbers of steps. */
    static List<List<BigFraction>> grid(int levers, int steps) {
        return counts(levers, steps).stream()
                .map(counts -> counts.stream()
                        .map(count -> BigFraction.of(count, steps))
                        .toList())
                .toList();
    }

    private static List<List<Integer>> counts(int parts, int sum) {
        if (parts == 1) {
            return List.of(List.of(sum));
        }
        var all = new ArrayList<List<Integer>>();
        for (int first = sum; first >= 0; first--) {
            for (var rest : counts(parts - 1, sum - first)) {
                var counts = new ArrayList<>(List.of(first));
                counts.addAll(rest);
                all.add(counts);
            }
        }
        return all;
    }
}
