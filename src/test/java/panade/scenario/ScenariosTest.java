package panade.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.certify.Certifier;
import panade.certify.Verdict.Optimum;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.solver.ortools.OrToolsSolver;

/**
 * Draws answered on the graph of bases against the exact optimum of each, on models of rows up to 10^5 apart in size.
 */
class ScenariosTest {
    private static final OrToolsSolver GLOP = new OrToolsSolver();

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void every_draw_costs_what_the_exact_optimum_costs(@ForAll long seed) {
        var model = model(new Random(seed));
        var scenarios = scenarios(model);
        for (long draw = 0; draw < 25; draw++) {
            var exact = optimum(model.model().withCosts(model.costs(draw)));
            var least = exact.model().costAt(exact.point());
            assertThat(scenarios.leastCost(draw).doubleValue())
                    .isCloseTo(least.doubleValue(), within(1e-9 * Math.abs(least.doubleValue())));
        }
    }

    @Test
    void the_number_of_threads_changes_nothing() {
        var model = model(new Random(5));
        var one = scenarios(model).run(5000, 1);
        var three = scenarios(model).run(5000, 3);
        assertThat(facts(three, model)).isEqualTo(facts(one, model));
    }

    /** The uniform distribution on one price: by hand, cost is linear in it, so all figures have closed forms. */
    @Test
    void with_one_ingredient_the_cost_is_the_price() {
        var columns = List.of(new Column("flour", BigFraction.of(2)));
        var rows = List.of(new Row("batch", Map.of(0, BigFraction.ONE), Sense.EQUAL, BigFraction.ONE));
        var linear = new LinearModel(columns, rows);
        var draws = new PriceDraws(9, List.of(BigFraction.of(1, 10)));
        var model = new ScenarioModel(linear, optimum(linear).basis(), List.of(0), List.of(0), draws);
        var found = scenarios(model).run(200_000, 2);
        assertThat(found.mean().doubleValue()).isCloseTo(2, within(0.002));
        assertThat(found.deviation().doubleValue()).isCloseTo(0.2 / Math.sqrt(3), within(0.001));
        assertThat(found.quantile(BigFraction.of(1, 4)).doubleValue()).isCloseTo(1.9, within(0.002));
        assertThat(found.partOfVariance(0).doubleValue()).isCloseTo(1, within(0.01));
        assertThat(found.used(0)).isEqualTo(200_000);
        assertThat(found.worstRegret(0).signum()).isZero();
    }

    @Test
    void draws_are_even_and_the_same_again() {
        var draws = new PriceDraws(3, Collections.nCopies(7, BigFraction.of(1, 2)));
        var below = new int[7];
        var steps = new int[7];
        var again = new int[7];
        for (long draw = 0; draw < 40_000; draw++) {
            draws.steps(draw, steps);
            for (int price = 0; price < 7; price++) {
                below[price] += steps[price] < -PriceDraws.STEPS / 2 ? 1 : 0;
                assertThat(Math.abs(steps[price])).isLessThan(PriceDraws.STEPS);
            }
        }
        draws.steps(39_999, again);
        assertThat(again).isEqualTo(steps);
        for (int each : below) {
            // a quarter, give or take five standard deviations of 87
            assertThat(each).isBetween(10_000 - 435, 10_000 + 435);
        }
    }

    private static List<Object> facts(Distribution found, ScenarioModel model) {
        var facts = new ArrayList<Object>(List.of(
                found.mean(),
                found.deviation(),
                found.cheapestDraw(),
                found.dearestDraw(),
                found.quantile(BigFraction.of(1, 20)),
                found.standing()));
        for (int column = 0; column < model.model().columns().size(); column++) {
            facts.add(found.used(column));
            facts.add(found.meanShare(column));
            facts.add(found.partOfVariance(column));
        }
        for (int row = 0; row < model.model().rows().size(); row++) {
            facts.add(found.touched(row));
        }
        for (int kept = 0; kept < found.standing().size(); kept++) {
            facts.add(found.meanRegret(kept));
            facts.add(found.worstRegret(kept));
        }
        return facts;
    }

    private static Scenarios scenarios(ScenarioModel model) {
        return new Scenarios(
                model, costs -> optimum(model.model().withCosts(costs)).basis());
    }

    private static Optimum optimum(LinearModel model) {
        var verdict = Certifier.certify(model, GLOP.solve(model, Duration.ofSeconds(10)), "GLOP");
        assertThat(verdict).isInstanceOf(Optimum.class);
        return (Optimum) verdict;
    }

    /** Twelve columns, some alike, and ten rows around a point that meets them all, some of them exactly. */
    private static ScenarioModel model(Random random) {
        int count = 12;
        var point = new int[count];
        int total = 0;
        for (int j = 0; j < count; j++) {
            point[j] = random.nextInt(3) == 0 ? 0 : random.nextInt(20);
            total += point[j];
        }
        point[0] += total == 0 ? 1 : 0;
        total += total == 0 ? 1 : 0;
        var columns = new ArrayList<Column>();
        var all = new TreeMap<Integer, BigFraction>();
        for (int j = 0; j < count; j++) {
            columns.add(new Column("c" + j, BigFraction.of(1 + random.nextInt(40), 4)));
            all.put(j, BigFraction.ONE);
        }
        var rows = new ArrayList<>(List.of(new Row("batch", all, Sense.EQUAL, BigFraction.ONE)));
        for (int i = 0; i < 10; i++) {
            rows.add(row(random, point, total));
        }
        var linear = new LinearModel(columns, rows);
        var numbers = columns.stream().map(columns::indexOf).toList();
        var draws = new PriceDraws(random.nextLong(), Collections.nCopies(count, BigFraction.of(3, 10)));
        return new ScenarioModel(linear, optimum(linear).basis(), numbers, numbers, draws);
    }

    private static Row row(Random random, int[] point, int total) {
        var size = BigFraction.from(1).multiply(BigFraction.of(1, (int) Math.pow(10, random.nextInt(6))));
        var form = new TreeMap<Integer, BigFraction>();
        var activity = BigFraction.ZERO;
        for (int j = 0; j < point.length; j++) {
            var value = BigFraction.of(random.nextInt(10)).multiply(size);
            form.put(j, value);
            activity = activity.add(value.multiply(BigFraction.of(point[j], total)));
        }
        var room = activity.multiply(BigFraction.of(random.nextInt(3), 20));
        return random.nextBoolean()
                ? new Row("most", form, Sense.AT_MOST, activity.add(room))
                : new Row("least", form, Sense.AT_LEAST, activity.subtract(room));
    }
}
