package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Member;
import panade.explain.conflict.Conflict.Relaxation;
import panade.plan.Engines;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.solver.ortools.OrToolsSolver;
import panade.testing.Planners;

/** Briefs squeezed until most have no blend: what is said of them is tried out on the briefs themselves. */
class ConflictsTest {
    private static final Planner ONE = Planners.LINEAR;
    private static final Planner SEVERAL = new Planner(Engines.linear(new OrToolsSolver()), Planner.USUAL_SLACK, 5);

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void a_conflict_is_impossible_and_none_of_its_proper_subsets_is(@ForAll("problems") RawProblem problem) {
        var squeezed = squeezed(Answer.blended(problem, new OrToolsSolver()).brief());
        var outcome = SEVERAL.plan(squeezed);
        Statistics.label("outcome").collect(outcome.getClass().getSimpleName());
        if (outcome instanceof Conflicted conflicted) {
            conflicted.conflict().sets().forEach(set -> assertIrreducible(squeezed, set));
            assertThat(new HashSet<>(conflicted.conflict().sets()))
                    .hasSameSizeAs(conflicted.conflict().sets());
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void every_cure_makes_a_blend_possible_at_the_cost_told(@ForAll("problems") RawProblem problem) {
        var squeezed = squeezed(Answer.blended(problem, new OrToolsSolver()).brief());
        var outcome = ONE.plan(squeezed);
        if (outcome instanceof Conflicted conflicted) {
            conflicted.conflict().cures().forEach(cure -> assertCures(squeezed, cure));
            Statistics.label("cures")
                    .collect(Math.min(3, conflicted.conflict().cures().size()));
        }
    }

    private static void assertIrreducible(Brief brief, List<Member> set) {
        var paths = new HashSet<>(set.stream().map(Member::path).toList());
        assertThat(ONE.plan(only(brief, paths))).isInstanceOf(Conflicted.class);
        for (var path : paths) {
            var rest = new HashSet<>(paths);
            rest.remove(path);
            assertThat(ONE.plan(only(brief, rest))).as("without %s", path).isInstanceOf(Blended.class);
        }
    }

    private static void assertCures(Brief brief, Relaxation cure) {
        if (cure.change() instanceof Change.Moves moves) {
            var cured = ONE.plan(moved(brief, cure.path(), moves));
            assertThat(cured).isInstanceOf(Blended.class);
            assertThat(((Blended) cured).blend().costPerKg()).isEqualTo(cure.costPerKg());
        }
    }

    /** Every third limit is tightened by half, so that many kitchens fall into conflict. */
    private static Brief squeezed(Brief brief) {
        var changed = brief;
        for (int i = 0; i < brief.bounds().size(); i += 3) {
            var bound = brief.bounds().get(i);
            var min = times(bound.min(), BigFraction.of(3, 2));
            var max = bound.min() == null ? times(bound.max(), BigFraction.of(1, 2)) : null;
            changed = changed.replacing(bound, bound.withLimits(min, max));
        }
        return changed;
    }

    private static Brief only(Brief brief, Set<String> paths) {
        var changed = brief;
        for (var bound : brief.bounds()) {
            boolean whole = paths.contains(bound.path());
            var min = whole || paths.contains(bound.path() + "/min") ? bound.min() : null;
            var max = whole || paths.contains(bound.path() + "/max") ? bound.max() : null;
            changed = changed.replacing(bound, bound.withLimits(min, max));
        }
        for (var offer : brief.offers()) {
            if (!paths.contains(offer.origin().pointer() + "/available")) {
                changed = changed.replacing(offer, offer.withAvailable(null));
            }
        }
        return changed;
    }

    private static Brief moved(Brief brief, String path, Change.Moves moves) {
        var to = Quantity.of(moves.to(), moves.unit(), "moved");
        var touched = new ArrayList<String>();
        var changed = brief;
        for (var bound : brief.bounds()) {
            boolean whole = path.equals(bound.path());
            boolean min = whole || path.equals(bound.path() + "/min");
            boolean max = whole || path.equals(bound.path() + "/max");
            if (min || max) {
                touched.add(path);
                changed = changed.replacing(bound, bound.withLimits(min ? to : bound.min(), max ? to : bound.max()));
            }
        }
        for (var offer : brief.offers()) {
            if (path.equals(offer.origin().pointer() + "/available")) {
                touched.add(path);
                changed = changed.replacing(offer, offer.withAvailable(to));
            }
        }
        assertThat(touched).hasSize(1);
        return changed;
    }

    private static @Nullable Quantity times(@Nullable Quantity limit, BigFraction factor) {
        return limit == null
                ? null
                : new Quantity(limit.base().multiply(factor), limit.unit(), limit.text() + " squeezed");
    }
}
