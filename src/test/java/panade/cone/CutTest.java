package panade.cone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.model.Cone;
import panade.model.LinearForm;
import panade.testing.RepeatableSeeds;

/** Cuts against points of their cones, in fractions. */
@AddLifecycleHook(RepeatableSeeds.class)
class CutTest {
    private static final int POINTS = 1_000;

    @Property(tries = 20)
    void a_cut_keeps_every_one_of_a_thousand_points_of_its_cone(@ForAll long seed) {
        var random = new Random(seed);
        int columns = 2 + random.nextInt(6);
        var cone = cone(random, columns);
        var cut = Cut.at(cone, point(random, columns, BigFraction.ZERO));
        assertThat(cut.isValid()).isTrue();
        var row = cut.row("cut", BigFraction.ZERO);
        for (int n = 0; n < POINTS; n++) {
            var shares = point(random, columns, BigFraction.ZERO);
            var edge = new ArrayList<>(shares);
            // the nearest short decimal from above: as close to the edge of the cone as a fraction can be told
            edge.set(columns, Roots.above(cone.squareAt(shares)));
            assertThat(row.activity(edge).compareTo(row.right())).isNotNegative();
        }
    }

    @Property(tries = 100)
    void a_cut_touches_its_cone_beside_the_point_it_was_made_at(@ForAll long seed) {
        var random = new Random(seed);
        int columns = 2 + random.nextInt(6);
        var cone = cone(random, columns);
        var point = new ArrayList<>(point(random, columns, BigFraction.ZERO));
        var root = Roots.above(cone.squareAt(point));
        point.set(columns, root);
        var over = Cut.at(cone, point).row("cut", BigFraction.ZERO).activity(point);
        assertThat(over).isBetween(BigFraction.ZERO, root.multiply(BigFraction.of(1, 10_000_000)));
    }

    @Test
    void a_weight_rounded_away_from_nothing_is_no_cut() {
        var cone = new Cone(1, 0, List.of(new Cone.Part(BigFraction.of(4), LinearForm.of(0, BigFraction.ONE))));
        assertThat(new Cut(cone, List.of(BigFraction.of(2))).isValid()).isTrue();
        assertThat(new Cut(cone, List.of(BigFraction.of(2_000_001, 1_000_000))).isValid())
                .isFalse();
    }

    @Property(tries = 500)
    void a_root_from_above_is_one(@ForAll long seed) {
        var random = new Random(seed);
        var square = BigFraction.of(1 + random.nextInt(1_000_000), 1 + random.nextInt(1_000_000));
        var root = Roots.above(square);
        assertThat(root.multiply(root).compareTo(square)).isNotNegative();
        assertThat(Math.abs(root.doubleValue() / Math.sqrt(square.doubleValue()) - 1))
                .isLessThan(1e-15);
    }

    /** Over so many columns and one of its own, which comes last; forms overlap. */
    private static Cone cone(Random random, int columns) {
        var parts = new ArrayList<Cone.Part>();
        for (int k = 0; k < 1 + random.nextInt(5); k++) {
            var form = LinearForm.over(columns, j -> BigFraction.of(random.nextInt(21) - 8, 1 + random.nextInt(9)))
                    .plus(random.nextInt(columns), BigFraction.of(1, 3));
            parts.add(new Cone.Part(BigFraction.of(1 + random.nextInt(50), 1 + random.nextInt(50)), form));
        }
        return new Cone(columns, 0, parts);
    }

    private static List<BigFraction> point(Random random, int columns, BigFraction last) {
        var point = new ArrayList<BigFraction>();
        for (int j = 0; j < columns; j++) {
            point.add(BigFraction.of(random.nextInt(1000), 1 + random.nextInt(1000)));
        }
        point.add(last);
        return point;
    }
}
