package panade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static panade.published.Figures.HUNDRED_THOUSANDTH;
import static panade.published.Figures.MILLIONTH;
import static panade.published.Figures.assertClose;
import static panade.published.Figures.assertRoundsTo;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map.Entry;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Blends whose least cost, amounts and shadow prices stand in print, or were computed from printed data with four
 * solvers; each folder's {@code published.json} names the source and how its units map to the documents'.
 */
class PublishedProblemsTest {

    private static final String INFEASIBLE = "ampl_diet2_infeasible";

    private static final List<String> SOLVED = List.of(
            "ampl_diet_basic",
            "ampl_dietobj",
            "catfood_full",
            "chance_feed_mean",
            "chvatal_diet",
            "diet_winston",
            "ifct30",
            "plan_alloy",
            "stigler77");

    static Stream<Optimum> optima() {
        return SOLVED.stream().flatMap(Optimum::in);
    }

    static Stream<PublishedBound> bounds() {
        return optima().flatMap(Optimum::bounds);
    }

    static Stream<PublishedBound> intervals() {
        return bounds().filter(bound -> bound.figures().has("from"));
    }

    static Stream<Optimum> optimaWithEnteringPrices() {
        return optima().filter(optimum -> optimum.enteringPrices().findAny().isPresent());
    }

    @Test
    void noPublishedProblemIsPassedOver() {
        assertThat(Documents.namesIn("published"))
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(SOLVED.stream(), Stream.of(INFEASIBLE)).toList());
        assertThat(optima()).hasSize(11);
        assertThat(bounds()).hasSize(108);
        assertThat(intervals()).hasSize(19);
        assertThat(optima().flatMap(Optimum::amounts)).hasSize(94);
        assertThat(optima().flatMap(Optimum::enteringPrices)).hasSize(115);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("optima")
    void theCheapestBlendCostsWhatItsSourceSays(Optimum optimum) {
        JsonNode objective = optimum.figures().get("objective");
        BigDecimal cost = optimum.run().optimum().at("/cost/perKg").decimalValue();
        BigDecimal found = cost.multiply(optimum.objectivePerCostPerKg());
        assertClose("least cost", found, objective.get("value").decimalValue(), MILLIONTH);
        if (objective.has("printed")) {
            assertRoundsTo("least cost", found, objective.get("printed").decimalValue());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("optima")
    void theCheapestBlendIsTheOnlyOneAndHoldsThePublishedAmounts(Optimum optimum) {
        Run run = optimum.run();
        JsonNode amounts = optimum.figures().get("amounts");
        BigDecimal shareTimes = amounts.get("shareTimes").decimalValue();
        assertThat(amounts.get("unique").asBoolean()).isTrue();
        assertThat(run.optimum().path("unique").asBoolean(false)).as("unique").isTrue();
        optimum.amounts().forEach(amount -> {
            BigDecimal share = run.share(row -> isOf(row, amount.getKey()));
            assertClose(
                    amount.getKey(),
                    share.multiply(shareTimes),
                    amount.getValue().decimalValue(),
                    MILLIONTH);
        });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("optima")
    void theCheapestBlendIsWholeAndHoldsNothingUnpublished(Optimum optimum) {
        Run run = optimum.run();
        List<String> published = optimum.amounts().map(Entry::getKey).toList();
        assertClose("all shares", run.share(row -> true), BigDecimal.ONE, MILLIONTH);
        assertThat(run.blend()
                        .filter(row -> row.path("share").decimalValue().signum() != 0)
                        .map(row -> row.path("ingredient").asString())
                        .filter(ingredient -> !ingredient.equals("nothing")))
                .isNotEmpty()
                .isSubsetOf(published);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bounds")
    void aBoundCostsItsOneSidedShadowPrices(PublishedBound bound) {
        JsonNode rates = bound.printed().path("shadowPrice");
        assertClose("when raised", rates.path("whenRaised"), bound.rateRaised(), MILLIONTH);
        assertClose("when lowered", rates.path("whenLowered"), bound.rateLowered(), MILLIONTH);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bounds")
    void aBoundBindsOnThePublishedSideAtThePublishedValue(PublishedBound bound) {
        JsonNode printed = bound.printed();
        assertThat(printed.path("binding").asString(null))
                .as("binding")
                .isEqualTo(bound.figures().get("binding").asString(null));
        JsonNode value = bound.figures().path("value");
        if (!value.isMissingNode()) {
            assertClose("value", printed.path("value"), perUnit(bound, value), MILLIONTH);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("intervals")
    void theShadowPricesHoldOverThePublishedInterval(PublishedBound bound) {
        JsonNode rates = bound.printed().path("shadowPrice");
        assertEnd("from", rates.path("from"), bound);
        assertEnd("to", rates.path("to"), bound);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("optimaWithEnteringPrices")
    void anIngredientLeftOutEntersAtItsPriceLessItsReducedCost(Optimum optimum) {
        BigDecimal priceTimes =
                optimum.figures().at("/costIntervals/pricePerKgTimes").decimalValue();
        optimum.enteringPrices().forEach(interval -> {
            BigDecimal published = interval.getValue().get(0).decimalValue();
            JsonNode entersAt = optimum.run().entersAt(interval.getKey());
            if (published.signum() < 0 && entersAt.isNull()) {
                return; // no supplier pays the buyer: "none" is as true as the negative figure
            }
            assertClose(interval.getKey(), entersAt, Figures.divide(published, priceTimes), MILLIONTH);
        });
    }

    /** Fourer, Gay, Kernighan, "AMPL", 2nd ed. 2003, section 2.3: no dinners keep within 40 g of sodium. */
    @Test
    void dinnersThatCannotKeepWithinTheirSodiumAreInfeasible() {
        Run run = Run.blend(Documents.folder("published/" + INFEASIBLE).resolve("constraints/brief.json"));
        assertThat(run.status()).as(run.messages()).isEqualTo(4);
        assertThat(run.result().path("status").asString()).isEqualTo("infeasible");
    }

    private static boolean isOf(JsonNode row, String ingredient) {
        return row.path("ingredient").asString("").equals(ingredient);
    }

    private static void assertEnd(String side, JsonNode actual, PublishedBound bound) {
        JsonNode published = bound.figures().get(side);
        if (published.isNumber()) {
            assertClose(side, actual, perUnit(bound, published), HUNDRED_THOUSANDTH);
        } else {
            assertThat(published.asString()).isEqualTo("unbounded");
            assertUnbounded(side, actual);
        }
    }

    /** A floor may be lowered for ever; a nought says the same of what can't be negative. */
    private static void assertUnbounded(String side, JsonNode actual) {
        assertThat(actual.isNull()
                        || (side.equals("from") && actual.decimalValue().signum() <= 0))
                .as("%s is unbounded: %s", side, actual)
                .isTrue();
    }

    private static BigDecimal perUnit(PublishedBound bound, JsonNode published) {
        return Figures.divide(published.decimalValue(), bound.limitPerUnit());
    }
}
