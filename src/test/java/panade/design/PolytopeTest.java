package panade.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.testing.RepeatableSeeds;

/** Corners, edges and facets of regions: published ones, and random ones against every choice of rows. */
class PolytopeTest {
    /** McLean and Anderson, Technometrics 8 (1966): the first design of extreme vertices (bounds from memory). */
    @Test
    void the_first_extreme_vertices_design() {
        var flare = mixture("0.4 0.1 0.1 0.03", "0.6 0.5 0.5 0.08");
        assertThat(flare.vertices())
                .containsExactlyInAnyOrder(
                        Points.point("0.4 0.1 0.47 0.03"),
                        Points.point("0.6 0.1 0.27 0.03"),
                        Points.point("0.4 0.47 0.1 0.03"),
                        Points.point("0.6 0.27 0.1 0.03"),
                        Points.point("0.4 0.1 0.42 0.08"),
                        Points.point("0.4 0.42 0.1 0.08"),
                        Points.point("0.6 0.1 0.22 0.08"),
                        Points.point("0.6 0.22 0.1 0.08"));
        assertThat(flare.edgeMidpoints()).hasSize(12).doesNotHaveDuplicates();
        assertThat(flare.facetCentroids())
                .containsExactlyInAnyOrder(
                        Points.point("0.4 0.2725 0.2725 0.055"),
                        Points.point("0.6 0.1725 0.1725 0.055"),
                        Points.point("0.5 0.1 0.345 0.055"),
                        Points.point("0.5 0.345 0.1 0.055"),
                        Points.point("0.5 0.235 0.235 0.03"),
                        Points.point("0.5 0.21 0.21 0.08"));
        assertThat(flare.centroid()).isEqualTo(Points.point("0.5 0.2225 0.2225 0.055"));
        assertThat(flare.candidates()).hasSize(8 + 12 + 6 + 1).doesNotHaveDuplicates();
    }

    /** The shortbread mixture in Lawson's experiment, as the R package mixexp (man pages) has its bounds. */
    @Test
    void a_region_of_three_with_five_corners() {
        var shortbread = mixture("0 0.1 0.05", "0.8 0.95 0.5");
        assertThat(shortbread.vertices())
                .containsExactlyInAnyOrder(
                        Points.point("0.8 0.1 0.1"),
                        Points.point("0 0.95 0.05"),
                        Points.point("0.8 0.15 0.05"),
                        Points.point("0.4 0.1 0.5"),
                        Points.point("0 0.5 0.5"));
        assertThat(shortbread.centroid()).isEqualTo(Points.point("0.4 0.36 0.24"));
        assertThat(shortbread.edgeMidpoints()).hasSize(5);
        assertThat(shortbread.candidates()).as("an edge is a facet there").hasSize(5 + 5 + 1);
    }

    /**
     * Snee and Marquardt's eight components (Technometrics 18, 1976); counts by the program CONVRT of Piepel (1988).
     */
    @Test
    void eight_components_have_as_many_corners_as_published() {
        var lower = "0.1 0.05 0 0 0.1 0.05 0 0";
        assertThat(mixture(lower, "0.45 0.5 0.1 0.1 0.6 0.2 0.05 0.05").vertices())
                .hasSize(182)
                .doesNotHaveDuplicates();
        assertThat(mixture(lower, "0.45 0.5 0.1 0.4 0.6 0.2 0.05 0.05").vertices())
                .hasSize(170);
    }

    /** Corners of a simplex of seven further cut by a row: by hand, the row parts corners 1 to 3 from 4 to 8. */
    @Test
    void a_further_row_cuts_corners_off() {
        var rows = Points.between("0 0 0 0 0 0 0 0", "1 1 1 1 1 1 1 1");
        rows.add(new LeverRow(Points.point("1 1 1 0 0 0 0 0"), BigFraction.of(1, 2)));
        var cut = Polytope.of(8, rows, List.of(Points.whole(8))).orElseThrow();
        assertThat(cut.vertices()).hasSize(3 + 3 * 5);
        assertThat(cut.vertices()).contains(Points.point("0 1/2 0 0 0 1/2 0 0"));
        assertThat(cut.facetCentroids()).hasSize(3 + 5 + 1);
    }

    @Test
    void a_region_may_be_empty_or_one_point_or_without_end() {
        assertThat(Polytope.of(2, Points.between("0.6 0.6", "1 1"), List.of(Points.whole(2))))
                .isEmpty();
        var one = mixture("0.25 0.75", "1 1");
        assertThat(one.candidates()).containsExactly(Points.point("0.25 0.75"));
        var least = List.of(new LeverRow(Points.point("1 0"), BigFraction.ZERO));
        assertThatThrownBy(() -> Polytope.of(2, least, List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Polytope.of(2, least, List.of(new LeverRow(Points.point("0 1"), BigFraction.ONE))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * Random regions, many with more rows through a corner than needed: every choice of three rows is solved on its
     * own.
     */
    @Test
    void corners_are_all_the_points_that_choices_of_rows_meet_in() {
        var random = new Random(RepeatableSeeds.seed("corners_are_all_the_points"));
        int bounded = 0;
        for (int round = 0; round < 150; round++) {
            var rows = randomRows(random);
            var expected = pointsOfChoices(rows);
            var found = Polytope.of(3, rows, List.of());
            assertThat(found.map(region -> Set.copyOf(region.vertices())).orElse(Set.of()))
                    .isEqualTo(expected);
            bounded += found.filter(PolytopeTest::obeysEuler).isPresent() ? 1 : 0;
        }
        assertThat(bounded).as("solid regions").isGreaterThan(80);
    }

    /** Corners less edges plus facets are two, for a solid in three dimensions. */
    private static boolean obeysEuler(Polytope region) {
        var directions = region.vertices().stream()
                .map(vertex -> minus(vertex, region.vertices().get(0)))
                .toList();
        boolean solid = directions.stream()
                .anyMatch(a -> directions.stream()
                        .anyMatch(b -> directions.stream()
                                .anyMatch(c -> determinant(a, b, c).signum() != 0)));
        if (solid) {
            assertThat(region.vertices().size()
                            - region.edgeMidpoints().size()
                            + region.facetCentroids().size())
                    .isEqualTo(2);
        }
        return solid;
    }

    private static List<LeverRow> randomRows(Random random) {
        var rows = Points.between("0 0 0", "2 2 2");
        for (int i = 0; i < 4; i++) {
            var weights = Stream.generate(() -> BigFraction.of(random.nextInt(5) - 2))
                    .limit(3)
                    .toList();
            rows.add(new LeverRow(weights, BigFraction.of(random.nextInt(7) - 5, 1 + random.nextInt(2))));
        }
        return rows;
    }

    private static Set<List<BigFraction>> pointsOfChoices(List<LeverRow> rows) {
        var points = new HashSet<List<BigFraction>>();
        for (int i = 0; i < rows.size(); i++) {
            for (int j = i + 1; j < rows.size(); j++) {
                for (int k = j + 1; k < rows.size(); k++) {
                    meeting(List.of(rows.get(i), rows.get(j), rows.get(k)))
                            .filter(point -> rows.stream()
                                    .allMatch(row -> row.excess(point).signum() >= 0))
                            .ifPresent(points::add);
                }
            }
        }
        return points;
    }

    /** Cramer's rule. */
    private static Optional<List<BigFraction>> meeting(List<LeverRow> rows) {
        var columns = new ArrayList<List<BigFraction>>();
        for (int i = 0; i < 3; i++) {
            int lever = i;
            columns.add(rows.stream().map(row -> row.weights().get(lever)).toList());
        }
        var numbers = rows.stream().map(LeverRow::number).toList();
        var all = determinant(columns.get(0), columns.get(1), columns.get(2));
        if (all.signum() == 0) {
            return Optional.empty();
        }
        return Optional.of(List.of(
                determinant(numbers, columns.get(1), columns.get(2)).divide(all),
                determinant(columns.get(0), numbers, columns.get(2)).divide(all),
                determinant(columns.get(0), columns.get(1), numbers).divide(all)));
    }

    private static BigFraction determinant(List<BigFraction> a, List<BigFraction> b, List<BigFraction> c) {
        var sum = BigFraction.ZERO;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            var minor = b.get(j).multiply(c.get(k)).subtract(b.get(k).multiply(c.get(j)));
            sum = sum.add(a.get(i).multiply(minor));
        }
        return sum;
    }

    private static List<BigFraction> minus(List<BigFraction> a, List<BigFraction> b) {
        return List.of(
                a.get(0).subtract(b.get(0)),
                a.get(1).subtract(b.get(1)),
                a.get(2).subtract(b.get(2)));
    }

    private static Polytope mixture(String lower, String upper) {
        int levers = Points.point(lower).size();
        return Polytope.of(levers, Points.between(lower, upper), List.of(Points.whole(levers)))
                .orElseThrow();
    }
}
