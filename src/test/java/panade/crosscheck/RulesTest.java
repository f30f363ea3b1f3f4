package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Measure;
import panade.domain.Rule;
import panade.domain.origin.Origin;
import panade.explain.conflict.Conflict.Change;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.solver.ortools.OrToolsSolver;
import panade.testing.Planners;

/** Rules against every choice of ingredients there is, each solved on its own. */
class RulesTest {
    private static final Origin NOWHERE = new Origin("drawn", 1, 1, "");
    private static final Planner PLANNER = Planners.FULL;
    private static final Planner WITHOUT_SEARCH = Planners.LINEAR;

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems().filter(problem -> problem.ingredients().size() <= 5);
    }

    @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
    void the_best_choice_is_the_best_of_all_choices(@ForAll("problems") RawProblem problem, @ForAll long seed) {
        var plain = Answer.blended(problem, new OrToolsSolver()).brief();
        var brief = plain.withRules(rules(plain, new Random(seed)));
        var least = leastOfAll(brief);
        var outcome = PLANNER.answer(brief);
        Statistics.label("possible").collect(least.isPresent());
        if (least.isEmpty()) {
            assertThat(outcome).isInstanceOf(Conflicted.class);
            assertCures(brief, (Conflicted) outcome);
            return;
        }
        var blended = (Blended) outcome;
        assertThat(blended.blend().costPerKg()).isEqualTo(least.get());
        assertThat(Objects.requireNonNull(blended.choice()).closed()).isTrue();
        assertThat(WITHOUT_SEARCH.cheapest(brief).orElseThrow().costPerKg()).isEqualTo(least.get());
    }

    /** Each cure makes a blend possible, and each rule in a conflict is needed for it. */
    private static void assertCures(Brief brief, Conflicted conflicted) {
        for (var cure : conflicted.conflict().cures()) {
            if (cure.change() instanceof Change.Drops) {
                var rest = brief.practice().rules().stream()
                        .filter(rule -> !rule.path().equals(cure.path()))
                        .toList();
                var least = leastOfAll(brief.withRules(rest));
                assertThat(least).contains(Objects.requireNonNull(cure.costPerKg()));
            }
        }
    }

    private static List<Rule> rules(Brief brief, Random random) {
        var ids = brief.candidates().stream().sorted().toList();
        var rules = new ArrayList<Rule>();
        for (int i = 0; i < 4; i++) {
            var path = "/rules/" + i;
            var one = options(ids, random);
            rules.add(
                    switch (random.nextInt(5)) {
                        case 0 -> new Rule.WhenUsed(one.get(0), percent(1 + random.nextInt(40)), path, NOWHERE);
                        case 1 -> new Rule.Choose(one, random.nextInt(3), null, path, NOWHERE);
                        case 2 -> new Rule.Choose(one, null, random.nextInt(3), path, NOWHERE);
                        case 3 -> new Rule.IfThen(one, options(ids, random), path, NOWHERE);
                        default -> new Rule.NeverTogether(one, path, NOWHERE);
                    });
        }
        if (random.nextBoolean()) {
            rules.add(new Rule.MostNames(1 + random.nextInt(ids.size()), "/maxIngredients", NOWHERE));
        }
        return rules;
    }

    private static List<Set<String>> options(List<String> ids, Random random) {
        var options =
                ids.stream().filter(id -> random.nextBoolean()).map(Set::of).toList();
        return options.isEmpty() ? List.of(Set.of(ids.get(random.nextInt(ids.size())))) : options;
    }

    private static Quantity percent(int number) {
        return Quantity.parse(number + " %").orElseThrow();
    }

    /** The least cost over every set that may be used and every set within it that is used enough to count. */
    private static Optional<BigFraction> leastOfAll(Brief brief) {
        var ids = brief.candidates().stream().sorted().toList();
        var costs = new ArrayList<BigFraction>();
        for (int used = 1; used < 1 << ids.size(); used++) {
            for (int ample = used; ; ample = (ample - 1) & used) {
                cost(brief, chosen(ids, used), chosen(ids, ample)).ifPresent(costs::add);
                if (ample == 0) {
                    break;
                }
            }
        }
        return costs.stream()
                .min(Comparator.comparing(cost -> cost, (a, b) -> a.subtract(b).signum()));
    }

    private static Set<String> chosen(List<String> ids, int mask) {
        var chosen = new TreeSet<String>();
        for (int i = 0; i < ids.size(); i++) {
            if ((mask >> i & 1) == 1) {
                chosen.add(ids.get(i));
            }
        }
        return chosen;
    }

    private static Optional<BigFraction> cost(Brief brief, Set<String> used, Set<String> ample) {
        if (!brief.practice().rules().stream().allMatch(rule -> allows(brief, rule, used, ample))) {
            return Optional.empty();
        }
        var out = new TreeSet<>(brief.candidates());
        out.removeAll(used);
        var bounds = new ArrayList<>(brief.bounds());
        for (var id : used) {
            var least = leastUse(brief, id);
            if (least.isPresent() || ample.contains(id)) {
                bounds.add(floor(id, least.orElse(Quantity.parse("0.01 %").orElseThrow())));
            }
        }
        return WITHOUT_SEARCH
                .cheapest(brief.without(out).withBounds(bounds).withRules(List.of()))
                .orUndecided()
                .map(blend -> blend.costPerKg());
    }

    private static Optional<Quantity> leastUse(Brief brief, String id) {
        return brief.practice().rules().stream()
                .filter(rule -> rule instanceof Rule.WhenUsed whenUsed
                        && whenUsed.ingredients().contains(id))
                .map(rule -> ((Rule.WhenUsed) rule).min())
                .max(Comparator.comparing(Quantity::base));
    }

    private static Bound floor(String id, Quantity least) {
        var of = new Measure(id, Unit.PERCENT, List.of(new Measure.Part(Map.of(), Map.of(id, BigFraction.ONE), null)));
        return new Bound(LimitKind.RULE, id, "/floor", of, null, least, null, "raw", NOWHERE);
    }

    private static boolean allows(Brief brief, Rule rule, Set<String> used, Set<String> ample) {
        if (rule instanceof Rule.Choose choose) {
            return (choose.max() == null || count(choose.options(), used) <= choose.max())
                    && (choose.min() == null || count(choose.options(), ample) >= choose.min());
        }
        if (rule instanceof Rule.IfThen ifThen) {
            return count(ifThen.when(), used) == 0 || count(ifThen.then(), ample) > 0;
        }
        if (rule instanceof Rule.NeverTogether never) {
            return count(never.options(), used) <= 1;
        }
        return !(rule instanceof Rule.MostNames names) || labels(brief, used) <= names.max();
    }

    private static long count(List<Set<String>> options, Set<String> ids) {
        return options.stream()
                .distinct()
                .filter(option -> option.stream().anyMatch(ids::contains))
                .count();
    }

    private static long labels(Brief brief, Set<String> ids) {
        return ids.stream()
                .map(id -> brief.set().ingredient(id).label())
                .collect(Collectors.toSet())
                .size();
    }
}
