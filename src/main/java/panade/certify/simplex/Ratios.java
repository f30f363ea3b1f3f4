package panade.certify.simplex;

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
}
