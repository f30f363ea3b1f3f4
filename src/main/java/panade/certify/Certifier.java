package panade.certify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.simplex.BasisSystem;
import panade.certify.simplex.BasisSystem.Pair;
import panade.certify.simplex.Dictionary;
import panade.certify.simplex.ExactSimplex;
import panade.certify.simplex.ExactSimplex.Ending;
import panade.certify.simplex.Tableau;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.solver.SolverAnswer;

/**
 * Turns a solver's claim into a proved verdict. The claimed basis is solved again in exact arithmetic, sparsely; where
 * it is off by a hair it is pivoted on in a dense dictionary, and without a claim the exact simplex starts from
 * nothing. What comes out is checked against the model by {@link Certificate}.
 */
public final class Certifier {
    /** The name told when no solver helped. */
    public static final String EXACT_ENGINE = "exact simplex";

    private Certifier() {}

    /**
     * What can be proved of the model by a solver of that name. Where it finds no point and so has no basis to offer,
     * it is asked by how little the rows can be missed.
     */
    public static Verdict certify(LinearModel model, Function<LinearModel, SolverAnswer> solver, String name) {
        var answer = solver.apply(model);
        var refuted = answer instanceof SolverAnswer.Infeasible
                ? Violation.refuted(model, solver.apply(Violation.of(model)), name)
                : Optional.<Verdict>empty();
        return refuted.orElseGet(() -> certify(model, answer, name));
    }

    /** What can be proved of the model, given what a solver of that name says of it. */
    public static Verdict certify(LinearModel model, SolverAnswer answer, String solverName) {
        if (answer instanceof SolverAnswer.Optimal optimal) {
            var basis = optimal.basis();
            return confirm(model, basis, solverName).orElseGet(() -> pivoted(model, near(model, basis), solverName));
        }
        return pivoted(model, new Tableau(model), EXACT_ENGINE);
    }

    /** The verdict that a basis proves as it is, without a pivot; empty when it proves none. */
    public static Optional<Verdict> confirm(LinearModel model, Basis basis, String engine) {
        return BasisSystem.solve(model, basis)
                .flatMap(pair -> proved(model, pair, engine, known(model, basis), () -> dictionary(model, basis)));
    }

    /**
     * The basis itself, unless the slack of an equation is in it; null then, for a pivot or two must drive that out.
     */
    private static @Nullable Basis known(LinearModel model, Basis basis) {
        return basis.rows().stream().allMatch(i -> model.rows().get(i).sense() != LinearModel.Sense.EQUAL)
                ? basis
                : null;
    }

    private static Tableau near(LinearModel model, Basis basis) {
        var tableau = new Tableau(model);
        tableau.bringIn(basis);
        return tableau;
    }

    /** The dictionary of an optimal basis, in which equations have no slack left. */
    private static Tableau dictionary(LinearModel model, Basis basis) {
        var tableau = near(model, basis);
        new ExactSimplex(tableau).run();
        return tableau;
    }

    private static Verdict pivoted(LinearModel model, Tableau tableau, String engine) {
        var simplex = new ExactSimplex(tableau);
        var ending = simplex.run();
        if (ending == Ending.OPTIMAL) {
            return optimum(model, tableau, engine);
        }
        return ending == Ending.INFEASIBLE
                ? impossible(model, tableau, simplex.stuckLine(), engine)
                : new Verdict.Unbounded(engine);
    }

    private static Verdict optimum(LinearModel model, Tableau tableau, String engine) {
        var point = tableau.point();
        var multipliers = multipliers(model, tableau, tableau.costScale());
        return proved(model, new Pair(point, multipliers), engine, null, () -> tableau)
                .orElseGet(() -> new Verdict.Unproven("the exact check of the least-cost blend failed"));
    }

    private static Optional<Verdict> proved(
            LinearModel model, Pair pair, String engine, @Nullable Basis basis, Supplier<Tableau> source) {
        var proof = OptimalityProof.check(model, pair.point(), pair.multipliers(), engine);
        return proof.isComplete()
                ? Optional.of(new Verdict.Optimum(model, pair.point(), pair.multipliers(), proof, basis, source))
                : Optional.empty();
    }

    /** The multipliers that an optimal dictionary gives, where its objective line is the costs times a factor. */
    public static List<BigFraction> multipliers(LinearModel model, Tableau tableau, BigFraction costScale) {
        return signed(model, tableau.multipliers(tableau.objective())).stream()
                .map(value -> value.divide(costScale))
                .toList();
    }

    /** The multipliers that a dictionary gives to a model of other costs. */
    public static List<BigFraction> multipliers(LinearModel model, Dictionary dictionary, List<BigFraction> costs) {
        return signed(model, dictionary.slackPrices(costs));
    }

    private static Verdict impossible(LinearModel model, Tableau tableau, int line, String engine) {
        boolean rises = tableau.constant(line).signum() > 0;
        var multipliers = contradiction(model, tableau, line).stream()
                .map(value -> rises ? value : value.negate())
                .toList();
        return Certificate.provesImpossible(model, multipliers)
                ? new Verdict.Impossible(multipliers, engine)
                : new Verdict.Unproven("the exact check that no blend exists failed");
    }

    /**
     * The multipliers that a stuck line gives, up to their common sign. It reads: a slack is negative, and nothing that
     * may grow lifts it.
     */
    static List<BigFraction> contradiction(LinearModel model, Tableau tableau, int line) {
        var raw = new ArrayList<>(tableau.multipliers(line));
        int basic = tableau.basic(line);
        if (basic >= model.columns().size()) {
            int row = basic - model.columns().size();
            raw.set(row, tableau.slackScale(row).negate());
        }
        return signed(model, raw);
    }

    /** Slacks of ceilings count downwards: their multipliers change sign. */
    private static List<BigFraction> signed(LinearModel model, List<BigFraction> slackMultipliers) {
        var multipliers = new ArrayList<BigFraction>();
        for (int i = 0; i < slackMultipliers.size(); i++) {
            boolean most = model.rows().get(i).sense() == LinearModel.Sense.AT_MOST;
            multipliers.add(most ? slackMultipliers.get(i).negate() : slackMultipliers.get(i));
        }
        return multipliers;
    }
}
