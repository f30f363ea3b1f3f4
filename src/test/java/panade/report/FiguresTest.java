package panade.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class FiguresTest {
    @Test
    void what_misses_a_bound_by_a_hair_is_printed_so_that_it_shows() {
        var reaches = BigFraction.of(479_987, 10_000); // 47.9987, which four digits make 48
        var needs = BigFraction.of(48);
        int digits = Figures.digitsApart(reaches, needs, 4);
        assertThat(digits).isEqualTo(5);
        assertThat(Figures.significant(reaches, digits)).isEqualTo("47.999");
        assertThat(Figures.significant(needs, digits)).isEqualTo("48");
    }

    @Test
    void numbers_that_differ_anyway_keep_the_usual_digits_and_equal_ones_come_to_an_end() {
        assertThat(Figures.digitsApart(BigFraction.of(47), BigFraction.of(48), 4))
                .isEqualTo(4);
        assertThat(Figures.digitsApart(BigFraction.of(48), BigFraction.of(48), 4))
                .isEqualTo(15);
    }
}
