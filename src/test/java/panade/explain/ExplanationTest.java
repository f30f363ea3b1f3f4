package panade.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import panade.domain.Side;
import panade.plan.Outcome.Blended;
import panade.testing.SmallKitchen;

/** The parts of an explanation of a blend worked out by hand: nine tenths water, a tenth binder. */
class ExplanationTest {
    private static final SmallKitchen KITCHEN = new SmallKitchen(
            "{\"id\": \"water\", \"values\": {\"bite\": 0}},"
                    + " {\"id\": \"binder\", \"kinds\": [\"gum\"], \"values\": {\"bite\": 20}}",
            "water,tap,0.10,kg,\nbinder,north,3.00,kg,1 kg\n",
            "{\"kind\": \"gum\", \"min\": \"10 %\"}, {\"ingredient\": \"water\", \"max\": \"95 %\"}",
            "");

    private final Blended blended = KITCHEN.blended();
    private final Explanation explanation = blended.explanation();

    @Test
    void whatBindsIsTheFloorAndAllThatThereIs() {
        // a tenth of 10 kg is the one kilogram that the supplier has
        assertThat(explanation.bindings()).extracting(Explanation.Binding::side).containsExactly(Side.MIN, Side.MAX);
    }

    @Test
    void aBindingBelongsToItsBoundAlone() {
        var bounds = blended.asked().bounds();
        var floor = explanation.bindings().get(0);
        assertThat(bounds.stream().filter(floor::isOf)).containsExactly(bounds.get(0));
    }

    @Test
    void everyLimitThatHasASideIsAmongWhatBinds() {
        var touched = explanation.limits().stream()
                .filter(limit -> limit.touch() != null)
                .map(Explanation.Limit::title)
                .toList();
        assertThat(explanation.bindings())
                .extracting(Explanation.Binding::title)
                .isEqualTo(touched);
    }

    @Test
    void aFloorThatIsLoweredByAPerCentSavesTheDifferenceOfThePrices() {
        var price = Objects.requireNonNull(explanation.limits().get(0).price());
        assertThat(price.whenLowered()).isEqualTo(SmallKitchen.number("-0.029"));
        assertThat(price.blockedAbove()).isTrue();
    }

    @Test
    void aPropertyIsTheMeanOfItsParts() {
        assertThat(explanation.properties())
                .singleElement()
                .satisfies(property -> assertThat(property.value()).isEqualTo(SmallKitchen.number("2")));
    }
}
