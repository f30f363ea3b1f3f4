package panade.cone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.junit.jupiter.api.Test;
import panade.audit.Audit;
import panade.domain.Brief;
import panade.explain.conflict.Conflict;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.testing.Planners;
import panade.testing.RepeatableSeeds;
import panade.testing.SmallKitchen;

/** Small kitchens, invented, whose sure blends are worked out by hand, or searched for by force. */
@AddLifecycleHook(RepeatableSeeds.class)
class SureBoundsTest {
    private static final String PEA =
            "{\"id\": \"pea\", \"values\": {\"PROCNT\": 20}, \"others\": 0, \"spread\": {\"PROCNT\": 3}}, ";
    private static final String WATER = "{\"id\": \"water\", \"values\": {\"WATER\": 100}, \"others\": 0}";
    private static final String PRICES = "pea,a,4,kg,\nwater,tap,0,kg,\n";

    /** A share x of pea holds 20 x with a spread of 3 x, so that x = 10 / (20 - 3 z); NIST's table has z = 1.645. */
    @Test
    void a_share_of_one_that_varies_follows_from_one_division() {
        var blended = kitchen("{\"property\": \"PROCNT\", \"min\": \"10 %\", \"sure\": \"95 %\"}")
                .blended();
        assertThat(blended.blend().shareOf("pea").doubleValue())
                .isCloseTo(10 / (20 - 3 * 1.6448536269515), within(1e-7));
        var limit = blended.explanation().limits().get(0);
        assertThat(Objects.requireNonNull(limit.sure()).variance().doubleValue())
                .isCloseTo(Math.pow(3 * 0.66369, 2), within(1e-3));
        // d cost / d number = price * x / number
        assertThat(Objects.requireNonNull(Objects.requireNonNull(limit.price()).whenRaised())
                        .doubleValue())
                .isCloseTo(4 / (20 - 3 * 1.6448536269515), within(1e-7));
    }

    /** At most 10 %: x = 10 / (20 + 3 z), where pea is paid for. */
    @Test
    void a_ceiling_keeps_below_by_as_much() {
        var paid = kitchen("{\"property\": \"PROCNT\", \"max\": \"10 %\", \"sure\": \"99 %\"}")
                .withPrices("pea,a,1,kg,\nwater,tap,3,kg,\n")
                .blended();
        assertThat(paid.blend().shareOf("pea").doubleValue()).isCloseTo(10 / (20 + 3 * 2.3263478740408), within(1e-7));
    }

    /** Half of the 5 % may be missed on either side: 1.96 standard deviations each, not 1.645. */
    @Test
    void a_floor_with_a_ceiling_is_missed_on_both_sides_together_as_seldom() {
        var blended = kitchen("{\"property\": \"PROCNT\", \"min\": \"5 %\", \"max\": \"15 %\", \"sure\": \"95 %\"}")
                .blended();
        assertThat(blended.blend().shareOf("pea").doubleValue())
                .isCloseTo(5 / (20 - 3 * 1.9599639845401), within(1e-7));
    }

    /** Spreads of 3 and 4 in one lot are on their own: a 3-4-5 triangle. */
    @Test
    void two_contents_of_one_lot_vary_each_on_its_own() {
        var both = "{\"id\": \"pea\", \"values\": {\"PROCNT\": 20, \"FAT\": 10}, \"others\": 0,"
                + " \"spread\": {\"PROCNT\": 3, \"FAT\": 4}}, " + WATER;
        var sum =
                "{\"sum\": [{\"property\": \"PROCNT\"}, {\"property\": \"FAT\"}], \"min\": \"10 %\", \"sure\": \"95 %\"}";
        var blended = new SmallKitchen(both, PRICES, sum, "").blended();
        assertThat(blended.blend().shareOf("pea").doubleValue())
                .isCloseTo(10 / (30 - 5 * 1.6448536269515), within(1e-7));
    }

    /** In a stage of water and pea alone its own share counts: 10 % of the stage, whatever the batch is. */
    @Test
    void in_a_stage_the_stage_alone_is_measured() {
        var stage = "\"stages\": [{\"id\": \"soak\", \"ingredients\": [\"pea\", \"water\"], \"share\":"
                + " {\"min\": \"50 %\", \"max\": \"50 %\"}, \"bounds\": [{\"property\": \"PROCNT\", \"min\": \"10 %\","
                + " \"sure\": \"95 %\"}]}, {\"id\": \"mix\", \"ingredients\": [\"water\"]}], ";
        var blended = new SmallKitchen(PEA + WATER, PRICES, "", stage).blended();
        assertThat(blended.blend().shareOf("pea").doubleValue())
                .isCloseTo(0.5 * 10 / (20 - 3 * 1.6448536269515), within(1e-7));
    }

    /** With pea alone no more than 20 - 3 z can be sure; what is printed as the cure is that, rounded down. */
    @Test
    void what_cannot_be_sure_is_proved_and_cured_by_its_number() {
        var brief = kitchen("{\"property\": \"PROCNT\", \"min\": \"16 %\", \"sure\": \"95 %\"}")
                .brief();
        var outcome = (Outcome.Conflicted) Planners.LINEAR.plan(brief);
        var cure = outcome.conflict().cures().get(0);
        assertThat(((Conflict.Change.Moves) cure.change()).to().doubleValue())
                .isLessThanOrEqualTo(20 - 3 * 1.6448536269515)
                .isCloseTo(20 - 3 * 1.6448536269515, within(1e-4));
    }

    /** Four that vary, two bounds; every mixture in steps of a fortieth is tried against the formula itself. */
    @Property(tries = 25)
    void no_mixture_that_is_sure_costs_less_than_the_proved_bound(@ForAll long seed) {
        var draw = Draw.of(new Random(seed));
        var outcome = Planners.LINEAR.answer(draw.brief());
        double least = draw.cheapestOfMany();
        if (!(outcome instanceof Blended blended)) {
            assertThat(outcome).isInstanceOf(Outcome.Conflicted.class);
            assertThat(least).isInfinite();
            return;
        }
        var cost = blended.blend().costPerKg();
        var bound = Objects.requireNonNullElse(blended.least(), cost);
        assertThat(cost.subtract(bound).compareTo(CuttingPlanes.MOST_GAP.multiply(bound)))
                .isNotPositive();
        assertThat(bound.doubleValue()).isLessThanOrEqualTo(least + 1e-9);
        var shares = IntStream.range(0, Draw.SIZE)
                .mapToDouble(i -> blended.blend().shareOf("i" + i).doubleValue())
                .toArray();
        assertThat(draw.misses(shares)).isLessThan(1e-9);
        assertThat(new Audit(blended.brief(), blended.blend()).faults()).isEmpty();
    }

    /** Costs, means and spreads of protein and fat; at least so much protein, at most so much fat, 95 % sure each. */
    private record Draw(
            List<Integer> cost,
            List<Integer> protein,
            List<Integer> fat,
            List<Integer> spread,
            int floor,
            int ceiling) {
        static final int SIZE = 4;
        private static final int STEPS = 40;
        private static final double QUANTILE = 1.6448536269514722;

        static Draw of(Random random) {
            return new Draw(
                    numbers(random, 1, 20),
                    numbers(random, 5, 40),
                    numbers(random, 1, 30),
                    numbers(random, 0, 4),
                    8 + random.nextInt(20),
                    6 + random.nextInt(20));
        }

        private static List<Integer> numbers(Random random, int least, int most) {
            return random.ints(SIZE, least, most + 1).boxed().toList();
        }

        Brief brief() {
            var ingredients = IntStream.range(0, SIZE)
                    .mapToObj(i -> String.format(
                            Locale.ROOT,
                            "{\"id\": \"i%d\", \"values\": {\"PROCNT\": %d, \"FAT\": %d}, \"others\": 0,"
                                    + " \"spread\": {\"PROCNT\": %d, \"FAT\": %d}}",
                            i,
                            protein.get(i),
                            fat.get(i),
                            spread.get(i) + (i == 0 ? 1 : 0),
                            spread.get(SIZE - 1 - i) + (i == 0 ? 1 : 0)))
                    .collect(Collectors.joining(", "));
            var prices = IntStream.range(0, SIZE)
                    .mapToObj(i -> "i" + i + ",a," + cost.get(i) + ",kg,\n")
                    .collect(Collectors.joining());
            var bounds = "{\"property\": \"PROCNT\", \"min\": \"" + floor + " %\", \"sure\": \"95 %\"},"
                    + "{\"property\": \"FAT\", \"max\": \"" + ceiling + " %\", \"sure\": \"95 %\"}";
            return new SmallKitchen(ingredients, prices, bounds, "").brief();
        }

        double misses(double[] share) {
            double mean = 0;
            double variance = 0;
            double fats = 0;
            double fatVariance = 0;
            for (int i = 0; i < SIZE; i++) {
                int first = i == 0 ? 1 : 0;
                mean += share[i] * protein.get(i);
                variance += Math.pow(share[i] * (spread.get(i) + first), 2);
                fats += share[i] * fat.get(i);
                fatVariance += Math.pow(share[i] * (spread.get(SIZE - 1 - i) + first), 2);
            }
            return Math.max(
                    floor - mean + QUANTILE * Math.sqrt(variance), fats + QUANTILE * Math.sqrt(fatVariance) - ceiling);
        }

        double cheapestOfMany() {
            double least = Double.POSITIVE_INFINITY;
            for (int a = 0; a <= STEPS; a++) {
                for (int b = 0; a + b <= STEPS; b++) {
                    for (int c = 0; a + b + c <= STEPS; c++) {
                        double[] share = {a / 40., b / 40., c / 40., (STEPS - a - b - c) / 40.};
                        double money = 0;
                        for (int i = 0; i < SIZE; i++) {
                            money += share[i] * cost.get(i);
                        }
                        least = misses(share) <= 0 ? Math.min(least, money) : least;
                    }
                }
            }
            return least;
        }
    }

    private static SmallKitchen kitchen(String bound) {
        return new SmallKitchen(PEA + WATER, PRICES, bound, "");
    }
}
