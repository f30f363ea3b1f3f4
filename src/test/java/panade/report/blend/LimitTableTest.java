package panade.report.blend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.domain.LimitKind;
import panade.result.BoundResult;
import panade.testing.Bounds;

/** Which bounds are worth a line of the table. */
class LimitTableTest {
    @Test
    void a_bound_of_the_brief_is_shown_whatever_it_is_called() {
        var bounds = List.of(
                limit(LimitKind.BRIEF, "protein available to bind", 1),
                limit(LimitKind.BRIEF, "starch maxUse", 1),
                limit(LimitKind.STAGE, "water available when cold", 1));
        assertThat(LimitTable.shown(bounds)).isEqualTo(bounds);
    }

    @Test
    void a_ceiling_of_the_pantry_is_shown_from_half_its_use_on() {
        var below = limit(LimitKind.CEILING, "salt", 9);
        var half = limit(LimitKind.CEILING, "salt", 10);
        var sold = limit(LimitKind.AVAILABILITY, "oil", 11);
        assertThat(LimitTable.shown(List.of(below, half, sold))).containsExactly(half, sold);
    }

    @Test
    void one_ceiling_is_told_as_one() {
        assertThat(LimitTable.hidden(1)).contains(": 1 ceiling on").doesNotContain("ceilings");
        assertThat(LimitTable.hidden(2)).contains(": 2 ceilings on");
    }

    private static BoundResult limit(LimitKind kind, String name, int value) {
        return Bounds.idle(kind, name, null, BigFraction.of(value), BigFraction.of(20));
    }
}
