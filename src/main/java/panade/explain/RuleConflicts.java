package panade.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.CompiledBrief.Limit;
import panade.compile.Extent;
import panade.compile.RuleCompiler;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Rule;
import panade.domain.Side;
import panade.explain.Conflict.Change;
import panade.explain.Conflict.Cure;
import panade.explain.Conflict.Member;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.MixedModel;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * Finds an irreducible set of rules and bounds that cannot hold together, by halving (Junker, "QuickXplain", AAAI
 * 2004), and single changes that make a blend possible.
 */
public final class RuleConflicts {
    /** How far a number of ingredients is raised in search of one that is enough. */
    private static final int MORE = 4;

    private final Brief brief;
    private final CompiledBrief compiled;
    private final Choosing choosing;

    private RuleConflicts(Brief brief, Choosing choosing) {
        this.brief = brief;
        this.compiled = BriefCompiler.compile(brief);
        this.choosing = choosing;
    }

    /** A rule, or one side of a bound. */
    private sealed interface Demand {
        record OfRule(Rule rule) implements Demand {}

        record OfRow(int row, Bound bound, Side side) implements Demand {}
    }

    /** The conflict of a brief that would have a blend were it not for its rules. */
    public static Conflict explain(Brief brief, Choosing choosing) {
        var finder = new RuleConflicts(brief, choosing);
        var members = finder.irreducible(List.of(), List.of(), finder.demands());
        return new Conflict(
                List.of(members.stream().map(finder::member).toList()), false, finder.cures(members), List.of(), null);
    }

    private List<Demand> demands() {
        var demands = new ArrayList<Demand>();
        for (int row = 0; row < compiled.rows().size(); row++) {
            if (compiled.rows().get(row) instanceof Limit.OfBound limit) {
                demands.add(new Demand.OfRow(row, limit.bound(), limit.side()));
            }
        }
        brief.practice().rules().forEach(rule -> demands.add(new Demand.OfRule(rule)));
        return demands;
    }

    /**
     * The members among some demands, given others that are held anyway.
     *
     * @param fresh what was added to those last; while there is none, they are known to hold
     */
    private List<Demand> irreducible(List<Demand> held, List<Demand> fresh, List<Demand> some) {
        if (!fresh.isEmpty() && !choosing.isPossible(only(held))) {
            return List.of();
        }
        if (some.size() == 1) {
            return some;
        }
        var left = some.subList(0, some.size() / 2);
        var right = some.subList(some.size() / 2, some.size());
        var inRight = irreducible(joined(held, left), left, right);
        var inLeft = irreducible(joined(held, inRight), inRight, left);
        return joined(inLeft, inRight);
    }

    private static List<Demand> joined(List<Demand> a, List<Demand> b) {
        return Stream.concat(a.stream(), b.stream()).toList();
    }

    /** The brief with those demands alone. */
    private Brief only(List<Demand> held) {
        var rules = brief.practice().rules().stream()
                .filter(rule -> held.contains(new Demand.OfRule(rule)))
                .toList();
        var bounds = brief.bounds().stream().map(bound -> keeping(bound, held)).toList();
        return brief.bounding(bounds).ruling(rules);
    }

    private static Bound keeping(Bound bound, List<Demand> held) {
        boolean least = isHeld(bound, Side.MIN, held);
        boolean most = isHeld(bound, Side.MAX, held);
        return bound.withLimits(least ? bound.min() : null, most ? bound.max() : null);
    }

    private static boolean isHeld(Bound bound, Side side, List<Demand> held) {
        return held.stream()
                .anyMatch(demand -> demand instanceof Demand.OfRow row
                        && row.bound().equals(bound)
                        && (row.side() == side || row.side() == Side.FIXED));
    }

    private Member member(Demand demand) {
        if (demand instanceof Demand.OfRule ofRule) {
            var rule = ofRule.rule();
            return new Member(rule.path(), RuleNames.of(rule), "a rule", rule.origin());
        }
        var row = (Demand.OfRow) demand;
        var move = new NumberMove(brief, compiled, row.row());
        var side = row.side() == Side.MAX ? "at most " : row.side() == Side.MIN ? "at least " : "exactly ";
        return new Member(
                move.path(),
                move.name(),
                side + move.number().text(),
                row.bound().origin());
    }

    private List<Cure> cures(List<Demand> members) {
        return members.stream()
                .map(member -> member instanceof Demand.OfRule ofRule
                        ? easing(ofRule.rule())
                        : moving(((Demand.OfRow) member).row()))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(
                        Cure::costPerKg,
                        Comparator.nullsLast((a, b) -> a.subtract(b).signum())))
                .toList();
    }

    /** A larger number where the rule counts and one is enough; else the brief without the rule. */
    private Optional<Cure> easing(Rule rule) {
        return raising(rule).or(() -> dropping(rule));
    }

    private Optional<Cure> raising(Rule rule) {
        int most = most(rule);
        for (int number = most + 1; most > 0 && number <= most + MORE; number++) {
            var cost = choosing.cheapestFound(with(rule, raised(rule, number)));
            if (cost.isPresent()) {
                var change = new Change.Moves(BigFraction.of(most), BigFraction.of(number), Unit.NUMBER);
                return Optional.of(new Cure(rule.path(), RuleNames.of(rule), change, cost.get()));
            }
        }
        return Optional.empty();
    }

    private static int most(Rule rule) {
        if (rule instanceof Rule.MostNames names) {
            return names.max();
        }
        return rule instanceof Rule.Choose choose && choose.max() != null ? choose.max() : 0;
    }

    private static Rule raised(Rule rule, int most) {
        return rule instanceof Rule.Choose choose
                ? new Rule.Choose(choose.options(), choose.min(), most, choose.path(), choose.origin())
                : new Rule.MostNames(most, rule.path(), rule.origin());
    }

    private Brief with(Rule old, Rule fresh) {
        return brief.ruling(brief.practice().rules().stream()
                .map(rule -> rule.equals(old) ? fresh : rule)
                .toList());
    }

    private Optional<Cure> dropping(Rule rule) {
        var rest = brief.practice().rules().stream()
                .filter(other -> !other.equals(rule))
                .toList();
        return choosing.cheapestFound(brief.ruling(rest))
                .map(cost -> new Cure(rule.path(), RuleNames.of(rule), new Change.Drops(), cost));
    }

    /** The least move of a bound's number, over all choices that the rules leave. */
    private Optional<Cure> moving(int row) {
        var move = new NumberMove(brief, compiled, row);
        return choosing.point(giving(row))
                .flatMap(point ->
                        move.neededAt(point.subList(0, compiled.columns().size())))
                .flatMap(number ->
                        choosing.cheapestFound(move.changed(brief, number)).map(cost -> cure(move, number, cost)));
    }

    private static Cure cure(NumberMove move, Quantity to, BigFraction cost) {
        var from = move.number();
        return new Cure(move.path(), move.name(), new Change.Moves(from.number(), to.number(), from.unit()), cost);
    }

    /** The model with rules in which a row may give way, at a cost that is all there is. */
    private MixedModel giving(int row) {
        var choice = RuleCompiler.compile(brief, compiled, Extent.ANY).model();
        var columns = new ArrayList<Column>();
        choice.relaxed().columns().forEach(column -> columns.add(new Column(column.name(), BigFraction.ZERO)));
        var rows = new ArrayList<>(choice.relaxed().rows());
        var stiff = rows.get(row);
        var coefficients = new HashMap<>(stiff.coefficients());
        boolean most = stiff.sense() == LinearModel.Sense.AT_MOST;
        coefficients.put(columns.size(), most ? BigFraction.ONE.negate() : BigFraction.ONE);
        columns.add(new Column("gives", BigFraction.ONE));
        rows.set(row, new LinearModel.Row(stiff.name(), coefficients, stiff.sense(), stiff.right()));
        return new MixedModel(new LinearModel(columns, rows), choice.whole());
    }
}
