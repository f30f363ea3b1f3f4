package panade.explain.conflict;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import panade.compile.CompiledBrief;
import panade.domain.Brief;
import panade.domain.Rule;
import panade.explain.conflict.Conflict.Member;
import panade.explain.conflict.ConflictFinder.Found;
import panade.explain.conflict.ConflictFinder.Possible;
import panade.explain.conflict.JointMove.Joint;

/** Says which demands cannot hold together, and finds cures; each cure told has been solved with. */
public final class ConflictExplainer {
    /** Asks for the first conflict that is found, whatever its length. */
    public static final int FIRST = 0;

    /** How many conflicts are looked at so that a short one can be shown first. */
    private static final int LOOKED_AT = 6;

    /** How many conflicts that share nothing are counted at most. */
    private static final int MOST_SEPARATE = 9;

    private final Brief brief;
    private final CompiledBrief compiled;
    private final Trials trials;
    private final DemandModels models;
    private final ConflictFinder finder;
    private final List<Set<Demand>> separate = new ArrayList<>();
    private final List<String> open = new ArrayList<>();

    private ConflictExplainer(Brief brief, CompiledBrief compiled, Trials trials) {
        this.brief = brief;
        this.compiled = compiled;
        this.trials = trials;
        this.models = new DemandModels(brief, compiled);
        this.finder = new ConflictFinder(compiled, models, trials);
    }

    /**
     * The conflict of a brief that has no blend.
     *
     * @param most how many irreducible sets to tell at most; {@link #FIRST} for the first one found
     */
    public static Conflict explain(Brief brief, CompiledBrief compiled, int most, Trials trials) {
        return new ConflictExplainer(brief, compiled, trials.under(compiled.cones())).conflict(most);
    }

    private Conflict conflict(int most) {
        var found = finder.all(most == FIRST ? 1 : Math.max(most, LOOKED_AT));
        var shown = found.sets().stream()
                .sorted(Comparator.comparing(Set::size))
                .limit(Math.max(most, 1))
                .toList();
        if (shown.isEmpty()) {
            open.add("which bounds and rules are in conflict");
            return conflict(List.of(), false, true, List.of(), Joint.NONE);
        }
        var first = shown.get(0);
        var members = shown.stream().map(this::members).toList();
        addSeparate(first, members.get(0));
        var cures = new Cures(brief, compiled, models, trials);
        cures.ofMembers(first);
        boolean single = !cures.found().isEmpty();
        cures.ofExclusions();
        open.addAll(cures.open());
        var joint = single || most == FIRST ? Joint.NONE : joint(shown);
        return conflict(members, isComplete(found, shown), isProved(first), cures.found(), joint);
    }

    private Conflict conflict(
            List<List<Member>> members,
            boolean complete,
            boolean proved,
            List<Conflict.Relaxation> cures,
            Joint joint) {
        return new Conflict(
                members, complete, separate.size(), proved, cures, joint.changes(), joint.cost(), List.copyOf(open));
    }

    private static boolean isComplete(Found found, List<Set<Demand>> shown) {
        return found.complete() && shown.size() == found.sets().size();
    }

    private boolean isProved(Set<Demand> first) {
        return first.stream().noneMatch(Demand.OfRule.class::isInstance) || finder.isProved(first);
    }

    /** Conflicts that are left when all members of those before are given up; none where one member frees the rest. */
    private void addSeparate(Set<Demand> first, List<Member> members) {
        separate.add(first);
        if (members.stream().anyMatch(Member::frees)) {
            return;
        }
        var rest = ConflictFinder.without(models.all(), first);
        var next = finder.within(rest);
        while (next.isPresent() && separate.size() < MOST_SEPARATE) {
            separate.add(next.get());
            rest = ConflictFinder.without(rest, next.get());
            next = finder.within(rest);
        }
        if (finder.isOpen()) {
            open.add("whether more conflicts stand beside these");
        }
    }

    private Joint joint(Collection<Set<Demand>> shown) {
        var rules = new LinkedHashSet<Rule>();
        separate.forEach(set -> addRules(set, rules));
        shown.forEach(set -> addRules(set, rules));
        var joint = new JointMove(brief, trials).find(rules);
        if (joint.changes().isEmpty() && trials.isOver()) {
            open.add("whether several numbers moved together would do");
        }
        return joint;
    }

    private static void addRules(Set<Demand> set, Collection<Rule> rules) {
        for (var demand : set) {
            if (demand instanceof Demand.OfRule ofRule) {
                rules.add(ofRule.rule());
            }
        }
    }

    private List<Member> members(Set<Demand> set) {
        return set.stream().map(this::member).toList();
    }

    private Member member(Demand demand) {
        boolean frees = finder.possible(ConflictFinder.without(models.all(), List.of(demand))) == Possible.YES;
        if (demand instanceof Demand.OfRule ofRule) {
            var rule = ofRule.rule();
            return new Member(rule.path(), RuleNames.of(rule), "a rule", rule.origin(), frees);
        }
        var number = new NumberMove(brief, compiled, ((Demand.OfRow) demand).row());
        return new Member(number.path(), number.name(), number.words(), number.origin(), frees);
    }
}
