package panade.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.testing.SmallKitchen;

/** A ratio whose second side is empty in the blend measures nothing; worked out by hand. */
class BoundOfNothingTest {
    /**
     * Both hold half protein and a fifth is asked: 40 % of the mince at 1.00 costs 0.40, 40 % of the powder at 3.00
     * costs 1.20. Only the mince is chewed, and its score is 7.
     */
    private static final SmallKitchen MINCE_OR_POWDER =
            new SmallKitchen("""
            {"id": "water", "values": {"PROCNT": 0}}, {"id": "powder", "values": {"PROCNT": 50}},
            {"id": "mince", "kinds": ["texturate"], "values": {"PROCNT": 50, "bite": 7}}
            """, "water,tap,0,kg,\npowder,north,3.00,kg,\nmince,north,1.00,kg,\n", "", "");

    private static SmallKitchen chewedAt(String number) {
        return MINCE_OR_POWDER.withBounds("{\"property\": \"PROCNT\", \"min\": \"20 %\"},"
                + "{\"property\": \"bite\", \"within\": {\"kind\": \"texturate\"}, \"per\": {\"kind\": \"texturate\"},"
                + " \"min\": " + number + "}");
    }

    @Test
    void aBoundThatMeasuresNothingDoesNotBindAndMovingItAltersNothingUntilItMeasuresSomething() {
        assertThat(chewedAt("7.3").cost()).isEqualTo(SmallKitchen.number("1.2"));
        var limit = chewedAt("7.3").limit("/bounds/1");
        assertThat(limit.value()).isNull();
        assertThat(limit.touch()).isNull();
        var price = Objects.requireNonNull(limit.price());
        assertThat(price.whenRaised()).isEqualTo(BigFraction.ZERO);
        assertThat(price.whenLowered()).isEqualTo(BigFraction.ZERO);
        assertThat(price.to()).isNull();
        assertThat(price.from()).isEqualTo(SmallKitchen.number("7"));
        assertThat(chewedAt("9").cost()).isEqualTo(SmallKitchen.number("1.2"));
        assertThat(chewedAt("7.000001").cost()).isEqualTo(SmallKitchen.number("1.2"));
    }

    @Test
    void whereTheLastThatMeetsItDropsOutTheCostJumps() {
        assertThat(chewedAt("7").cost()).isEqualTo(SmallKitchen.number("0.4"));
        var limit = chewedAt("7").limit("/bounds/1");
        var price = Objects.requireNonNull(limit.price());
        assertThat(price.whenRaised()).isNull();
        assertThat(price.blockedAbove()).isFalse();
        assertThat(price.jumpRaised()).isEqualTo(SmallKitchen.number("0.8"));
        assertThat(price.whenLowered()).isEqualTo(BigFraction.ZERO);
    }

    @Test
    void whereNothingElseServesThereIsNoBlendBeyond() {
        var alone = chewedAt("7").withPrices("water,tap,0,kg,\nmince,north,1.00,kg,\n");
        var price = Objects.requireNonNull(alone.limit("/bounds/1").price());
        assertThat(price.blockedAbove()).isTrue();
    }
}
