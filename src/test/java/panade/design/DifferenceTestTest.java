package panade.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import panade.quantity.Decimal;

/** Least numbers of right answers against tables, and probabilities against a library's and by hand. */
class DifferenceTestTest {
    private static final BigFraction FIVE = Decimal.of("0.05");
    private static final BigFraction ONE = Decimal.of("0.01");

    /** Computed; the 5 % column agrees with the tables of ISO 4120 and ASTM E1885, from memory. */
    @Test
    void least_right_answers_of_a_triangle_test() throws IOException {
        var rows = rows("triangle.csv");
        assertThat(rows).hasSizeGreaterThan(40);
        for (var row : rows) {
            assertThat(DifferenceTest.TRIANGLE.leastRight(row.get(0), FIVE)).contains(row.get(1));
            assertThat(DifferenceTest.TRIANGLE.leastRight(row.get(0), ONE)).contains(row.get(2));
        }
    }

    /** Computed; as above, for duo-trio tests (ISO 10399, from memory). */
    @Test
    void least_right_answers_where_one_of_two_is_named() throws IOException {
        var rows = rows("one-of-two.csv");
        assertThat(rows).hasSizeGreaterThan(40);
        rows.forEach(row -> assertThat(DifferenceTest.ONE_OF_TWO.leastRight(row.get(0), FIVE))
                .contains(row.get(1)));
    }

    private static List<List<Integer>> rows(String name) throws IOException {
        try (var in = DifferenceTestTest.class.getResourceAsStream("/design/" + name)) {
            var text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .skip(1)
                    .map(line ->
                            Stream.of(line.split(",")).map(Integer::valueOf).toList())
                    .toList();
        }
    }

    /** By hand: three of three by guessing once in 27, two of three six times more. */
    @Test
    void probabilities_by_hand() {
        assertThat(DifferenceTest.TRIANGLE.p(3, 3)).isEqualTo(BigFraction.of(1, 27));
        assertThat(DifferenceTest.TRIANGLE.p(2, 3)).isEqualTo(BigFraction.of(7, 27));
        assertThat(DifferenceTest.TRIANGLE.p(0, 3)).isEqualTo(BigFraction.ONE);
        assertThat(DifferenceTest.TRIANGLE.leastRight(2, FIVE)).isEmpty();
        assertThat(DifferenceTest.TRIANGLE.leastRight(3, BigFraction.of(1, 27))).contains(3);
        assertThat(DifferenceTest.TRIANGLE.power(2, FIVE, BigFraction.ONE)).isEqualTo(BigFraction.ZERO);
        assertThat(DifferenceTest.TRIANGLE.power(3, FIVE, BigFraction.of(1, 2))).isEqualTo(BigFraction.of(8, 27));
        assertThat(DifferenceTest.TRIANGLE.power(20, FIVE, BigFraction.ONE)).isEqualTo(BigFraction.ONE);
        assertThat(DifferenceTest.TRIANGLE.power(20, FIVE, BigFraction.ZERO))
                .isEqualTo(DifferenceTest.TRIANGLE.p(11, 20));
    }

    /** Against a statistics library. */
    @Test
    void probabilities_of_a_library() {
        for (int tasters = 1; tasters <= 60; tasters++) {
            var guessing = BinomialDistribution.of(tasters, 1.0 / 3);
            for (int right = 0; right <= tasters; right++) {
                assertThat(DifferenceTest.TRIANGLE.p(right, tasters).doubleValue())
                        .isCloseTo(guessing.survivalProbability(right - 1), within(1e-12));
            }
        }
        var half = BigFraction.of(3, 10);
        var telling = BinomialDistribution.of(30, 0.3 + 0.7 / 3);
        assertThat(DifferenceTest.TRIANGLE.power(30, FIVE, half).doubleValue())
                .isCloseTo(telling.survivalProbability(14), within(1e-12));
    }

    /** A test that is large enough stays so here, and one taster less is not. */
    @Test
    void as_many_tasters_as_it_takes() {
        var part = BigFraction.of(1, 2);
        var power = BigFraction.of(9, 10);
        int least = DifferenceTest.TRIANGLE.leastTasters(FIVE, part, power, 60).orElseThrow();
        assertThat(DifferenceTest.TRIANGLE.power(least, FIVE, part)).isGreaterThanOrEqualTo(power);
        assertThat(DifferenceTest.TRIANGLE.power(least - 1, FIVE, part)).isLessThan(power);
        assertThat(DifferenceTest.TRIANGLE.leastTasters(FIVE, part, power, least - 1))
                .isEmpty();
    }

    /**
     * The upper end of the exact interval of a binomial share (Clopper and Pearson 1934) is a quantile of a beta
     * distribution, here a library's.
     */
    @Test
    void no_larger_part_of_people_tells_the_samples_apart() {
        for (int tasters : List.of(1, 6, 12, 30)) {
            for (int right = 0; right < tasters; right++) {
                double most = BetaDistribution.of(right + 1, tasters - right).inverseCumulativeProbability(0.95);
                double part = Math.max(0, 1.5 * most - 0.5);
                assertThat(DifferenceTest.TRIANGLE.mostTellApart(right, tasters, FIVE))
                        .isEqualTo((int) Math.ceil(100 * part));
            }
            assertThat(DifferenceTest.TRIANGLE.mostTellApart(tasters, tasters, FIVE))
                    .isEqualTo(100);
        }
    }
}
