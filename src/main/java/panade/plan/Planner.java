package panade.plan;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.audit.Audit;
import panade.certify.Certifier;
import panade.certify.Verdict;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.ConflictExplainer;
import panade.explain.Explainer;
import panade.explain.Room;
import panade.explain.RoomReader;
import panade.model.LinearModel;
import panade.solver.Solver;

/** Runs the line once: compile, solve, certify, measure again, explain. */
public final class Planner {
    private static final Duration LIMIT = Duration.ofSeconds(60);

    /** How much dearer a blend may be to count as nearby, unless somebody says otherwise: one per cent. */
    public static final BigFraction USUAL_SLACK = BigFraction.of(1, 100);

    private final Solver solver;
    private final BigFraction slack;
    private final int conflicts;

    /** A planner that asks one solver. */
    public Planner(Solver solver) {
        this(solver, USUAL_SLACK, 1);
    }

    /**
     * A planner that asks one solver.
     *
     * @param slack how much dearer a blend may be to count as nearby, as a fraction of the least cost
     * @param conflicts how many irreducible conflicts to look for at most when there is no blend
     */
    public Planner(Solver solver, BigFraction slack, int conflicts) {
        this.solver = solver;
        this.slack = slack;
        this.conflicts = conflicts;
    }

    /** The outcome of a brief, with the room around the blend or all that was asked for about conflicts. */
    public Outcome plan(Brief brief) {
        var compiled = BriefCompiler.compile(brief);
        var verdict = verdict(compiled);
        if (verdict instanceof Verdict.Optimum optimum) {
            var room = RoomReader.room(brief, compiled, optimum, slack);
            return blended(brief, compiled, optimum, room);
        }
        return without(brief, compiled, verdict, conflicts);
    }

    /** The outcome of a brief as quickly as it can be had: no room, and the first conflict found. */
    public Outcome answer(Brief brief) {
        var compiled = BriefCompiler.compile(brief);
        var verdict = verdict(compiled);
        return verdict instanceof Verdict.Optimum optimum
                ? blended(brief, compiled, optimum, Room.UNMEASURED)
                : without(brief, compiled, verdict, ConflictExplainer.FIRST);
    }

    /** The cheapest blend alone; empty when there is none. */
    public Optional<Blend> cheapest(Brief brief) {
        var compiled = BriefCompiler.compile(brief);
        var verdict = verdict(compiled);
        if (verdict instanceof Verdict.Optimum optimum) {
            return Optional.of(BlendReader.blend(brief, compiled, optimum.point()));
        }
        if (verdict instanceof Verdict.Impossible) {
            return Optional.empty();
        }
        throw new ArithmeticException("a least cost could not be proved");
    }

    /** The blend that a point of a brief's model stands for. */
    public static Blend blendAt(Brief brief, CompiledBrief compiled, List<BigFraction> point) {
        return BlendReader.blend(brief, compiled, point);
    }

    /** What can be proved of any model. */
    public Verdict verdict(LinearModel model) {
        return Certifier.certify(model, solver.solve(model, LIMIT), solver.name());
    }

    private Verdict verdict(CompiledBrief compiled) {
        return verdict(compiled.model());
    }

    private Outcome without(Brief brief, CompiledBrief compiled, Verdict verdict, int conflicts) {
        if (verdict instanceof Verdict.Impossible impossible) {
            var conflict = ConflictExplainer.explain(brief, compiled, impossible, conflicts, this::verdict);
            return new Outcome.Conflicted(brief, conflict, impossible);
        }
        return new Outcome.Undecided(
                brief, verdict instanceof Verdict.Unproven unproven ? unproven.reason() : "the cost falls without end");
    }

    private static Outcome blended(Brief brief, CompiledBrief compiled, Verdict.Optimum optimum, Room room) {
        var blend = BlendReader.blend(brief, compiled, optimum.point());
        var broken = new Audit(brief, blend).broken();
        if (!broken.isEmpty()) {
            return new Outcome.Undecided(brief, "measured again, the blend breaks " + String.join(", ", broken));
        }
        var explanation = Explainer.explain(brief, compiled, blend, optimum);
        var nearby = room.points().stream()
                .map(point -> BlendReader.blend(brief, compiled, point))
                .toList();
        return new Outcome.Blended(brief, blend, explanation, room, Alternatives.choose(blend, nearby), optimum);
    }
}
