package panade.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.testing.RepeatableSeeds;

/** Designs by exchange against other programs' and against every choice there is. */
class ExchangeTest {
    private static final Criterion.MeanVariance OVER_SIMPLEX =
            new Criterion.MeanVariance(Moments.overSimplex(3, InformationTest.QUADRATIC_OF_3));

    /** The best of a hundred starts by optFederov of AlgDesign (R package) on the {3,4} grid, which repeats nothing. */
    @Test
    void designs_from_a_grid_are_as_good_as_those_of_another_program() {
        var published = Map.of(
                6, 0.041666667, 7, 0.039088057, 8, 0.037432452, 9, 0.036403171, 10, 0.035359564, 12, 0.034214993);
        var exchange = new Exchange(rows(Points.grid(3, 4)), List.of(), new Criterion.Determinant(), false);
        published.forEach((trials, determinant) -> {
            var told = exchange.information(exchange.best(trials, 20, 1).orElseThrow());
            assertThat(InformationTest.perTrial(told.orElseThrow(), trials, 6)).isCloseTo(determinant, within(5e-10));
        });
    }

    /** The same program's ten trials for the least mean variance over the {3,20} grid. */
    @Test
    void predictions_over_a_fine_grid_are_as_good_as_those_of_another_program() {
        var grid = rows(Points.grid(3, 20));
        var exchange = new Exchange(grid, List.of(), new Criterion.MeanVariance(Moments.over(grid)), false);
        var told = exchange.information(exchange.best(10, 3, 1).orElseThrow()).orElseThrow();
        var mean = told.meanVariance(Moments.over(grid)).multiply(10);
        assertThat(mean.doubleValue()).isLessThan(3.5679886 + 5e-8);
        assertThat(InformationTest.perTrial(told, 10, 6)).isCloseTo(0.036972394, within(5e-10));
    }

    /** By hand: the six of the lattice and one of them again, whose variance is one. */
    @Test
    void a_repeat_may_tell_more_than_anything_new() {
        var exchange = exchange(Points.grid(3, 4), new Criterion.Determinant());
        var told = exchange.information(exchange.best(7, 10, 1).orElseThrow());
        assertThat(told.orElseThrow().determinant()).isEqualTo(BigFraction.of(2, 4096));
    }

    /** Seven trials of ten mixtures: all 11,440 choices. */
    @Test
    void no_choice_at_all_is_better() {
        for (var criterion : List.of(new Criterion.Determinant(), OVER_SIMPLEX)) {
            var exchange = exchange(Points.grid(3, 3), criterion);
            var best = exchange.best(7, 10, 1).orElseThrow();
            assertThat(merit(exchange, criterion, best)).isEqualTo(mostOfAll(exchange, criterion, 10, 7));
        }
    }

    /** Two more trials where the corners were tried already, and something was believed. */
    @Test
    void trials_that_stand_are_built_upon() {
        var made = new ArrayList<Run>();
        List.of("1 0 0", "0 1 0", "0 0 1")
                .forEach(corner -> made.add(Run.at(InformationTest.QUADRATIC_OF_3, Points.point(corner))));
        for (int term = 3; term < 6; term++) {
            made.add(Run.belief(6, term, BigFraction.of(1, 100 * term)));
        }
        for (var criterion : List.of(new Criterion.Determinant(), OVER_SIMPLEX)) {
            var exchange = new Exchange(rows(Points.grid(3, 4)), made, criterion, true);
            var best = exchange.best(2, 10, 1).orElseThrow();
            assertThat(merit(exchange, criterion, best)).isEqualTo(mostOfAll(exchange, criterion, 15, 2));
        }
    }

    private static BigFraction merit(Exchange exchange, Criterion criterion, List<Integer> places) {
        return criterion.merit(exchange.information(places).orElseThrow());
    }

    private static BigFraction mostOfAll(Exchange exchange, Criterion criterion, int candidates, int trials) {
        var merits = new ArrayList<BigFraction>();
        forEachChoice(
                List.of(),
                candidates,
                trials,
                places -> exchange.information(places).ifPresent(told -> merits.add(criterion.merit(told))));
        return merits.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    private static void forEachChoice(List<Integer> begun, int candidates, int trials, Consumer<List<Integer>> action) {
        if (begun.size() == trials) {
            action.accept(begun);
            return;
        }
        for (int next = begun.isEmpty() ? 0 : begun.get(begun.size() - 1); next < candidates; next++) {
            var more = new ArrayList<>(begun);
            more.add(next);
            forEachChoice(more, candidates, trials, action);
        }
    }

    /** What an exchange is worth is what working the new design out comes to. */
    @Test
    void merits_of_exchanges_order_them_as_the_designs_themselves() {
        var random = new Random(RepeatableSeeds.seed("merits_of_exchanges"));
        var points = Points.grid(3, 4);
        var made = List.of(new Run(Points.point("0.1 0.2 0.3 0.4 0.5 0.6"), BigFraction.of(3, 7)));
        for (var criterion : List.of(new Criterion.Determinant(), OVER_SIMPLEX)) {
            var exchange = new Exchange(rows(points), made, criterion, true);
            for (int round = 0; round < 5; round++) {
                var places = random.ints(9, 0, points.size()).boxed().toList();
                exchange.information(places).ifPresent(before -> check(exchange, criterion, places, made));
            }
        }
    }

    private static void check(Exchange exchange, Criterion criterion, List<Integer> places, List<Run> made) {
        var candidates = rows(Points.grid(3, 4)).stream().map(Run::usual).toList();
        var all = new ArrayList<>(candidates);
        all.addAll(made);
        var scales = Information.Scales.of(all);
        var before = exchange.information(places).orElseThrow();
        var merits = SwapMerits.of(before, candidates.stream().map(scales::row).toList(), scales, criterion);
        var scale = BigFraction.ZERO;
        for (int in = 0; in < candidates.size(); in++) {
            var swapped = new ArrayList<>(places);
            swapped.set(4, in);
            var after = exchange.information(swapped);
            if (after.isPresent() && in != places.get(4)) {
                var gain = criterion.merit(after.get()).subtract(criterion.merit(before));
                var merit = merits.of(places.get(4), in);
                assertThat(merit.signum()).isEqualTo(gain.signum());
                if (gain.signum() != 0) {
                    scale = scale.signum() == 0 ? merit.divide(gain) : scale;
                    assertThat(merit.divide(gain)).isEqualTo(scale);
                }
            }
        }
    }

    @Test
    void too_few_trials_for_the_model_are_told() {
        var exchange = exchange(Points.grid(3, 4), new Criterion.Determinant());
        assertThat(exchange.best(5, 3, 1)).isEmpty();
        assertThat(exchange.best(6, 3, 1)).isPresent();
        var each = rows(Points.grid(3, 2));
        var once = new Exchange(each, List.of(), new Criterion.Determinant(), false);
        assertThat(once.best(7, 3, 1)).isEmpty();
        assertThat(once.best(6, 3, 1)).contains(List.of(0, 1, 2, 3, 4, 5));
    }

    @Test
    void a_seed_gives_the_same_design_again() {
        var exchange = exchange(Points.grid(3, 4), new Criterion.Determinant());
        assertThat(exchange.best(8, 2, 7)).isEqualTo(exchange.best(8, 2, 7));
        var designs = IntStream.range(0, 10)
                .mapToObj(seed -> exchange.best(8, 1, seed).orElseThrow())
                .distinct();
        assertThat(designs.count()).isGreaterThan(1);
    }

    private static Exchange exchange(List<List<BigFraction>> points, Criterion criterion) {
        return new Exchange(rows(points), List.of(), criterion, true);
    }

    private static List<List<BigFraction>> rows(List<List<BigFraction>> points) {
        return points.stream()
                .map(point -> Run.at(InformationTest.QUADRATIC_OF_3, point).row())
                .toList();
    }
}
