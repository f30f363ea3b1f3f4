package panade.trace;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.testing.Planners;
import panade.testing.SmallKitchen;

/** Curves over a price where others sell the same thing; worked out by hand. */
class PriceCurveTest {
    /** A batch of 10 kg, half of it "a": 1 kg of that can be had at 1.00, the rest costs 1.10; "b" costs 5. */
    private static final SmallKitchen SHORT_OF_THE_CHEAP = new SmallKitchen(
            "{\"id\": \"a\", \"values\": {}}, {\"id\": \"b\", \"values\": {}}",
            "a,north,1.00,kg,1 kg\na,south,1.10,kg,\nb,east,5.00,kg,\n",
            "{\"ingredient\": \"b\", \"min\": \"50 %\"}",
            "");

    @Test
    void theCurveAtTodaysPriceIsTheCostOfTodaysBlend() {
        // 0.1 x 1.00 + 0.4 x 1.10 + 0.5 x 5 = 3.04
        assertThat(SHORT_OF_THE_CHEAP.cost()).isEqualTo(SmallKitchen.number("3.04"));
        var curve = curve(SmallKitchen.number("0.9"));
        assertThat(curve.now()).isEqualTo(SmallKitchen.number("1"));
        assertThat(costAt(curve, curve.now())).isEqualTo(SmallKitchen.number("3.04"));
    }

    @Test
    void anotherSuppliersGoodsTakeOverWhereTheyAreCheaper() {
        var curve = curve(BigFraction.ZERO);
        // up to 1.10 the one kilogram of ten is bought from the north, beyond from the south
        assertThat(curve.points()).hasSize(2);
        assertThat(curve.points().get(1).at()).isEqualTo(SmallKitchen.number("1.1"));
        assertThat(curve.segments().get(0).slope()).isEqualTo(SmallKitchen.number("0.1"));
        assertThat(curve.segments().get(1).slope()).isEqualTo(BigFraction.ZERO);
        assertThat(costAt(curve, SmallKitchen.number("7"))).isEqualTo(SmallKitchen.number("3.05"));
    }

    private static Curve curve(BigFraction from) {
        return PriceTracing.of(Planners.LINEAR, SHORT_OF_THE_CHEAP.brief(), "a", from, null)
                .orElseThrow();
    }

    private static BigFraction costAt(Curve curve, BigFraction at) {
        int last = -1;
        for (int i = 0; i < curve.points().size(); i++) {
            last = curve.points().get(i).at().subtract(at).signum() <= 0 ? i : last;
        }
        var point = curve.points().get(last);
        return point.costPerKg().add(curve.segments().get(last).slope().multiply(at.subtract(point.at())));
    }
}
