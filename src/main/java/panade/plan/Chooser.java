package panade.plan;

import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Branching;
import panade.certify.Decision;
import panade.certify.Prover;
import panade.certify.Verdict.Optimum;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.CompiledChoice;
import panade.compile.Extent;
import panade.compile.RuleCompiler;
import panade.domain.Brief;
import panade.explain.conflict.Trials.Search;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.MixedModel;
import panade.model.Unproved;
import panade.quantity.Decimal;
import panade.solver.Deadline;
import panade.solver.MixedAnswer;
import panade.solver.MixedAnswer.Found;
import panade.solver.MixedAnswer.Infeasible;
import panade.solver.MixedSolver;

/** Chooses ingredients where rules leave a choice: a search proposes, exact branching proves. */
final class Chooser {
    /** How long a search and its proof may take together; what is open then is told. */
    static final Duration TIME = Duration.ofSeconds(20);

    /** How much of that the search in binary floating point may have. */
    private static final Duration SEARCH_TIME = Duration.ofSeconds(8);

    /** How many sets of choices are looked at for the proof; what is open then is told. */
    private static final int MAX_BRANCHES = 400;

    /** The same where the search finds nothing, so that this can be proved as well. */
    private static final int MAX_BRANCHES_WITHOUT_BLEND = 4000;

    private static final String SETTLED =
            "The rules leave a choice of ingredients: all of this is with the choice that is cheapest today.";

    private final BigFraction rate;
    private final Prover prover;
    private final MixedSolver search;
    private final Deadline deadline;
    private final int maxBranches;
    private final int maxBranchesWithoutBlend;

    /**
     * A chooser.
     *
     * @param rate money given for each cooked kilogram; zero for none
     * @param deadline when it has to end with what it has
     */
    Chooser(Prover prover, MixedSolver search, BigFraction rate, Deadline deadline) {
        this(prover, search, rate, deadline, MAX_BRANCHES, MAX_BRANCHES_WITHOUT_BLEND);
    }

    /** A chooser that looks at so many sets of choices at most, with a blend in hand and without one. */
    Chooser(
            Prover prover,
            MixedSolver search,
            BigFraction rate,
            Deadline deadline,
            int maxBranches,
            int maxBranchesWithoutBlend) {
        this.rate = rate;
        this.prover = prover;
        this.search = search;
        this.deadline = deadline;
        this.maxBranches = maxBranches;
        this.maxBranchesWithoutBlend = maxBranchesWithoutBlend;
    }

    /**
     * A choice made.
     *
     * @param brief with what is left out left out, floors for what is used, and no rules
     * @param choice how good it is
     */
    record Chosen(Brief brief, Choice choice) {}

    /** The best choice, or the proof that there is none. */
    OrProof<Chosen> choose(Brief brief) {
        var compiled = BriefCompiler.compile(brief, rate);
        var extent = new ProvedExtent(compiled, prover);
        var choice = RuleCompiler.compile(brief, compiled, extent);
        var model = choice.model();
        var answer = search(model);
        var proof = proof(model, answer);
        var bound = proof.bound();
        if (proof.best().isEmpty() || bound == null) {
            return none(proof);
        }
        var point = proof.best().get();
        var claim = answer instanceof Found found ? perKg(brief, compiled, extent, Decimal.of(found.bound())) : null;
        boolean closed = bound.equals(model.relaxed().costAt(point));
        return new OrProof.Found<>(new Chosen(
                settled(brief, choice, model.rounded(point)),
                new Choice(finder(answer), perKg(brief, compiled, extent, bound), closed, proof.looked(), claim)));
    }

    /**
     * A bound on costs as they are counted. Per cooked kilogram, what a raw one costs at least, beyond the rate for
     * what it weighs cooked, is shared by the least that can be; no price is negative, so no cost is.
     */
    private BigFraction perKg(Brief brief, CompiledBrief compiled, Extent extent, BigFraction bound) {
        var cooked = brief.practice().cookedWeight();
        if (rate.signum() == 0 || cooked == null) {
            return bound;
        }
        if (bound.signum() >= 0) {
            return rate;
        }
        var weight = extent.least(compiled.formOf(cooked, brief.composition()));
        var told = weight.signum() > 0 ? rate.add(bound.divide(weight)) : BigFraction.ZERO;
        return told.signum() > 0 ? told : BigFraction.ZERO;
    }

    private static final String BRANCHING = "branching";

    private static OrProof<Chosen> none(Branching.Proof proof) {
        if (!proof.isImpossible()) {
            throw new Unproved(open(proof));
        }
        return new OrProof.None<>(new Contradiction.RuledOut(proof));
    }

    private static String open(Branching.Proof proof) {
        return "the rules leave so many choices that within " + TIME.toSeconds() + " s, after " + proof.looked()
                + " sets of them, no blend was found, nor all were ruled out";
    }

    /** The cheapest point of a model, after branching. */
    Decision<List<BigFraction>> cheapestPoint(MixedModel model) {
        var proof = proof(model, search(model));
        var bound = proof.bound();
        if (proof.best().isEmpty()) {
            return proof.isImpossible() ? new Decision.Impossible<>() : new Decision.Undecided<>(open(proof));
        }
        var point = proof.best().get();
        return model.relaxed().costAt(point).equals(bound)
                ? new Decision.Found<>(point)
                : new Decision.Undecided<>("after " + proof.looked() + " sets of choices, within " + TIME.toSeconds()
                        + " s, it is not ruled out that another is cheaper");
    }

    /** A point of least cost, proved as far as time and the limit on branches allow. */
    Search least(MixedModel model) {
        var proof = proof(model, search(model));
        var bound = proof.bound();
        if (proof.best().isEmpty() || bound == null) {
            return proof.isImpossible() ? new Search.None(true) : new Search.Open();
        }
        var point = proof.best().get();
        return new Search.Found(point, bound.equals(model.relaxed().costAt(point)));
    }

    /** Any point; where the search says that there is none, its word is taken. */
    Search any(MixedModel model) {
        return found(free(model));
    }

    /** A point as cheap as the search could find; that none is cheaper, or that there is none, is its own word. */
    Search found(MixedModel model) {
        var answer = search(model);
        if (answer instanceof Infeasible) {
            return new Search.None(false);
        }
        var known = answer instanceof Found found ? held(model, found.values()) : null;
        return known == null ? least(model) : new Search.Found(known, false);
    }

    /** What found the choice: where the search found nothing, perhaps because it is not there, branching did. */
    private String finder(MixedAnswer answer) {
        return answer instanceof Found ? search.name() : BRANCHING;
    }

    private MixedAnswer search(MixedModel model) {
        return deadline.isOver()
                ? new MixedAnswer.Undecided("the time is over")
                : search.solve(model, deadline.left(SEARCH_TIME));
    }

    private Branching.Proof proof(MixedModel model, MixedAnswer answer) {
        var known = answer instanceof Found found ? held(model, found.values()) : null;
        return Branching.prove(model, known, prover, known == null ? maxBranchesWithoutBlend : maxBranches, deadline);
    }

    private @Nullable List<BigFraction> held(MixedModel model, Map<Integer, BigInteger> values) {
        return prover.prove(model.holding(values)) instanceof Optimum optimum ? optimum.point() : null;
    }

    private static Brief settled(Brief brief, CompiledChoice choice, Map<Integer, BigInteger> values) {
        var bounds = new ArrayList<>(brief.bounds());
        bounds.addAll(choice.floors(values));
        return brief.without(choice.leftOut(values))
                .withBounds(bounds)
                .withRules(List.of())
                .noting(SETTLED);
    }

    /** The model when nothing costs anything, so that the first point found will do. */
    private static MixedModel free(MixedModel model) {
        var columns = model.relaxed().columns().stream()
                .map(column -> new Column(column.name(), BigFraction.ZERO))
                .toList();
        return new MixedModel(new LinearModel(columns, model.relaxed().rows()), model.whole());
    }
}
