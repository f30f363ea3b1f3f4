package panade.plan;

import java.time.Duration;
import panade.audit.Audit;
import panade.certify.Certifier;
import panade.certify.Verdict;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.domain.Brief;
import panade.explain.Explainer;
import panade.solver.Solver;

/** Runs the line once: compile, solve, certify, measure again, explain. */
public final class Planner {
    private static final Duration LIMIT = Duration.ofSeconds(60);

    private final Solver solver;

    /** A planner that asks one solver. */
    public Planner(Solver solver) {
        this.solver = solver;
    }

    /** The outcome of a brief. */
    public Outcome plan(Brief brief) {
        var compiled = BriefCompiler.compile(brief);
        var answer = solver.solve(compiled.model(), LIMIT);
        var verdict = Certifier.certify(compiled.model(), answer, solver.name());
        if (verdict instanceof Verdict.Optimum optimum) {
            return blended(brief, compiled, optimum);
        }
        if (verdict instanceof Verdict.Impossible impossible) {
            return new Outcome.Conflicted(brief, impossible);
        }
        return new Outcome.Undecided(
                brief, verdict instanceof Verdict.Unproven unproven ? unproven.reason() : "the cost falls without end");
    }

    private static Outcome blended(Brief brief, CompiledBrief compiled, Verdict.Optimum optimum) {
        var blend = BlendReader.blend(brief, compiled, optimum.point());
        var broken = new Audit(brief, blend).broken();
        return broken.isEmpty()
                ? new Outcome.Blended(brief, blend, Explainer.explain(brief, compiled, blend, optimum), optimum)
                : new Outcome.Undecided(brief, "measured again, the blend breaks " + String.join(", ", broken));
    }
}
