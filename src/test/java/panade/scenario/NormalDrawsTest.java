package panade.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Against the table in the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: .34134 between nothing and one
 * (digits from memory).
 */
class NormalDrawsTest {
    private static final int COUNT = 5;
    private static final int DRAWS = 40_000;

    private final NormalDraws draws = new NormalDraws(7);

    @Test
    void a_number_lies_beyond_one_deviation_as_often_as_the_table_says() {
        var above = new int[COUNT];
        var below = new int[COUNT];
        for (long draw = 0; draw < DRAWS; draw++) {
            var drawn = draws.thousandths(draw, COUNT);
            for (int i = 0; i < COUNT; i++) {
                above[i] += drawn[i] > NormalDraws.PARTS ? 1 : 0;
                below[i] += drawn[i] < -NormalDraws.PARTS ? 1 : 0;
            }
        }
        // five standard deviations of a share of .15866
        for (int i = 0; i < COUNT; i++) {
            assertThat(above[i] / (double) DRAWS).isCloseTo(.5 - .34134, within(.0092));
            assertThat(below[i] / (double) DRAWS).isCloseTo(.5 - .34134, within(.0092));
        }
    }

    @Test
    void numbers_of_one_draw_and_of_draws_that_follow_each_other_have_nothing_to_do_with_each_other() {
        double beside = 0;
        double after = 0;
        for (long draw = 0; draw < DRAWS; draw++) {
            var drawn = draws.thousandths(draw, 2);
            beside += drawn[0] * (double) drawn[1] / 1e6;
            after += drawn[0] * (double) draws.thousandths(draw + 1, 1)[0] / 1e6;
        }
        // five standard deviations of a correlation of nothing
        assertThat(beside / DRAWS).isCloseTo(0, within(5 / Math.sqrt(DRAWS)));
        assertThat(after / DRAWS).isCloseTo(0, within(5 / Math.sqrt(DRAWS)));
    }

    @Test
    void a_draw_is_the_same_again_and_longer_ones_begin_alike() {
        assertThat(draws.thousandths(3, COUNT)).isEqualTo(new NormalDraws(7).thousandths(3, COUNT));
        assertThat(draws.thousandths(3, COUNT)).startsWith(draws.thousandths(3, 2));
        assertThat(new NormalDraws(8).thousandths(3, COUNT)).isNotEqualTo(draws.thousandths(3, COUNT));
    }
}
