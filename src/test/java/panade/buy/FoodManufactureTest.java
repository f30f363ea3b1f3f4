package panade.buy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.Rule;
import panade.domain.purchase.Storage;
import panade.domain.purchase.StoreRoom;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.testing.CommandRun;
import panade.testing.Planners;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * H. P. Williams, "Model Building in Mathematical Programming", 5th ed. 2013, food manufacture (12.1, 12.2; answers in
 * part 14): oils bought, stored and blended over six months. Profit is 150 a ton made less all that is paid.
 */
class FoodManufactureTest {
    private static final Planner PLANNER = Planners.FULL;
    private static final Path FOOD = Path.of("src", "test", "resources", "buying", "food");

    @Test
    void six_months_of_oils_earn_the_published_107843() {
        var profit = new BigDecimal(150 * 450 * 6).subtract(cash("food1", "months"));
        assertThat(profit).isCloseTo(new BigDecimal("107842.5926"), within(new BigDecimal("0.001")));
    }

    @Test
    void with_logical_conditions_they_earn_the_published_100279() {
        // tons a month in the published optimum
        var made = List.of(450, 450, 450, 405, 405, 450);
        var periods = new ArrayList<Period>();
        for (int month = 1; month <= made.size(); month++) {
            var tons = made.get(month - 1);
            var brief = atLeast(20, tons, brief(month, tons));
            var product =
                    new Product((Blended) PLANNER.answer(brief), brief.batch().base());
            periods.add(new Period("month " + month, List.of(product)));
        }
        var ids = periods.get(0)
                .products()
                .get(0)
                .best()
                .asked()
                .set()
                .ingredients()
                .keySet();
        var half = BigFraction.of(500_000);
        var room = StoreRoom.holding(Map.of(), all(ids, half));
        var storage = new Storage(BigFraction.of(5, 1000), all(ids, half.multiply(2)), all(ids, half), Map.of());
        var plan = Buying.answers(PLANNER, periods, room, storage, LeftoverWorth.NOTHING, Duration.ofSeconds(60))
                .leastCash()
                .orElseThrow();
        var profit = new BigDecimal(150 * (450 * 4 + 405 * 2)).subtract(Decimal.round(plan.cash(), 6));
        assertThat(plan.finished()).isTrue();
        assertThat(profit).isCloseTo(new BigDecimal("100278.7037"), within(new BigDecimal("0.001")));
    }

    private static Map<String, BigFraction> all(Set<String> ids, BigFraction kilograms) {
        return ids.stream().collect(Collectors.toMap(id -> id, id -> kilograms));
    }

    private static Brief brief(int month, int tons) {
        var prices = FOOD.resolve("prices-" + month + ".csv");
        var reading = Documents.readBrief(
                FOOD.resolve("food2.json"), new Overrides(List.of(prices), tons + " t", List.of(), null));
        return ((Reading.Accepted<Brief>) reading).value();
    }

    /** The brief with a least use of so many tons of those made. */
    private static Brief atLeast(int tons, int made, Brief brief) {
        var share = Quantity.of(BigFraction.of(tons, made), Unit.of("g/g"), tons + " t");
        return brief.withRules(brief.practice().rules().stream()
                .map(rule -> rule instanceof Rule.WhenUsed whenUsed
                        ? new Rule.WhenUsed(whenUsed.ingredients(), share, whenUsed.path(), whenUsed.origin())
                        : rule)
                .toList());
    }

    @Test
    void stores_stay_within_their_limits_and_end_as_they_began() {
        var periods = result("food1", "months").get("leastCash").get("periods");
        for (var period : periods) {
            for (var stock : period.get("store")) {
                assertThat(stock.get("left").decimalValue()).isLessThanOrEqualTo(new BigDecimal(1_000_000));
                var gone =
                        stock.get("used").decimalValue().add(stock.get("left").decimalValue());
                var there = stock.get("before")
                        .decimalValue()
                        .add(stock.get("bought").decimalValue());
                assertThat(gone).isCloseTo(there, within(new BigDecimal("0.000001")));
            }
        }
        periods.get(5)
                .get("store")
                .forEach(stock ->
                        assertThat(stock.get("left").decimalValue()).isGreaterThanOrEqualTo(new BigDecimal(500_000)));
    }

    private static BigDecimal cash(String brief, String months) {
        return result(brief, months).get("leastCash").get("cash").decimalValue();
    }

    private static JsonNode result(String brief, String months) {
        var run = CommandRun.of(
                "buy",
                FOOD.resolve(brief + ".json") + "=450t",
                "--periods",
                FOOD.resolve(months + ".json").toString(),
                "--stock",
                FOOD.resolve("stock.csv").toString(),
                "--json");
        assertThat(run.status()).isZero();
        return JsonMapper.shared().readTree(run.output());
    }
}
