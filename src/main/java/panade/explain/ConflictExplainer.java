package panade.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Prover;
import panade.certify.Verdict.Impossible;
import panade.certify.Verdict.Optimum;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.CompiledBrief.Limit;
import panade.domain.Brief;
import panade.domain.Exclusion;
import panade.domain.Origin;
import panade.domain.Side;
import panade.explain.Conflict.Change;
import panade.explain.Conflict.Cure;
import panade.explain.Conflict.Member;
import panade.quantity.Quantity;

/** Says which bounds cannot hold together, and finds cures; each cure told has been solved with. */
public final class ConflictExplainer {
    /** Asks for the first conflict that is found, whatever its length. */
    public static final int FIRST = 0;

    /** How many conflicts are looked at so that a short one can be shown first. */
    private static final int LOOKED_AT = 6;

    private static final BigFraction SMALLEST_NUMBER = BigFraction.of(1, 1000);

    private final Brief brief;
    private final CompiledBrief compiled;
    private final Prover prover;

    private ConflictExplainer(Brief brief, CompiledBrief compiled, Prover prover) {
        this.prover = prover;
        this.brief = brief;
        this.compiled = compiled;
    }

    /**
     * The conflict of a brief that has no blend.
     *
     * @param most how many irreducible sets to tell at most; {@link #FIRST} for the first one found
     * @param prover proves the models that cures lead to
     */
    public static Conflict explain(Brief brief, CompiledBrief compiled, Impossible proof, int most, Prover prover) {
        return new ConflictExplainer(brief, compiled, prover).conflict(proof, most);
    }

    private Conflict conflict(Impossible proof, int most) {
        var found = new ConflictFinder(compiled).all(proof, most == FIRST ? 1 : Math.max(most, LOOKED_AT));
        var shown = found.sets().stream()
                .sorted(Comparator.comparing(Set::size))
                .limit(Math.max(most, 1))
                .toList();
        var cures = cures(shown.get(0));
        var combined = most == FIRST ? new Combined(List.of(), null) : combined();
        boolean needed = combined.moves().size() > 1;
        return new Conflict(
                shown.stream().map(this::members).toList(),
                found.complete() && shown.size() == found.sets().size(),
                cures,
                needed ? combined.moves() : List.of(),
                needed ? combined.costPerKg() : null);
    }

    private List<Member> members(Set<Integer> rows) {
        return rows.stream().map(this::member).toList();
    }

    private Member member(int row) {
        var move = new NumberMove(brief, compiled, row);
        var limit = compiled.rows().get(row);
        var side = limit instanceof Limit.OfBound bound && bound.side() != Side.MAX
                ? bound.side() == Side.MIN ? "at least " : "exactly "
                : "at most ";
        return new Member(move.path(), move.name(), side + move.number().text(), origin(limit));
    }

    private static Origin origin(Limit limit) {
        return limit instanceof Limit.OfBound bound
                ? bound.bound().origin()
                : ((Limit.OfOffer) limit).offer().origin();
    }

    /** A change outside a conflict leaves that conflict as it is, so only its members can cure alone. */
    private List<Cure> cures(Set<Integer> conflict) {
        var cures = new ArrayList<Cure>();
        conflict.stream().map(this::moving).flatMap(Optional::stream).forEach(cures::add);
        brief.exclusions().stream()
                .map(this::allowing)
                .flatMap(Optional::stream)
                .forEach(cures::add);
        cures.sort(Comparator.comparing(Cure::costPerKg, Comparator.nullsLast(Comparator.<BigFraction>naturalOrder())));
        return List.copyOf(cures);
    }

    private Optional<Cure> moving(int row) {
        var move = new NumberMove(brief, compiled, row);
        var point = new Elastic(compiled.model(), prover).leastGiving(Map.of(row, BigFraction.ONE));
        return point.map(start -> move.improved(start, prover))
                .flatMap(move::neededAt)
                .flatMap(number -> cost(move.changed(brief, number)).map(cost -> cure(move, number, cost)));
    }

    private static Cure cure(NumberMove move, Quantity to, @Nullable BigFraction cost) {
        var from = move.number();
        return new Cure(move.path(), move.name(), new Change.Moves(from.number(), to.number(), from.unit()), cost);
    }

    private Optional<Cure> allowing(Exclusion exclusion) {
        var allowed = brief.allowing(exclusion);
        return allowed.isKnown()
                ? cost(allowed)
                        .map(cost -> new Cure(
                                exclusion.path(),
                                exclusion.name(),
                                new Change.Allows(),
                                exclusion.priced() ? cost : null))
                : Optional.empty();
    }

    private Optional<BigFraction> cost(Brief changed) {
        var model = BriefCompiler.compile(changed).model();
        var verdict = prover.prove(model);
        return verdict instanceof Optimum optimum ? Optional.of(model.costAt(optimum.point())) : Optional.empty();
    }

    /** Several numbers moved together. */
    private record Combined(List<Cure> moves, @Nullable BigFraction costPerKg) {}

    /** The joint move that is least when each number's move counts as a part of that number. */
    private Combined combined() {
        var weights = new HashMap<Integer, BigFraction>();
        for (int row = 0; row < compiled.rows().size(); row++) {
            if (!(compiled.rows().get(row) instanceof Limit.OfBatch)) {
                weights.put(row, weight(row));
            }
        }
        return new Elastic(compiled.model(), prover)
                .leastGiving(weights)
                .map(this::combined)
                .orElse(new Combined(List.of(), null));
    }

    private BigFraction weight(int row) {
        var size = new NumberMove(brief, compiled, row).number().base().abs();
        return (size.compareTo(SMALLEST_NUMBER) > 0 ? size : SMALLEST_NUMBER).reciprocal();
    }

    private Combined combined(List<BigFraction> point) {
        var changed = brief;
        var moves = new ArrayList<Cure>();
        for (int row = 0; row < compiled.rows().size(); row++) {
            var move = new NumberMove(brief, compiled, row);
            var needed = holds(row, point) ? Optional.<Quantity>empty() : move.neededAt(point);
            if (needed.isPresent()) {
                changed = move.changed(changed, needed.get());
                moves.add(cure(move, needed.get(), null));
            }
        }
        var cost = cost(changed);
        return cost.isPresent() ? new Combined(List.copyOf(moves), cost.get()) : new Combined(List.of(), null);
    }

    private boolean holds(int row, List<BigFraction> point) {
        var modelRow = compiled.model().rows().get(row);
        int order = modelRow.activity(point).subtract(modelRow.right()).signum();
        return switch (modelRow.sense()) {
            case AT_LEAST -> order >= 0;
            case AT_MOST -> order <= 0;
            case EQUAL -> order == 0;
        };
    }
}
