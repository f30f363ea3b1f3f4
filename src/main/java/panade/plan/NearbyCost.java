package panade.plan;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Certifier;
import panade.certify.Decision;
import panade.certify.Prover;
import panade.certify.Verdict;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.cone.Cut;
import panade.cone.CuttingPlanes;
import panade.cone.Tightened;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.model.Basis;
import panade.model.LinearModel;

/**
 * The least cost of briefs that differ a little from one that is solved: its basis is likely to be the best of theirs,
 * and is tried before a solver is asked; with sure bounds its cuts are known from the start.
 */
record NearbyCost(
        Prover prover,
        Function<Brief, Decision<Blend>> cheapest,
        CompiledBrief near,
        Supplier<Basis> likely,
        List<Cut> cuts)
        implements Function<Brief, Decision<BigFraction>> {

    @Override
    public Decision<BigFraction> apply(Brief brief) {
        if (brief.practice().perCooked()) {
            return cheapest.apply(brief).map(Blend::costPerKg);
        }
        var compiled = BriefCompiler.compile(brief, near);
        return brief.isSure()
                ? cost(CuttingPlanes.solve(compiled, prover, cuts))
                : cost(compiled.model(), verdict(compiled.model()));
    }

    private Verdict verdict(LinearModel model) {
        return Certifier.confirm(model, likely.get(), Certifier.EXACT_ENGINE).orElseGet(() -> prover.prove(model));
    }

    private static Decision<BigFraction> cost(Tightened tightened) {
        return cost(tightened.compiled().model(), tightened.verdict());
    }

    private static Decision<BigFraction> cost(LinearModel model, Verdict verdict) {
        if (verdict instanceof Verdict.Optimum optimum) {
            return new Decision.Found<>(model.costAt(optimum.point()));
        }
        return verdict instanceof Verdict.Impossible
                ? new Decision.Impossible<>()
                : new Decision.Undecided<>(Planner.reason(verdict));
    }
}
