package panade.explain.conflict;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.compile.CompiledBrief;
import panade.domain.Brief;
import panade.domain.Exclusion;
import panade.domain.LabelOrder;
import panade.domain.Rule;
import panade.domain.Side;
import panade.domain.origin.Origin;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Cost;
import panade.explain.conflict.Conflict.Relaxation;
import panade.explain.conflict.Trials.Trial;
import panade.quantity.Unit;

/** Finds single changes that make a blend possible. Each is solved with as it is told: rounded, and the whole brief. */
final class Cures {
    /** How far a number of ingredients is raised in search of one that is enough. */
    private static final int MORE = 4;

    private final Brief brief;
    private final CompiledBrief compiled;
    private final DemandModels models;
    private final Trials trials;
    private final List<Relaxation> found = new ArrayList<>();
    private final List<String> open = new ArrayList<>();

    Cures(Brief brief, CompiledBrief compiled, DemandModels models, Trials trials) {
        this.brief = brief;
        this.compiled = compiled;
        this.models = models;
        this.trials = trials;
    }

    /** The cures found, cheapest first. */
    List<Relaxation> found() {
        return found.stream()
                .sorted(Comparator.comparing(Relaxation::costPerKg, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
    }

    /** What was not decided in time. */
    List<String> open() {
        return List.copyOf(open);
    }

    /** Looks at the members of a conflict: a change elsewhere leaves it as it is, so only they can cure alone. */
    void ofMembers(Collection<Demand> conflict) {
        boolean ofLabel = false;
        for (var demand : conflict) {
            if (demand instanceof Demand.OfRule ofRule) {
                ease(ofRule.rule());
                continue;
            }
            var number = new NumberMove(brief, compiled, ((Demand.OfRow) demand).row());
            if (number.isWritten()) {
                move(number);
            }
            ofLabel |= number.isOfLabel();
        }
        if (ofLabel) {
            solved(
                    LabelOrder.free(brief),
                    new Place("/sameLabel", labelOrigin()),
                    "the label to keep",
                    new Change.Drops(),
                    true);
        }
    }

    /** Looks at what is left out. */
    void ofExclusions() {
        for (var exclusion : brief.exclusions()) {
            allow(exclusion);
        }
    }

    private void allow(Exclusion exclusion) {
        var allowed = brief.allowing(exclusion);
        if (allowed.isKnown()) {
            solved(
                    allowed,
                    new Place(exclusion.path(), null),
                    exclusion.name(),
                    new Change.Allows(),
                    exclusion.priced());
        }
    }

    private void move(NumberMove number) {
        var level = LeastMove.find(number, models.without(number.index()), trials);
        if (level.level() == null) {
            if (level.open()) {
                open.add("whether any number of \"" + number.name() + "\" would do alone");
            }
            return;
        }
        number.written(level.level())
                .filter(NumberMove.Written::isMoved)
                .ifPresent(to ->
                        solved(to.in(brief), new Place(to.path(), number.origin()), number.name(), to.change(), true));
    }

    /** A larger number where the rule counts and one is enough; else the brief without the rule. */
    private void ease(Rule rule) {
        if (!raise(rule)) {
            solved(brief.withRules(without(rule)), place(rule), RuleNames.of(rule), new Change.Drops(), true);
        }
    }

    private boolean raise(Rule rule) {
        int most = most(rule);
        for (int number = most + 1; most > 0 && number <= most + MORE; number++) {
            var change =
                    new Change.Moves(null, Side.MAX, BigFraction.of(most), BigFraction.of(number), Unit.NUMBER, null);
            if (solved(raised(rule, number), place(rule), RuleNames.of(rule), change, true)) {
                return true;
            }
        }
        return false;
    }

    private static int most(Rule rule) {
        if (rule instanceof Rule.MostNames names) {
            return names.max();
        }
        return rule instanceof Rule.Choose choose && choose.max() != null ? choose.max() : 0;
    }

    private Brief raised(Rule rule, int most) {
        var fresh = rule instanceof Rule.Choose choose
                ? new Rule.Choose(choose.options(), choose.min(), most, choose.path(), choose.origin())
                : new Rule.MostNames(most, rule.path(), rule.origin());
        return brief.withRules(brief.practice().rules().stream()
                .map(each -> each.equals(rule) ? fresh : each)
                .toList());
    }

    private List<Rule> without(Rule rule) {
        return brief.practice().rules().stream()
                .filter(each -> !each.equals(rule))
                .toList();
    }

    private static Place place(Rule rule) {
        return new Place(rule.path(), rule.origin());
    }

    private @Nullable Origin labelOrigin() {
        var label = brief.practice().sameLabel();
        return label == null ? null : label.origin();
    }

    /** Where a change is written. */
    private record Place(String path, @Nullable Origin origin) {}

    /** Notes a change if the brief with it has a blend. */
    private boolean solved(Brief changed, Place place, String name, Change change, boolean priced) {
        var trial = trials.solve(changed);
        if (trial instanceof Trial.Open undecided) {
            open.add("whether \"" + name + "\" alone would do: " + undecided.reason());
        }
        var cost = cost(trial);
        cost.ifPresent(
                known -> found.add(new Relaxation(place.path(), place.origin(), name, change, priced ? known : null)));
        return cost.isPresent();
    }

    static Optional<Cost> cost(Trial trial) {
        return trial instanceof Trial.Works works
                ? Optional.of(new Cost(works.costPerKg(), works.least()))
                : Optional.empty();
    }
}
