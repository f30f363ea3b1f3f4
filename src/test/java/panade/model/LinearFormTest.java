package panade.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Linear forms against sums that can be done in the head. */
class LinearFormTest {
    /** 2 a + 3 c. */
    private static final LinearForm FORM = LinearForm.of(Map.of(0, of(2), 2, of(3)));

    @Test
    void isTheSumOfCoefficientTimesValue() {
        assertThat(FORM.dot(List.of(of(5), of(7), of(11)))).isEqualTo(of(2 * 5 + 3 * 11));
        assertThat(LinearForm.ZERO.dot(List.of(of(5)))).isEqualTo(BigFraction.ZERO);
    }

    @Test
    void holdsNoCoefficientOfZero() {
        assertThat(FORM.minus(LinearForm.of(2, of(3)))).isEqualTo(LinearForm.of(0, of(2)));
        assertThat(FORM.minus(FORM)).isEqualTo(LinearForm.ZERO);
        assertThat(FORM.minus(FORM).isZero()).isTrue();
        assertThat(FORM.plus(2, of(-3)).columns()).containsExactly(0);
        assertThat(FORM.scaled(BigFraction.ZERO)).isEqualTo(LinearForm.ZERO);
    }

    @Test
    void addsByColumn() {
        assertThat(FORM.plus(LinearForm.sumOf(List.of(1, 2))))
                .isEqualTo(LinearForm.of(Map.of(0, of(2), 1, of(1), 2, of(4))));
        assertThat(FORM.plus(1, of(9)).at(1)).isEqualTo(of(9));
        assertThat(FORM.at(1)).isEqualTo(BigFraction.ZERO);
    }

    @Test
    void scalesEachColumnByItsOwn() {
        assertThat(FORM.scaledBy(j -> of(j + 1))).isEqualTo(LinearForm.of(Map.of(0, of(2), 2, of(9))));
        assertThat(FORM.negated()).isEqualTo(FORM.scaled(of(-1)));
    }

    @Test
    void movesToOtherColumnsAndFillsGaps() {
        assertThat(FORM.shifted(3)).isEqualTo(LinearForm.of(Map.of(3, of(2), 5, of(3))));
        assertThat(FORM.dense(4)).containsExactly(of(2), of(0), of(3), of(0));
        assertThat(LinearForm.over(3, j -> of(j))).isEqualTo(LinearForm.of(Map.of(1, of(1), 2, of(2))));
        assertThat(LinearForm.sumOver(4, j -> j % 2 == 1)).isEqualTo(LinearForm.sumOf(List.of(1, 3)));
    }

    @Test
    void itsLargestIsWithoutSign() {
        assertThat(FORM.plus(1, of(-7)).largest()).isEqualTo(of(7));
        assertThat(LinearForm.ZERO.largest()).isEqualTo(BigFraction.ZERO);
    }

    private static BigFraction of(int number) {
        return BigFraction.of(number);
    }
}
