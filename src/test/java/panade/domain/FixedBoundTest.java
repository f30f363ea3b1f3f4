package panade.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.domain.origin.Origin;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Floor and ceiling are compared as amounts in the batch, however each is written. */
class FixedBoundTest {
    private static final Origin NOWHERE = new Origin("brief.json", 1, 1, "/bounds/0");
    private static final Measure FAT =
            new Measure("FAT", Unit.PERCENT, List.of(new Measure.Part(Map.of(), Map.of(), null)));

    @ParameterizedTest
    @CsvSource({
        "10 kg, 20 %, 20 %, true",
        "10 kg, 200 g/kg, 20 %, true",
        "10 kg, 2 kg, 20 %, true",
        "10 kg, 20 %, 2000 g, true",
        "20 kg, 2 kg, 20 %, false",
        "10 kg, 0.2 kg, 20 %, false", // both are 0.2 in base units
        "10 kg, 18 %, 20 %, false",
        "16 oz, 8 oz, 50 %, true",
    })
    void a_weight_and_a_share_that_are_the_same_amount_fix_a_bound(
            String batch, String min, String max, boolean fixed) {
        assertThat(bound(null, min, max).isFixed(quantity(batch))).isEqualTo(fixed);
    }

    @ParameterizedTest
    @CsvSource({"2 kg, 20 %, false", "20 %, 20 %, true", "2 kg, 2000 g, true"})
    void a_share_of_a_stage_cannot_be_compared_with_a_weight(String min, String max, boolean fixed) {
        assertThat(bound(FAT, min, max).isFixed(quantity("10 kg"))).isEqualTo(fixed);
    }

    @ParameterizedTest
    @CsvSource({"20 %,", ",20 %"})
    void one_number_fixes_nothing(@Nullable String min, @Nullable String max) {
        assertThat(bound(null, min, max).isFixed(quantity("10 kg"))).isFalse();
    }

    private static Bound bound(@Nullable Measure per, @Nullable String min, @Nullable String max) {
        return new Bound(
                LimitKind.BRIEF,
                "fat",
                "/bounds/0",
                FAT,
                per,
                min == null ? null : quantity(min),
                max == null ? null : quantity(max),
                "raw",
                NOWHERE);
    }

    private static Quantity quantity(String text) {
        return Quantity.parse(text).orElseThrow();
    }
}
