package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.audit.Audit;
import panade.domain.Blend;
import panade.domain.Rule;
import panade.domain.Use;
import panade.domain.origin.Origin;
import panade.nudge.FewChanges;
import panade.nudge.FewChanges.Best;
import panade.nudge.MovePath;
import panade.nudge.Start;
import panade.quantity.Quantity;
import panade.testing.Planners;

/**
 * Changes of a formula against another solver's linear programs, built from the raw numbers: the path place by place,
 * and the best blends with few changes against every set of ingredients that could be changed.
 */
class NudgeTest {
    private static final double CLOSE = 1e-6;

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Provide
    Arbitrary<RawProblem> small() {
        return RandomKitchen.problems().filter(problem -> problem.ingredients().size() <= 6);
    }

    @Provide
    Arbitrary<RawProblem> tiny() {
        return RandomKitchen.problems().filter(problem -> problem.ingredients().size() <= 5);
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void the_path_is_the_least_cost_at_every_place(@ForAll("problems") RawProblem problem, @ForAll long seed) {
        var made = made(problem, new Random(seed));
        var start = start(problem, made);
        var path = MovePath.of(Planners.LINEAR, start).orElseThrow();
        var points = path.points();
        assertThat(path.straight()).isTrue();
        var first = points.get(0);
        var last = points.get(points.size() - 1);
        assertThat(first.moved().doubleValue())
                .isCloseTo(ReferenceModel.leastMoved(problem, made).orElseThrow(), within(CLOSE));
        assertThat(first.moved().signum() == 0)
                .as("the path begins at the formula where that keeps every bound")
                .isEqualTo(isMet(problem, made));
        assertThat(last.costPerKg().doubleValue()).isCloseTo(ReferenceModel.leastCost(problem), within(CLOSE));
        for (var point : points) {
            assertPlace(problem, made, point.moved(), point.costPerKg());
            assertThat(moved(problem, made, point.blend())).isEqualTo(point.moved());
            assertThat(new Audit(start.brief(), point.blend()).faults()).isEmpty();
        }
        assertBetween(problem, made, points);
        Statistics.label("points").collect(Math.min(6, points.size()));
        Statistics.label("formula keeps its bounds").collect(first.moved().signum() == 0);
    }

    private static void assertPlace(RawProblem problem, List<BigFraction> made, BigFraction at, BigFraction cost) {
        // a hair of room, since the least that must move is not met to the last bit
        assertThat(ReferenceModel.leastCostMoving(problem, made, at.doubleValue() + 1e-9)
                        .orElseThrow())
                .isCloseTo(cost.doubleValue(), within(2e-5 * Math.max(1, cost.doubleValue())));
    }

    /** Straight and ever less steep. */
    private static void assertBetween(RawProblem problem, List<BigFraction> made, List<MovePath.Point> points) {
        var before = BigFraction.of(-1_000_000_000);
        for (int i = 0; i + 1 < points.size(); i++) {
            var a = points.get(i);
            var b = points.get(i + 1);
            var run = b.moved().subtract(a.moved());
            var slope = b.costPerKg().subtract(a.costPerKg()).divide(run);
            assertThat(slope.signum()).isNegative();
            assertThat(slope.compareTo(before)).isPositive();
            before = slope;
            assertPlace(
                    problem, made, a.moved().add(run.divide(3)), a.costPerKg().add(slope.multiply(run.divide(3))));
        }
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void few_changes_are_the_best_of_all_sets_of_changes(@ForAll("small") RawProblem problem, @ForAll long seed) {
        var made = made(problem, new Random(seed));
        var start = start(problem, made);
        var least = Planners.LINEAR.cheapest(start.brief()).orElseThrow().costPerKg();
        var planner = seed % 3 == 0 ? Planners.FULL : Planners.LINEAR;
        for (var few : new FewChanges(planner, start).upTo(4, least)) {
            var all = leastOfAll(problem, made, few.changes());
            var best = few.best().found();
            assertThat(best.isPresent())
                    .as("%s changes, enumerated %s", few.changes(), all)
                    .isEqualTo(all.isPresent());
            best.ifPresent(found -> assertBest(problem, made, start, few.changes(), found, all.orElseThrow()));
            Statistics.label("possible with " + few.changes()).collect(all.isPresent());
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void rules_are_kept_on_the_path_and_with_few_changes(@ForAll("tiny") RawProblem problem, @ForAll long seed) {
        var random = new Random(seed);
        var made = made(problem, random);
        int percent = 1 + random.nextInt(8);
        int names = 2 + random.nextInt(3);
        var start = ruled(start(problem, made), percent, names);
        var path = MovePath.of(Planners.FULL, start);
        var all = leastUsing(
                problem, made, 1, percent, names, problem.ingredients().size());
        assertThat(path.found().isPresent()).isEqualTo(all.isPresent());
        Statistics.label("possible under rules").collect(all.isPresent());
        if (all.isEmpty()) {
            return;
        }
        var points = path.orElseThrow().points();
        for (var point : points) {
            double at = point.moved().doubleValue();
            assertThat(leastUsing(problem, made, at + 1e-9, percent, names, 9).orElseThrow())
                    .isCloseTo(point.costPerKg().doubleValue(), within(2e-5 * Math.max(1, all.getAsDouble())));
            assertThat(new Audit(start.brief(), point.blend()).faults()).isEmpty();
        }
        var first = points.get(0).moved().doubleValue();
        if (first > 1e-4) {
            assertThat(leastUsing(problem, made, first - 1e-5, percent, names, 9))
                    .isEmpty();
        }
        var last = points.get(points.size() - 1).costPerKg();
        assertThat(last.doubleValue()).isCloseTo(all.getAsDouble(), within(2e-5 * Math.max(1, all.getAsDouble())));
        for (var few : new FewChanges(Planners.FULL, start).upTo(3, last)) {
            var least = leastUsing(problem, made, 1, percent, names, few.changes());
            assertThat(few.best().found().isPresent()).isEqualTo(least.isPresent());
            few.best()
                    .found()
                    .ifPresent(best -> assertBest(problem, made, start, few.changes(), best, least.orElseThrow()));
        }
    }

    private static Start ruled(Start start, int percent, int names) {
        var nowhere = new Origin("drawn", 1, 1, "");
        var floor = Quantity.parse(percent + " %").orElseThrow();
        return new Start(
                start.brief()
                        .withRules(List.of(
                                new Rule.WhenUsed(start.brief().candidates(), floor, "/rules/0", nowhere),
                                new Rule.MostNames(names, "/maxIngredients", nowhere))),
                start.shares());
    }

    private static OptionalDouble leastUsing(
            RawProblem problem, List<BigFraction> made, double most, int percent, int names, int changes) {
        var ids = problem.ingredients().stream().map(RawIngredient::id).toList();
        var costs = new ArrayList<Double>();
        for (int used = 1; used < 1 << ids.size(); used++) {
            for (int changed = 0; changed < 1 << ids.size(); changed++) {
                if (Integer.bitCount(used) <= names && Integer.bitCount(changed) == Math.min(changes, ids.size())) {
                    ReferenceModel.leastCostUsing(
                                    problem, made, most, chosen(ids, used), percent / 100.0, chosen(ids, changed))
                            .ifPresent(costs::add);
                }
            }
        }
        return costs.stream().mapToDouble(cost -> cost).min();
    }

    private static void assertBest(
            RawProblem problem, List<BigFraction> made, Start start, int changes, Best best, double all) {
        assertThat(best.proved()).isTrue();
        assertThat(best.leastPerKg().doubleValue()).isCloseTo(all, within(2e-5 * Math.max(1, all)));
        assertThat(best.costPerKg().subtract(best.leastPerKg()).signum()).isNotNegative();
        assertThat(best.weighed() || best.costPerKg().equals(best.leastPerKg())).isTrue();
        var changed = new TreeSet<String>();
        var changesOfLines = changes(problem, made, best.blend());
        for (int i = 0; i < made.size(); i++) {
            if (changesOfLines.get(i).signum() != 0) {
                changed.add(problem.uses().get(i).ingredient());
            }
            if (best.weighed()) {
                var grams = changesOfLines
                        .get(i)
                        .multiply(Exact.of(problem.batch()))
                        .multiply(1000);
                assertThat(grams.getDenominator().abs().bitLength()).isEqualTo(1);
            }
        }
        assertThat(best.changed()).isEqualTo(changed).hasSizeLessThanOrEqualTo(changes);
        assertThat(new Audit(start.brief(), best.blend()).faults()).isEmpty();
        Statistics.label("in whole grams").collect(best.weighed());
    }

    private static OptionalDouble leastOfAll(RawProblem problem, List<BigFraction> made, int most) {
        var ids = problem.ingredients().stream().map(RawIngredient::id).toList();
        var costs = new ArrayList<Double>();
        for (int mask = 0; mask < 1 << ids.size(); mask++) {
            if (Integer.bitCount(mask) == Math.min(most, ids.size())) {
                ReferenceModel.leastCostChanging(problem, made, chosen(ids, mask))
                        .ifPresent(costs::add);
            }
        }
        return costs.stream().mapToDouble(cost -> cost).min();
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

    private static boolean isMet(RawProblem problem, List<BigFraction> made) {
        return ReferenceModel.leastMoved(problem, made).orElseThrow() < 1e-9;
    }

    /** Half the time the blend that meets every bound, half the time that with some of it shifted about. */
    private static List<BigFraction> made(RawProblem problem, Random random) {
        var made = new ArrayList<>(problem.hidden());
        int shifts = random.nextBoolean() ? 0 : 1 + random.nextInt(3);
        for (int i = 0; i < shifts; i++) {
            int from = random.nextInt(made.size());
            int to = random.nextInt(made.size());
            var part = made.get(from).multiply(BigFraction.of(1 + random.nextInt(4), 4));
            made.set(from, made.get(from).subtract(part));
            made.set(to, made.get(to).add(part));
        }
        return made;
    }

    private static Start start(RawProblem problem, List<BigFraction> made) {
        var shares = new LinkedHashMap<Use, BigFraction>();
        for (int i = 0; i < made.size(); i++) {
            if (made.get(i).signum() > 0) {
                var use = problem.uses().get(i);
                shares.put(new Use(use.ingredient(), use.stage()), made.get(i));
            }
        }
        return new Start(Answer.brief(problem), shares);
    }

    private static BigFraction moved(RawProblem problem, List<BigFraction> made, Blend blend) {
        return changes(problem, made, blend).stream()
                .map(BigFraction::abs)
                .reduce(BigFraction.ZERO, BigFraction::add)
                .divide(2);
    }

    private static List<BigFraction> changes(RawProblem problem, List<BigFraction> made, Blend blend) {
        var changes = new ArrayList<BigFraction>();
        for (int i = 0; i < made.size(); i++) {
            var use = problem.uses().get(i);
            var now = made.get(i).negate();
            for (var line : blend.lines()) {
                boolean same = line.use().ingredient().equals(use.ingredient())
                        && line.use().stage().equals(use.stage());
                now = same ? now.add(line.share()) : now;
            }
            changes.add(now);
        }
        return changes;
    }
}
