package panade.explain.conflict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.Limit;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.conflict.NumberMove.Written;
import panade.explain.conflict.Trials.Search;
import panade.explain.conflict.Trials.Trial;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/**
 * Finds what must give for the least cost to come down to a ceiling: the ceiling is one more row, and bounds are moved
 * until all rows and rules hold together. Every move told has been solved with as it is written.
 */
public final class CostCeiling {
    /** Pairs are looked for among this many bounds, those that get furthest alone. */
    private static final int PAIRED = 8;

    private final Brief brief;
    private final CompiledBrief plain;
    private final BigFraction level;
    private final Blend best;
    private final Trials trials;
    private final List<Holder> holders = new ArrayList<>();
    private final List<String> open = new ArrayList<>();

    /**
     * The ceiling on a brief whose least cost lies above it.
     *
     * @param brief as asked, with its rules
     * @param best its cheapest blend
     * @param perKg the ceiling, in the basis of the brief
     */
    public CostCeiling(Brief brief, Blend best, BigFraction perKg, Trials trials) {
        this.trials = trials;
        this.brief = brief;
        this.best = best;
        this.level = perKg;
        this.plain = BriefCompiler.compile(brief);
        findHolders();
    }

    /** What could not be decided in time. */
    public List<String> open() {
        return List.copyOf(open);
    }

    /** A brief's model with the ceiling as one more row that always holds. */
    private CompiledBrief capped(Brief some) {
        boolean cooked = some.practice().perCooked();
        var compiled = BriefCompiler.compile(some, cooked ? level : BigFraction.ZERO);
        var ceiling =
                new Row("cost ceiling", compiled.model().costs(), Sense.AT_MOST, cooked ? BigFraction.ZERO : level);
        var limits = new ArrayList<>(compiled.rows());
        limits.add(new Limit.OfBatch());
        return compiled.withRows(compiled.model().with(ceiling).rows(), limits);
    }

    /**
     * A number that holds the cost up.
     *
     * @param without the least cost without it
     */
    private record Holder(NumberMove number, BigFraction without) {}

    private void findHolders() {
        for (int row = 0; row < plain.rows().size(); row++) {
            if (plain.rows().get(row) instanceof Limit.OfBatch) {
                continue;
            }
            var number = new NumberMove(brief, plain, row);
            if (number.isWritten() && (hasRules() || binds(number))) {
                tryWithout(number);
            }
        }
    }

    private boolean hasRules() {
        return !brief.practice().rules().isEmpty();
    }

    /** By convexity no other row can do anything alone; with rules any may, under another choice. */
    private boolean binds(NumberMove number) {
        return number.row().activity(plain.pointOf(best)).equals(number.row().right());
    }

    private void tryWithout(NumberMove number) {
        var trial = trials.solve(number.dropped(brief));
        if (!(trial instanceof Trial.Works works) || !(works.least() || reaches(works.costPerKg()))) {
            open.add("how much \"" + number.name() + "\" alone could bring");
        } else if (works.costPerKg().compareTo(best.costPerKg()) < 0) {
            holders.add(new Holder(number, works.costPerKg()));
        }
    }

    private boolean reaches(BigFraction costPerKg) {
        return costPerKg.compareTo(level) <= 0;
    }

    /** Each bound that holds the cost up, moved alone. */
    public List<Move> moves() {
        return holders.stream().map(this::move).flatMap(Optional::stream).toList();
    }

    private Optional<Move> move(Holder holder) {
        if (!reaches(holder.without())) {
            return Optional.of(move(holder.number(), null, holder.without()));
        }
        var move = least(brief, holder.number())
                .flatMap(to -> solved(to.in(brief)).map(cost -> move(holder.number(), to, cost)));
        if (move.isEmpty()) {
            open.add("which number of \"" + holder.number().name() + "\" is enough alone");
        }
        return move;
    }

    /** The least that a number must move in a brief for the cost to come down to the ceiling. */
    private Optional<Written> least(Brief some, NumberMove number) {
        var capped = capped(some);
        return number.in(some, capped).flatMap(same -> {
            var models = new DemandModels(some, capped);
            var found = LeastMove.find(same, models.without(same.index()), trials);
            return Optional.ofNullable(found.level()).flatMap(same::written).filter(Written::isMoved);
        });
    }

    /** The least cost of a brief, if it is proved to be within the ceiling. */
    private Optional<BigFraction> solved(Brief changed) {
        return trials.solve(changed) instanceof Trial.Works works && reaches(works.costPerKg())
                ? Optional.of(works.costPerKg())
                : Optional.empty();
    }

    /** The two bounds whose joint move, each counted as a part of its own number, is least; empty when no two do. */
    public List<Move> cheapestPair() {
        var furthest = holders.stream()
                .sorted(Comparator.comparing(Holder::without))
                .limit(PAIRED)
                .toList();
        Optional<Pair> least = Optional.empty();
        for (int i = 0; i < furthest.size(); i++) {
            for (int k = i + 1; k < furthest.size(); k++) {
                least = smaller(
                        least, pair(furthest.get(i).number(), furthest.get(k).number()));
            }
        }
        return least.map(Pair::moves).orElse(List.of());
    }

    /** Two numbers moved, and the least cost then. */
    private record Pair(Written one, Written other, BigFraction costPerKg) {
        BigFraction parts() {
            return one.part().add(other.part());
        }

        List<Move> moves() {
            return List.of(move(one.number(), one, costPerKg), move(other.number(), other, costPerKg));
        }
    }

    private static Optional<Pair> smaller(Optional<Pair> a, Optional<Pair> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.isEmpty() ? b : a;
        }
        return b.get().parts().compareTo(a.get().parts()) < 0 ? b : a;
    }

    /** Two numbers that both have to move; where one is enough at less, there is no pair. */
    private Optional<Pair> pair(NumberMove a, NumberMove b) {
        if (trials.isOver() || solved(b.dropped(a.dropped(brief))).isEmpty()) {
            return Optional.empty();
        }
        return givingLeast(a, b).filter(this::isNotEnough).flatMap(one -> {
            var changed = one.in(brief);
            return least(changed, b)
                    .filter(this::isNotEnough)
                    .flatMap(other -> solved(other.in(changed)).map(cost -> new Pair(one, other, cost)));
        });
    }

    private boolean isNotEnough(Written alone) {
        return alone.isMoved() && solved(alone.in(brief)).isEmpty();
    }

    /** The first number's move where both together give way least. */
    private Optional<Written> givingLeast(NumberMove a, NumberMove b) {
        var weights = Map.of(a.index(), weight(a), b.index(), weight(b));
        var answer = trials.least(new DemandModels(brief, capped(brief)).elastic(weights));
        return answer instanceof Search.Found found ? a.levelAt(found.point()).flatMap(a::written) : Optional.empty();
    }

    private static BigFraction weight(NumberMove number) {
        var size = number.level().abs();
        return size.signum() == 0 ? BigFraction.of(1000) : size.reciprocal();
    }

    private static Move move(NumberMove number, @Nullable Written to, BigFraction cost) {
        var from = to == null ? number.number() : to.from();
        return new Move(
                number.bound(),
                to == null ? number.side() : to.side(),
                to == null ? number.path() : to.path(),
                number.origin(),
                number.name(),
                from.unit(),
                from.number(),
                to == null ? null : to.to().number(),
                to == null ? null : to.kept(),
                cost);
    }
}
