package panade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static panade.published.Figures.BILLIONTH;
import static panade.published.Figures.assertClose;
import static panade.published.Figures.assertCloseOrNull;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Documents where a slip in units, ratios, lists, offers or decimals shows; each answer was derived by hand. */
class TrickyDocumentsTest {

    private static final List<String> SOLVED = List.of(
            "empty-stage",
            "equalities",
            "lists",
            "max-use-and-bound",
            "odd-prices",
            "rules",
            "two-offers",
            "units",
            "water-per-fat");

    static Stream<TrickySet> sets() {
        return SOLVED.stream().map(TrickySet::of);
    }

    static Stream<TrickySet.Bound> bounds() {
        return sets().flatMap(TrickySet::bounds);
    }

    static Stream<TrickySet> setsWithSeveralSuppliers() {
        return sets().filter(set -> set.expected().has("suppliers"));
    }

    static Stream<TrickySet> setsWithEnteringPrices() {
        return sets().filter(set -> set.expected().has("entersAt"));
    }

    @Test
    void noTrickySetIsPassedOver() {
        assertThat(Documents.namesIn("tricky"))
                .containsExactlyInAnyOrderElementsOf(SOLVED.stream().toList());
        assertThat(bounds()).hasSize(32);
        assertThat(setsWithSeveralSuppliers()).hasSize(1);
        assertThat(setsWithEnteringPrices()).hasSize(2);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sets")
    void theLeastCostIsTheOneDerivedByHand(TrickySet set) {
        JsonNode cost = set.run().optimum().at("/cost/perKg");
        assertClose("cost per kg", cost, set.expected().get("costPerKg").decimalValue(), BILLIONTH);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sets")
    void theBlendIsTheOneDerivedByHand(TrickySet set) {
        JsonNode expected = set.expected().get("shares");
        Map<String, BigDecimal> shares = sharesByPlace(set.run());
        assertThat(shares.keySet()).containsExactlyInAnyOrderElementsOf(expected.propertyNames());
        shares.forEach(
                (place, share) -> assertClose(place, share, expected.get(place).decimalValue(), BILLIONTH));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("setsWithSeveralSuppliers")
    void theCheaperSupplierIsBoughtOutBeforeTheDearer(TrickySet set) {
        set.expected()
                .get("suppliers")
                .properties()
                .forEach(place -> place.getValue()
                        .properties()
                        .forEach(supplier -> assertClose(
                                place.getKey() + " from " + supplier.getKey(),
                                set.run()
                                        .share(row -> place(row).equals(place.getKey())
                                                && row.path("supplier")
                                                        .asString("")
                                                        .equals(supplier.getKey())),
                                supplier.getValue().decimalValue(),
                                BILLIONTH)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bounds")
    void aBoundIsNamedAndMeasuredAsWritten(TrickySet.Bound bound) {
        JsonNode expected = bound.expected();
        JsonNode printed = bound.printed();
        if (expected.has("name")) {
            assertThat(printed.path("name").asString(""))
                    .isEqualTo(expected.get("name").asString());
        }
        assertThat(printed.path("unit").asString(""))
                .as("unit")
                .isEqualTo(expected.get("unit").asString());
        for (String number : List.of("value", "min", "max")) {
            if (expected.has(number)) {
                assertCloseOrNull(number, printed.path(number), expected.get(number), BILLIONTH);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bounds")
    void aBoundBindsWhereItHoldsTheBlendBack(TrickySet.Bound bound) {
        JsonNode expected = bound.expected();
        JsonNode printed = bound.printed();
        if (expected.has("binding")) {
            assertThat(printed.path("binding").asString(null))
                    .as("binding")
                    .isEqualTo(expected.get("binding").asString(null));
        }
        for (String rate : List.of("whenRaised", "whenLowered")) {
            if (expected.has(rate)) {
                assertCloseOrNull(rate, printed.at("/shadowPrice/" + rate), expected.get(rate), BILLIONTH);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("setsWithEnteringPrices")
    void anIngredientLeftOutEntersWhereItMatchesWhatItWouldReplace(TrickySet set) {
        set.expected()
                .get("entersAt")
                .properties()
                .forEach(price -> assertClose(
                        price.getKey(),
                        set.run().entersAt(price.getKey()),
                        price.getValue().decimalValue(),
                        BILLIONTH));
    }

    private static String place(JsonNode row) {
        return row.path("ingredient").asString("") + "@" + row.path("stage").asString("");
    }

    private static Map<String, BigDecimal> sharesByPlace(Run run) {
        return run.blend()
                .filter(row -> row.path("share").decimalValue().signum() != 0)
                .collect(Collectors.toMap(
                        TrickyDocumentsTest::place, row -> row.path("share").decimalValue(), BigDecimal::add));
    }
}
