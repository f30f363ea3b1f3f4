package panade.plan;

import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Certifier;
import panade.certify.Decision;
import panade.certify.Prover;
import panade.certify.Verdict;
import panade.compile.BriefCompiler;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.model.Basis;

/**
 * The least cost of briefs that differ a little from one that is solved: its basis is likely to be the best of theirs,
 * and is tried before a solver is asked.
 */
record NearbyCost(Prover prover, Function<Brief, Decision<Blend>> cheapest, Basis likely)
        implements Function<Brief, Decision<BigFraction>> {

    @Override
    public Decision<BigFraction> apply(Brief brief) {
        if (brief.practice().perCooked()) {
            return cheapest.apply(brief).map(Blend::costPerKg);
        }
        var model = BriefCompiler.compile(brief).model();
        var verdict = Certifier.confirm(model, likely, Certifier.EXACT_ENGINE).orElseGet(() -> prover.prove(model));
        if (verdict instanceof Verdict.Optimum optimum) {
            return new Decision.Found<>(model.costAt(optimum.point()));
        }
        return verdict instanceof Verdict.Impossible
                ? new Decision.Impossible<>()
                : new Decision.Undecided<>(Planner.reason(verdict));
    }
}
