package panade.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * The order of fractions, which everything here relies on. {@link BigFraction#compareTo} was wrong when both sides were
 * negative up to Commons Numbers 1.2 (NUMBERS-207).
 */
class FractionOrderTest {
    @Test
    void is_that_of_their_difference_whatever_their_signs() {
        for (int top = -6; top <= 6; top++) {
            for (int bottom : new int[] {-4, -3, -1, 1, 2, 5}) {
                for (int other = -6; other <= 6; other++) {
                    var a = BigFraction.of(top, bottom);
                    var b = BigFraction.of(other, 3);
                    assertThat(Integer.signum(a.compareTo(b)))
                            .as("%s and %s", a, b)
                            .isEqualTo(a.subtract(b).signum());
                }
            }
        }
    }
}
