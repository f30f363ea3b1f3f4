package panade.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.reach.ShelfTarget;
import panade.testing.Planners;

/**
 * What a packed pound costs, reckoned for the whole batch as its owner would: all money paid, over all pounds packed.
 * Figures invented.
 */
class FullCostTest {
    private static final Planner PLANNER = Planners.LINEAR;

    @TempDir
    private Path folder;

    @Test
    void labourIsPaidByWhatIsPacked() throws IOException {
        // 48 min at 19/h are 15.20; of 12 lb 4 % are lost, 11.52 are packed; ingredients 1.6743 x 12 / 11.52
        var cost = cost(
                "12 lb", "1.6743/lb", "{\"labour\": {\"minutes\": 48, \"perHour\": 19}, \"processLoss\": \"4 %\"}");
        assertThat(perLb(cost.labour())).isEqualByComparingTo("1.3194");
        assertThat(perLb(cost.packed())).isEqualByComparingTo("3.0635");
    }

    @Test
    void everyMinuteOfTheBatchIsPaidByWhatIsPacked() throws IOException {
        // 36 + 9 x 1.5 = 49.5 min at 24/h are 19.80; ingredients 24.30; 8.1 lb are packed; .20 and .30 a packed lb more
        var cost = cost("9 lb", "2.70/lb", """
                {"labour": {"minutes": 36, "minutesPerLb": 1.5, "perHour": 24},
                 "packaging": "0.20/lb", "overhead": "0.30/lb", "processLoss": "10 %"}""");
        assertThat(perLb(cost.ingredients())).isEqualByComparingTo("2.7000");
        assertThat(perLb(cost.packedIngredients())).isEqualByComparingTo("3.0000");
        assertThat(perLb(cost.labour())).isEqualByComparingTo("2.4444");
        assertThat(perLb(cost.packed())).isEqualByComparingTo("5.9444");
        // a serving of 4 oz is a quarter of that
        assertThat(Decimal.round(Objects.requireNonNull(cost.perServing()), 4)).isEqualByComparingTo("1.4861");
        // 20 lb: 66 min are 26.40, over 18 lb
        assertThat(size(cost, "20 lb")).isEqualByComparingTo("4.9667");
        assertThat(size(cost, "9 lb")).isEqualByComparingTo("5.9444");
    }

    @Test
    void fixedCostsArePaidByWhatASalePaysAboveAllButOverhead() throws IOException {
        var cost = cost("9 lb", "2.70/lb", """
                {"labour": {"minutes": 36, "minutesPerLb": 1.5, "perHour": 24},
                 "packaging": "0.20/lb", "overhead": "0.30/lb", "processLoss": "10 %"}""");
        // 8.6444 - 5.6444 = 3 a lb: 900 a month take 300 lb
        var price = cost.packed().subtract(cost.overhead()).add(perKg(new BigDecimal("3")));
        var sold = Objects.requireNonNull(cost.breakEven(BigFraction.of(900), price));
        assertThat(Decimal.round(Unit.POUND.fromBase(sold), 6)).isEqualByComparingTo("300");
    }

    @Test
    void theTargetPutBackAsIngredientsCostsWhatTheShelfLeaves() throws IOException {
        var random = new Random(20);
        for (int i = 0; i < 40; i++) {
            var brief = brief(batch(random), "2.70/lb", costs(random), shelf(random));
            var shelf = Objects.requireNonNull(brief.practice().shelf());
            var target = ShelfTarget.of(brief, shelf);
            var paid = shelf.margins().stream()
                    .map(BigFraction.ONE::subtract)
                    .reduce(shelf.price().perKg(), BigFraction::multiply);
            var blend = blended(brief).blend();
            var packed = FullCost.of(brief, blend).packed();
            var kept = BigFraction.ONE.subtract(
                    Objects.requireNonNull(brief.practice().costs()).processLoss());
            var spare = target.perKg().subtract(blend.rawCostPerKg()).divide(kept);
            assertThat(packed.add(spare)).isEqualTo(paid);
        }
    }

    @Test
    void theBatchThatPaysItsLabourLeavesJustTheIngredients() throws IOException {
        var random = new Random(21);
        int paid = 0;
        for (int i = 0; i < 40; i++) {
            var brief = brief(batch(random), "2.70/lb", costs(random), shelf(random));
            var shelf = Objects.requireNonNull(brief.practice().shelf());
            var ingredients = blended(brief).blend().rawCostPerKg();
            var batch = ShelfTarget.batchFor(brief, shelf, ingredients);
            if (batch.isPresent()) {
                var made = brief.withBatch(Quantity.of(batch.get(), Unit.of("kg"), "a batch"));
                assertThat(ShelfTarget.of(made, shelf).perKg()).isEqualTo(ingredients);
                paid++;
            }
        }
        assertThat(paid).isGreaterThan(5);
    }

    private static String batch(Random random) {
        return (5 + random.nextInt(40)) + " lb";
    }

    private static String costs(Random random) {
        return """
                {"labour": {"minutes": %s, "minutesPerLb": %s, "perHour": %s},
                 "packaging": "0.2%s/lb", "overhead": "0.3%s/lb", "processLoss": "%s %%"}""".formatted(
                        1 + random.nextInt(90),
                        random.nextInt(3),
                        12 + random.nextInt(20),
                        random.nextInt(10),
                        random.nextInt(10),
                        random.nextInt(30));
    }

    private static String shelf(Random random) {
        return "{\"price\": \"%s.%s/lb\", \"margins\": [\"%s %%\", \"%s %%\"]}"
                .formatted(7 + random.nextInt(6), random.nextInt(10), 10 + random.nextInt(20), 10 + random.nextInt(20));
    }

    private static BigDecimal size(FullCost cost, String batch) {
        return cost.sizes().stream()
                .filter(size -> size.batch().text().equals(batch))
                .map(size -> perLb(size.packed()))
                .findFirst()
                .orElseThrow();
    }

    private static BigDecimal perLb(BigFraction perKg) {
        return Decimal.round(perKg.multiply(Unit.POUND.factor()), 4);
    }

    private static BigFraction perKg(BigDecimal perLb) {
        return Decimal.of(perLb).divide(Unit.POUND.factor());
    }

    private FullCost cost(String batch, String price, String costs) throws IOException {
        var brief = brief(batch, price, costs, "{\"price\": \"9/lb\", \"margins\": [\"20 %\"]}");
        return FullCost.of(brief, blended(brief).blend());
    }

    private static Blended blended(Brief brief) {
        return (Blended) PLANNER.answer(brief);
    }

    private Brief brief(String batch, String price, String costs, String shelf) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "t", "source": "invented", "ingredients": [{"id": "all", "values": {"FAT": 20}}]}
                """);
        var money = List.of(price.split("/"));
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\nall,a," + money.get(0) + "," + money.get(1) + "\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "t", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "%s", "serving": "4 oz",
                 "bounds": [], "costs": %s, "shelf": %s}
                """.formatted(batch, costs, shelf));
        var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
