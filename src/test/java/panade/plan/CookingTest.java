package panade.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.cost.FullCost;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.quantity.Decimal;
import panade.testing.Planners;

/**
 * A patty that keeps 87.9 % of its weight and 69.5 % of its fat, as a beef patty does in the USDA Table of Cooking
 * Yields for Meat and Poultry, release 2 (2014); water makes up the rest of the loss. Composition invented.
 */
class CookingTest {
    private static final Planner PLANNER = Planners.LINEAR;

    @Test
    void cooked_fat_is_raw_fat_times_fat_kept_over_yield(@TempDir Path folder) throws IOException {
        // fat lost 18 x .305 = 5.49 g; water lost 12.1 - 5.49 = 6.61 g of 60
        var blended = blend(folder, """
                {"name": "fat", "property": "FAT", "state": "cooked", "max": "40 %"},
                {"name": "protein", "property": "PROCNT", "state": "cooked", "max": "40 %"},
                {"name": "energy", "property": "ENERC", "state": "cooked", "max": "900 kcal/100g"},
                {"name": "weight", "kind": "patty", "state": "cooked", "max": "5 kg"}
                """);
        assertThat(value(blended, "fat")).isCloseTo(new BigDecimal("14.2321"), within(new BigDecimal("0.0001")));
        assertThat(value(blended, "protein")).isCloseTo(new BigDecimal("25.0284"), within(new BigDecimal("0.0001")));
        // (22 x 4 + 12.51 x 9) / .879
        assertThat(value(blended, "energy")).isCloseTo(new BigDecimal("228.2025"), within(new BigDecimal("0.0001")));
        assertThat(value(blended, "weight")).isEqualByComparingTo("1.758");
    }

    @Test
    void a_cooked_pound_costs_the_raw_one_over_its_yield(@TempDir Path folder) throws IOException {
        var blended = blend(folder, "");
        var full = FullCost.of(blended.brief(), blended.blend());
        assertThat(Decimal.round(Objects.requireNonNull(full.cookedPart()), 6)).isEqualByComparingTo("0.879");
        assertThat(blended.blend().costPerKg())
                .satisfies(cost -> assertThat(Decimal.round(cost, 9)).isEqualByComparingTo("5.688282139"));
    }

    @Test
    void iceThatCooksAwayLeavesTheCostToTheRest(@TempDir Path folder) throws IOException {
        // 20 % of ice at .10 and 80 % of pea at 3.00, of which 90 % stays: 2.42 / .72
        var blended = (Blended) outcome(folder, "0.1", "20 %");
        assertThat(Decimal.round(blended.blend().costPerKg(), 6)).isEqualByComparingTo("3.361111");
    }

    @Test
    void whereAllCooksAwayThereIsNoCostPerCookedWeight(@TempDir Path folder) throws IOException {
        assertThat(outcome(folder, "0.1", "100 %"))
                .isInstanceOfSatisfying(
                        Outcome.Undecided.class,
                        open -> assertThat(open.reason()).contains("weighs anything once it is cooked"));
    }

    @Test
    void freeIceThatCooksAwayTiesWithWhatKeepsItsWeight(@TempDir Path folder) throws IOException {
        // ice alone costs nothing and weighs nothing; pea alone costs 3.00 for .9
        var outcome = outcome(folder, "0", "0 %");
        if (outcome instanceof Blended blended) {
            assertThat(blended.blend().costPerKg()).isEqualTo(BigFraction.of(10, 3));
        } else {
            assertThat(outcome).isInstanceOf(Outcome.Undecided.class);
        }
    }

    private static Outcome outcome(Path folder, String icePrice, String leastIce) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "t", "source": "invented", "ingredients": [
                 {"id": "ice", "values": {"WATER": 100}, "others": 0},
                 {"id": "pea", "values": {"WATER": 10, "PROCNT": 60}, "others": 0}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\nice,tap," + icePrice + ",kg\npea,mill,3,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "t", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "1 kg",
                 "costBasis": "cooked", "cooking": {"lose": {"WATER": "100 %%"}},
                 "bounds": [{"ingredient": "ice", "min": "%s"}]}
                """.formatted(leastIce));
        var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return PLANNER.plan(((Reading.Accepted<Brief>) reading).value());
    }

    private static BigDecimal value(Blended blended, String name) {
        return blended.explanation().limits().stream()
                .filter(limit -> limit.name().equals(name))
                .map(limit -> Decimal.round(Objects.requireNonNull(limit.value()), 6))
                .findFirst()
                .orElseThrow();
    }

    private static Blended blend(Path folder, String bounds) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "grill", "source": "invented",
                 "traits": {"ENERC": {"sum": {"PROCNT": 4, "FAT": 9}}},
                 "ingredients": [{"id": "patty", "kinds": ["patty"],
                   "values": {"WATER": 60, "FAT": 18, "PROCNT": 22}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\npatty,a,5,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "patty", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "2 kg", "costBasis": "cooked",
                 "cooking": {"lose": {"FAT": "30.5 %%", "WATER": "11.016666666666667 %%"}},
                 "bounds": [%s]}
                """.formatted(bounds));
        var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return (Blended) PLANNER.plan(((Reading.Accepted<Brief>) reading).value());
    }
}
