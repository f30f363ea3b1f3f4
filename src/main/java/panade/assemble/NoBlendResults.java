package panade.assemble;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import panade.explain.conflict.Conflict;
import panade.explain.conflict.Conflict.Change;
import panade.plan.Contradiction;
import panade.plan.Outcome.Conflicted;
import panade.result.BlendResult.Check;
import panade.result.BriefResult.Status;
import panade.result.NoBlendResult;
import panade.result.NoBlendResult.CombinedRelaxation;
import panade.result.NoBlendResult.Member;
import panade.result.NoBlendResult.Move;
import panade.result.NoBlendResult.ProvedBy;
import panade.result.NoBlendResult.Relaxation;
import panade.result.NoBlendResult.Switch;
import panade.result.RemarkLine;

/** Makes the result of a brief that no blend meets. */
public final class NoBlendResults {
    private NoBlendResults() {}

    /** The result, with the remarks on the documents. */
    public static NoBlendResult of(Conflicted outcome) {
        return result(outcome, RemarkLines.of(outcome.brief().remarks()));
    }

    /** The same as a part of a larger result. */
    static NoBlendResult partOf(Conflicted outcome) {
        return result(outcome, null);
    }

    private static NoBlendResult result(Conflicted outcome, @Nullable List<RemarkLine> remarks) {
        var conflict = outcome.conflict();
        var members = conflict.sets().stream()
                .map(set -> set.stream().map(NoBlendResults::member).toList())
                .toList();
        return new NoBlendResult(
                Status.INFEASIBLE,
                paths(members, member -> true),
                members,
                conflict.complete(),
                conflict.separate(),
                conflict.proved(),
                paths(members, Member::frees),
                relaxations(conflict.cures()),
                combined(conflict),
                conflict.open(),
                contradiction(outcome.proof()),
                remarks,
                BriefResults.facts(outcome.brief()));
    }

    private static Member member(Conflict.Member member) {
        return new Member(member.path(), member.origin().file(), member.name(), member.words(), member.frees());
    }

    private static List<List<String>> paths(List<List<Member>> sets, Predicate<Member> which) {
        return sets.stream()
                .map(set -> set.stream().filter(which).map(Member::path).toList())
                .toList();
    }

    private static List<Relaxation> relaxations(List<Conflict.Relaxation> relaxations) {
        return relaxations.stream().map(NoBlendResults::relaxation).toList();
    }

    private static Relaxation relaxation(Conflict.Relaxation relaxation) {
        var origin = relaxation.origin();
        var cost = relaxation.cost();
        return new Relaxation(
                relaxation.path(),
                origin == null ? null : origin.file(),
                relaxation.name(),
                change(relaxation.change()),
                cost == null ? null : cost.perKg(),
                cost == null ? null : cost.least());
    }

    private static NoBlendResult.Change change(Change change) {
        if (change instanceof Change.Moves moves) {
            var kept = moves.kept();
            return new Move(
                    moves.from(),
                    moves.to(),
                    moves.unit().symbol(),
                    kept == null ? null : kept.number(),
                    kept == null ? null : kept.unit().symbol());
        }
        return change instanceof Change.Drops ? Switch.DROPPED : Switch.ALLOWED;
    }

    private static @Nullable CombinedRelaxation combined(Conflict conflict) {
        var cost = conflict.combinedCost();
        return conflict.combined().isEmpty()
                ? null
                : new CombinedRelaxation(
                        relaxations(conflict.combined()),
                        cost == null ? null : cost.perKg(),
                        cost == null ? null : cost.least());
    }

    private static NoBlendResult.Contradiction contradiction(Contradiction proof) {
        return proof instanceof Contradiction.RuledOut ruledOut
                ? new NoBlendResult.Contradiction(
                        Check.EXACT,
                        proof.engine(),
                        ProvedBy.BRANCHING,
                        ruledOut.proof().looked())
                : new NoBlendResult.Contradiction(Check.EXACT, proof.engine(), ProvedBy.MULTIPLIERS, null);
    }
}
