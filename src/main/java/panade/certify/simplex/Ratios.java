package panade.certify.simplex;

import java.util.function.IntPredicate;

/** Ratio tests of the simplex method, by cross-multiplication so that nothing is divided. */
final class Ratios {
    private Ratios() {}

    /** Whether line {@code a} reaches zero before line {@code b} as the variable at a place grows; ties by index. */
    static boolean sooner(Tableau tableau, int place, int a, int b) {
        var left = tableau.constant(a).multiply(tableau.at(b, place).negate());
        var right = tableau.constant(b).multiply(tableau.at(a, place).negate());
        int order = left.compareTo(right);
        return order < 0 || (order == 0 && tableau.basic(a) < tableau.basic(b));
    }

    /**
     * Whether place {@code a} has the smaller price per unit of a line's growth than place {@code b}; ties by index.
     */
    static boolean smaller(Tableau tableau, int line, int a, int b) {
        int objective = tableau.objective();
        var left = tableau.at(objective, a).multiply(tableau.at(line, b).abs());
        var right = tableau.at(objective, b).multiply(tableau.at(line, a).abs());
        int order = left.compareTo(right);
        return order < 0 || (order == 0 && tableau.nonbasic(a) < tableau.nonbasic(b));
    }

    /**
     * The place whose price reaches zero first as the variable of a line grows, among those that are free and whose
     * entry has a usable sign; below zero when there is none.
     */
    static int entering(Tableau tableau, int line, IntPredicate usableSign) {
        int best = -1;
        for (int j = 0; j < tableau.columns(); j++) {
            boolean usable = !tableau.locked(tableau.nonbasic(j))
                    && usableSign.test(tableau.at(line, j).signum());
            best = usable && (best < 0 || smaller(tableau, line, j, best)) ? j : best;
        }
        return best;
    }
}
