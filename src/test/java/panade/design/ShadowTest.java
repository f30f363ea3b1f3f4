package panade.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.testing.RepeatableSeeds;

/** Regions of levers, found by asking for farthest points, against all corners of the region of amounts. */
class ShadowTest {
    /**
     * By hand: the shadow of a unit cube along a diagonal of it is a regular hexagon, its two nearest corners within.
     */
    @Test
    void the_shadow_of_a_cube_is_a_hexagon() {
        var cube = Polytope.of(3, Points.between("0 0 0", "1 1 1"), List.of()).orElseThrow();
        var levers = List.of(Points.point("1 -1 0"), Points.point("0 1 -1"));
        var region = Shadow.of(2, farthest(shadows(cube, levers))).orElseThrow();
        assertThat(region.vertices())
                .containsExactlyInAnyOrder(
                        Points.point("1 0"),
                        Points.point("-1 1"),
                        Points.point("0 -1"),
                        Points.point("0 1"),
                        Points.point("1 -1"),
                        Points.point("-1 0"));
    }

    @Test
    void levers_that_hang_together_leave_a_flat_region() {
        var cube = Polytope.of(3, Points.between("0 0 0", "1 1 1"), List.of()).orElseThrow();
        var levers = List.of(Points.point("1 0 0"), Points.point("2 0 0"), Points.point("0 0 0"));
        var region = Shadow.of(3, farthest(shadows(cube, levers))).orElseThrow();
        assertThat(region.vertices()).containsExactlyInAnyOrder(Points.point("0 0 0"), Points.point("1 2 0"));
        assertThat(region.candidates()).hasSize(3);
    }

    @Test
    void where_there_is_no_point_there_is_no_region() {
        assertThat(Shadow.of(2, weights -> Optional.empty())).isEmpty();
    }

    /**
     * Every corner of the region of amounts lies within the region found, and each corner found is the shadow of one:
     * together that is the whole region and nothing more.
     */
    @Test
    void random_shadows_are_whole_and_nothing_more() {
        var random = new Random(RepeatableSeeds.seed("random_shadows"));
        for (int round = 0; round < 40; round++) {
            int levers = 2 + round % 3;
            var amounts = amounts(random);
            var measures = IntStream.range(0, levers)
                    .mapToObj(lever -> draws(random, 5, 7))
                    .toList();
            var shadows = shadows(amounts, measures);
            var region = Shadow.of(levers, farthest(shadows)).orElseThrow();
            assertThat(shadows).containsAll(region.vertices());
            for (int trial = 0; trial < 60; trial++) {
                var direction = draws(random, levers, 11);
                assertThat(most(region.vertices(), direction)).isEqualTo(most(shadows, direction));
            }
        }
    }

    private static Polytope amounts(Random random) {
        var rows = Points.between("0 0 0 0 0", "0.5 0.6 0.7 0.8 0.9");
        var weights = draws(random, 5, 4);
        rows.add(new LeverRow(weights, sum(weights, Points.point("0.2 0.2 0.2 0.2 0.2"))));
        return Polytope.of(5, rows, List.of(Points.whole(5))).orElseThrow();
    }

    private static List<BigFraction> draws(Random random, int count, int range) {
        return random.ints(count, -range / 2, range / 2 + 1)
                .mapToObj(BigFraction::of)
                .toList();
    }

    private static List<List<BigFraction>> shadows(Polytope amounts, List<List<BigFraction>> measures) {
        return amounts.vertices().stream()
                .map(vertex ->
                        measures.stream().map(measure -> sum(measure, vertex)).toList())
                .toList();
    }

    private static Shadow.Farthest farthest(List<List<BigFraction>> points) {
        var drawn = new ArrayList<>(points);
        return weights -> drawn.stream().max(Comparator.comparing(point -> sum(weights, point)));
    }

    private static BigFraction most(List<List<BigFraction>> points, List<BigFraction> weights) {
        return points.stream()
                .map(point -> sum(weights, point))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static BigFraction sum(List<BigFraction> weights, List<BigFraction> values) {
        var sum = BigFraction.ZERO;
        for (int i = 0; i < weights.size(); i++) {
            sum = sum.add(weights.get(i).multiply(values.get(i)));
        }
        return sum;
    }
}
