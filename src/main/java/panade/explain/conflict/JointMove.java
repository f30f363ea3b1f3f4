package panade.explain.conflict;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.Limit;
import panade.domain.Brief;
import panade.domain.Rule;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Cost;
import panade.explain.conflict.Conflict.Relaxation;
import panade.explain.conflict.NumberMove.Written;
import panade.explain.conflict.Trials.Search;
import panade.explain.conflict.Trials.Trial;
import panade.model.LinearModel.Row;
import panade.quantity.Fractions;

/**
 * Finds changes that make a blend possible together. It begins where the numbers' moves, each counted as a part of its
 * number, are least in sum as far as a linear model can say, and then takes back whatever can be taken back: no change
 * told can be left out, and no number could move less, while the others stay as they are told.
 */
final class JointMove {
    private static final BigFraction SMALLEST_NUMBER = BigFraction.of(1, 1000);

    private final Brief brief;
    private final Trials trials;

    JointMove(Brief brief, Trials trials) {
        this.brief = brief;
        this.trials = trials;
    }

    /** Some changes, and the least cost with all of them. */
    record Joint(List<Relaxation> changes, @Nullable Cost cost) {
        static final Joint NONE = new Joint(List.of(), null);
    }

    /**
     * The joint move; rules are given up only where numbers alone do not do.
     *
     * @param rules those of the conflicts found
     */
    Joint find(Collection<Rule> rules) {
        for (var dropped : dropped(List.copyOf(rules))) {
            var joint = without(dropped);
            if (joint.isPresent() || trials.isOver()) {
                return joint.orElse(Joint.NONE);
            }
        }
        return Joint.NONE;
    }

    /** No rule, then each, then each two. */
    private static List<List<Rule>> dropped(List<Rule> rules) {
        var sets = new ArrayList<List<Rule>>();
        sets.add(List.of());
        rules.forEach(rule -> sets.add(List.of(rule)));
        for (int i = 0; i < rules.size(); i++) {
            for (int k = i + 1; k < rules.size(); k++) {
                sets.add(List.of(rules.get(i), rules.get(k)));
            }
        }
        return sets;
    }

    private Optional<Joint> without(List<Rule> dropped) {
        var rest = brief.withRules(brief.practice().rules().stream()
                .filter(rule -> !dropped.contains(rule))
                .toList());
        return moves(rest).map(moves -> spared(rest, moves)).flatMap(moves -> joint(rest, moves, dropped));
    }

    private Optional<Joint> joint(Brief rest, List<Written> moves, List<Rule> dropped) {
        var changes = new ArrayList<Relaxation>();
        moves.forEach(move -> changes.add(new Relaxation(
                move.path(), move.number().origin(), move.number().name(), move.change(), null)));
        dropped.forEach(rule ->
                changes.add(new Relaxation(rule.path(), rule.origin(), RuleNames.of(rule), new Change.Drops(), null)));
        return Cures.cost(trials.solve(all(rest, moves))).map(cost -> new Joint(List.copyOf(changes), cost));
    }

    private static Brief all(Brief rest, Collection<Written> moves) {
        var changed = rest;
        for (var move : moves) {
            changed = move.in(changed);
        }
        return changed;
    }

    /** Where all give way least; empty where no numbers do. */
    private Optional<List<Written>> moves(Brief rest) {
        var compiled = BriefCompiler.compile(rest);
        var weights = new HashMap<Integer, BigFraction>();
        for (int row = 0; row < compiled.rows().size(); row++) {
            if (isWritten(rest, compiled, row)) {
                weights.put(row, weight(new NumberMove(rest, compiled, row)));
            }
        }
        var answer = trials.least(new DemandModels(rest, compiled).elastic(weights));
        return answer instanceof Search.Found found
                ? Optional.of(moves(rest, compiled, found.point(), weights))
                : Optional.empty();
    }

    private static boolean isWritten(Brief rest, CompiledBrief compiled, int row) {
        return compiled.rows().get(row) instanceof Limit.OfNumber && new NumberMove(rest, compiled, row).isWritten();
    }

    private static BigFraction weight(NumberMove number) {
        var size = number.level().abs();
        return Fractions.max(size, SMALLEST_NUMBER).reciprocal();
    }

    private static List<Written> moves(
            Brief rest, CompiledBrief compiled, List<BigFraction> point, Map<Integer, BigFraction> weights) {
        var moves = new ArrayList<Written>();
        weights.keySet().stream().sorted().forEach(row -> {
            var number = new NumberMove(rest, compiled, row);
            if (!holds(number.row(), point)) {
                number.levelAt(point).flatMap(number::written).ifPresent(moves::add);
            }
        });
        return List.copyOf(moves);
    }

    private static boolean holds(Row row, List<BigFraction> point) {
        int order = row.activity(point).compareTo(row.right());
        return switch (row.sense()) {
            case AT_LEAST -> order >= 0;
            case AT_MOST -> order <= 0;
            case EQUAL -> order == 0;
        };
    }

    /** Each number as little moved as the others allow, and not at all where they do without it. */
    private List<Written> spared(Brief rest, List<Written> moves) {
        var spared = new ArrayList<>(moves);
        for (var move : moves) {
            var others = new ArrayList<>(spared);
            others.remove(move);
            var changed = all(rest, others);
            if (trials.solve(changed) instanceof Trial.Works) {
                spared.remove(move);
            } else {
                least(changed, move).ifPresent(less -> spared.set(spared.indexOf(move), less));
            }
        }
        return spared;
    }

    private Optional<Written> least(Brief changed, Written move) {
        var compiled = BriefCompiler.compile(changed);
        return move.number().in(changed, compiled).flatMap(number -> {
            var models = new DemandModels(changed, compiled);
            var level = LeastMove.find(number, models.without(number.index()), trials);
            return Optional.ofNullable(level.level())
                    .flatMap(number::written)
                    .filter(to -> trials.solve(to.in(changed)) instanceof Trial.Works);
        });
    }
}
