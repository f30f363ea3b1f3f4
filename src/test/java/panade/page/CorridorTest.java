package panade.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.domain.LimitKind;
import panade.quantity.Decimal;
import panade.testing.Bounds;

/** Where a bound's walls and its value are drawn; the numbers are worked out by hand. */
class CorridorTest {
    private static Corridor corridor(@Nullable String min, @Nullable String value, @Nullable String max) {
        return Corridor.of(Bounds.idle(LimitKind.BRIEF, "a bound", fraction(min), fraction(value), fraction(max)));
    }

    private static @Nullable BigFraction fraction(@Nullable String text) {
        return text == null ? null : Decimal.of(text);
    }

    @Test
    void between_two_walls_a_value_stands_in_proportion() {
        assertThat(corridor("10", "15", "20"))
                .isEqualTo(new Corridor("20.00", "80.00", "20.00", "60.00", "50.00", false));
        assertThat(corridor("10", "10", "20").mark()).isEqualTo("20.00");
        assertThat(corridor("-2", "-0.5", "0").mark()).isEqualTo("65.00");
    }

    @Test
    void over_a_floor_alone_twice_the_floor_is_where_a_ceiling_would_be() {
        assertThat(corridor("4", "8", null)).isEqualTo(new Corridor("20.00", null, "20.00", "80.00", "80.00", false));
        assertThat(corridor("4", "4", null).mark()).isEqualTo("20.00");
        assertThat(corridor("4", "400", null).mark()).isEqualTo("80.00");
        assertThat(corridor("0", "0", null).mark()).isEqualTo("20.00");
        assertThat(corridor("-1", "0", null).mark()).isEqualTo("80.00");
    }

    @Test
    void under_a_ceiling_alone_nothing_is_at_the_left_edge() {
        assertThat(corridor(null, "0", "5")).isEqualTo(new Corridor(null, "80.00", "0.00", "80.00", "0.00", false));
        assertThat(corridor(null, "5", "5").mark()).isEqualTo("80.00");
        assertThat(corridor(null, "0", "0").mark()).isEqualTo("80.00");
        assertThat(corridor(null, "-10", "-5").mark()).isEqualTo("0.00");
        assertThat(corridor(null, "-6", "3").mark()).isEqualTo("0.00");
    }

    @Test
    void a_fixed_number_is_one_wall() {
        assertThat(corridor("3", "3", "3")).isEqualTo(new Corridor("50.00", "50.00", "50.00", "0", "50.00", false));
    }

    @Test
    void nothing_to_measure_has_no_mark() {
        assertThat(corridor("0.6", null, "1").mark()).isNull();
    }
}
