package panade.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Unit;
import panade.testing.DemoBriefs;
import panade.testing.Planners;

/** The demo's parametric figures were computed independently, with another solver, number by number. */
class TracingTest {
    private static final Planner PLANNER = Planners.LINEAR;

    /** Followed once each, because a curve of twenty breakpoints takes seconds. */
    private static final Map<String, Curve> CURVES = new ConcurrentHashMap<>();

    @ParameterizedTest(name = "{0} {1} at {2} costs {3} USD/lb")
    @CsvSource({
        "protein, MIN, 12, 1.2236",
        "protein, MIN, 14, 1.2765",
        "protein, MIN, 16, 1.3718",
        "protein, MIN, 17, 1.5102",
        "saturated fat, MAX, 6, 1.3623",
        "saturated fat, MAX, 7, 1.3087",
        "saturated fat, MAX, 8, 1.2551",
        "holds together hot, MIN, 0.6, 1.2599",
        "holds together hot, MIN, 1.0, 1.3068",
        "holds together hot, MIN, 1.2, 1.3387",
        "bean taste, MAX, 0.55, 1.3345",
        "bean taste, MAX, 0.85, 1.2679",
        "fat like an 80/20 grind, MIN, 19, 1.3129",
        "fat like an 80/20 grind, MIN, 20, 1.3563"
    })
    void the_curve_passes_through_the_scenarios_figures(String bound, Side side, String at, String perLb) {
        var curve = curve(bound, side);
        assertThat(perLb(costAt(curve, Decimal.of(at))))
                .isCloseTo(new BigDecimal(perLb), within(new BigDecimal("0.0001")));
    }

    @Test
    void no_blend_holds_eighteen_per_cent_protein() {
        var points = curve("protein", Side.MIN).points();
        assertThat(points.get(points.size() - 1).at().subtract(Decimal.of("18")).signum())
                .isNegative();
    }

    @Test
    void soy_concentrate_stays_between_the_prices_the_scenario_tells() {
        // the scenario knows one price of it: the cheapest offer's, without the second supplier's at 3.12
        var brief = DemoBriefs.read("dumpling-filling");
        var cheapest = PriceTracing.cheapest(brief, "textured-soy-concentrate");
        var alone = brief.offering(brief.offers().stream()
                .filter(offer ->
                        offer.id().equals(cheapest.id()) || !offer.ingredient().equals(cheapest.ingredient()))
                .toList());
        var curve = PriceTracing.of(PLANNER, alone, cheapest, BigFraction.ZERO, null)
                .orElseThrow();
        var perLb = curve.points().stream()
                .map(point -> Decimal.round(point.at().multiply(Unit.POUND.factor()), 2)
                        .toPlainString())
                .toList();
        assertThat(perLb).containsSubsequence("2.10", "3.24");
        assertThat(curve.endless()).isTrue();
        assertThat(curve.segments().get(curve.segments().size() - 1).slope()).isEqualTo(BigFraction.ZERO);
    }

    private static Curve curve(String name, Side side) {
        return CURVES.computeIfAbsent(name, key -> traced(name, side));
    }

    private static Curve traced(String name, Side side) {
        var brief = DemoBriefs.read("dumpling-filling");
        return BoundTracing.of(PLANNER, brief, bound(brief, name), side, null, null)
                .orElseThrow();
    }

    private static Bound bound(Brief brief, String name) {
        return brief.bounds().stream()
                .filter(bound -> bound.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static BigFraction costAt(Curve curve, BigFraction at) {
        var last = curve.points().get(curve.points().size() - 1);
        if (at.subtract(last.at()).signum() >= 0) {
            // beyond the last point nothing changes any more
            return last.costPerKg();
        }
        var segment = curve.segments().stream()
                .filter(each -> each.from().subtract(at).signum() <= 0)
                .reduce((first, second) -> second)
                .orElseThrow();
        var start = curve.points().stream()
                .filter(point -> point.at().equals(segment.from()))
                .findFirst()
                .orElseThrow();
        return start.costPerKg().add(segment.slope().multiply(at.subtract(segment.from())));
    }

    private static BigDecimal perLb(BigFraction perKg) {
        return Decimal.round(perKg.multiply(Unit.POUND.factor()), 6);
    }
}
