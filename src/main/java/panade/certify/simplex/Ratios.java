package panade.certify.simplex;

import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;

/** Ratio tests of the simplex method, by cross-multiplication so that nothing is divided. */
final class Ratios {
    private Ratios() {}

    /** The line that reaches zero first as the variable at a place grows, or -1. */
    static int leaving(Dictionary dictionary, int place) {
        var column = dictionary.column(place);
        return least(dictionary.constants(), column, dictionary.rows(), i -> column.sign(i) < 0, dictionary::basic);
    }

    /** The line that reaches zero first as the parameter grows, or -1. */
    static int limiting(Dictionary dictionary) {
        var parameters = dictionary.parameters();
        IntPredicate falls = i -> parameters.sign(i) < 0 && !dictionary.locked(dictionary.basic(i));
        return least(dictionary.constants(), parameters, dictionary.rows(), falls, dictionary::basic);
    }

    /**
     * The place whose price reaches zero first as the variable of a line grows, among those that are free and whose
     * entry has a usable sign; below zero when there is none.
     */
    static int entering(Dictionary dictionary, int line, IntPredicate usableSign) {
        var cells = dictionary.line(line);
        IntPredicate usable = j -> !dictionary.locked(dictionary.nonbasic(j)) && usableSign.test(cells.sign(j));
        return least(dictionary.prices(), cells, dictionary.columns(), usable, dictionary::nonbasic);
    }

    /** The place whose price reaches zero first as the second objective is added to the costs, or -1. */
    static int turning(Dictionary dictionary) {
        var directions = dictionary.directions();
        IntPredicate falls = j -> directions.sign(j) < 0 && !dictionary.locked(dictionary.nonbasic(j));
        return least(dictionary.prices(), directions, dictionary.columns(), falls, dictionary::nonbasic);
    }

    /** Where the upper cell is the least part of the lower one's size; the lowest variable among equals. */
    private static int least(Cells upper, Cells lower, int size, IntPredicate usable, IntUnaryOperator variable) {
        int best = -1;
        for (int k = 0; k < size; k++) {
            if (!usable.test(k)) {
                continue;
            }
            int order = best < 0 ? -1 : compare(upper, lower, k, best);
            boolean less = order < 0 || (order == 0 && variable.applyAsInt(k) < variable.applyAsInt(best));
            best = less ? k : best;
        }
        return best;
    }

    private static int compare(Cells upper, Cells lower, int a, int b) {
        var left = upper.number(a).multiply(lower.number(b).abs());
        var right = upper.number(b).multiply(lower.number(a).abs());
        return left.compareTo(right);
    }
}
