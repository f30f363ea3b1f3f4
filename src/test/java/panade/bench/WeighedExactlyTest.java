package panade.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.bench.BatchSheet.Line;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.testing.Planners;

/**
 * Bench sheets of two or three ingredients whose weights can be checked by hand: grams of fat and of protein are added
 * up here from the numbers themselves. Invented.
 */
class WeighedExactlyTest {
    private static final Planner PLANNER = Planners.FULL;
    private static final String LARD_AND_WATER = """
            {"id": "a", "values": {"FAT": 100}}, {"id": "b", "values": {"FAT": 0}}""";
    private static final BigFraction HAIR = BigFraction.of(1, 1_000_000_000);

    @TempDir
    private Path folder;

    @Test
    void aFixedNumberThatTheScaleCannotHitIsToldAsMissed() throws IOException {
        // in kilograms 2 kg hold 0, 50 or 100 % of fat
        var brief = brief(LARD_AND_WATER, "2 kg", """
                {"name": "fat", "property": "FAT", "min": "20 %", "max": "20 %"}""", "");
        var sheet = sheet(brief, "1 kg");
        assertThat(sheet.isMet()).isFalse();
        assertThat(sheet.fails()).allMatch(BatchSheet.Fail::fixed);
        assertThat(sheet.fails()).hasSize(1);
        assertThat(sheet.fails().get(0).reaches()).isEqualTo(BigFraction.ZERO);
        assertThat(sheet.fails().get(0).needs()).isEqualTo(BigFraction.of(20));
        // 2 kg of b are 400 g of fat short, 1 kg of each is 600 g over
        assertThat(sheet.total()).isEqualTo(BigFraction.of(2));
        // 200 g is the coarsest of those tried that has 400 g of 2 kg
        var finer = Objects.requireNonNull(sheet.fineEnough());
        assertThat(sheet(brief, finer.text()).isMet()).isTrue();
        assertThat(finer.base()).isEqualTo(BigFraction.of(1, 5));
    }

    @Test
    void aWeightThatAFixedNumberHoldsHasNoRoom() throws IOException {
        var brief = brief(LARD_AND_WATER, "2 kg", """
                {"name": "fat", "property": "FAT", "min": "20 %", "max": "20 %"}""", "");
        var sheet = sheet(brief, "1 g");
        assertThat(sheet.isMet()).isTrue();
        assertThat(sheet.lines().stream().map(Line::weight))
                .containsExactlyInAnyOrder(BigFraction.of(4, 10), BigFraction.of(16, 10));
        assertThat(sheet.lines())
                .allMatch(line ->
                        line.least().equals(line.weight()) && line.weight().equals(line.most()));
    }

    @Test
    void aFixedNumberIsMissedByAsLittleAsTheScaleAllows() throws IOException {
        // 970 to 1030 g are 33 or 34 steps of 30 g, of which no whole number is 7 %
        var brief = brief(LARD_AND_WATER, "1 kg", """
                {"name": "fat", "property": "FAT", "min": "7 %", "max": "7 %"}""", "");
        var sheet = sheet(brief, "30 g");
        assertThat(sheet.isMet()).isFalse();
        var reaches = Objects.requireNonNull(sheet.fails().get(0).reaches());
        var miss = reaches.subtract(BigFraction.of(7)).abs();
        var least = BigFraction.of(100);
        for (int all = 33; all <= 34; all++) {
            for (int fat = 0; fat <= 5; fat++) {
                var off = BigFraction.of(100 * fat, all).subtract(7).abs();
                least = off.subtract(least).signum() < 0 ? off : least;
            }
        }
        assertThat(miss.subtract(least).signum()).isNotPositive();
    }

    @Test
    void aScaleWhoseStepIsMoreThanTheBatchWeighsWithoutAFault() throws IOException {
        var brief = brief(LARD_AND_WATER, "2 kg", """
                {"property": "FAT", "min": "10 %", "max": "20 %"}""", "");
        assertThat(sheet(brief, "10 kg").lines()).hasSize(2);
        assertThat(sheet(brief, "2 kg").isMet()).isFalse();
        // each of the two is less than half a step, so rounding each alone leaves nothing at all
        assertThat(sheet(brief, "5 kg").plainFails()).isNotEmpty();
    }

    @Test
    void goodsThatRunOutAreMadeUpFromTheNextSupplier() throws IOException {
        var brief = brief(
                LARD_AND_WATER, "1 kg", """
                {"property": "FAT", "min": "50.05 %"}""", "b,third,3,kg,\na,spare,9,kg,\n", "a,first,1,kg,0.3 kg\na,second,2,kg,\n");
        var sheet = sheet(brief, "1 g");
        assertThat(sheet.isMet()).isTrue();
        assertThat(sheet.fails()).isEmpty();
    }

    @Test
    void aSearchThatEndedBeforeItWasDoneIsTold() throws IOException {
        var brief = brief(LARD_AND_WATER, "2 kg", """
                {"name": "fat", "property": "FAT", "min": "20.3 %", "max": "20.4 %"}""", "");
        // nobody searches for whole steps here, so no claim is ever made
        var alone = Planners.LINEAR;
        var sheet =
                Weighing.of(alone, (Blended) alone.answer(brief), new Scales(weight("100 g"), null, BigFraction.ZERO));
        assertThat(sheet.isMet()).isFalse();
        assertThat(sheet.endedEarly()).isTrue();
        assertThat(sheet(brief, "1 g").endedEarly()).isFalse();
    }

    @Test
    void everyBandHoldsAtItsEndsAndBreaksBeyondThem() throws IOException {
        var random = new Random(47);
        int bands = 0;
        int missed = 0;
        for (int i = 0; i < 60; i++) {
            int[] fat = {random.nextInt(90), random.nextInt(30), random.nextInt(10)};
            int[] protein = {random.nextInt(20), random.nextInt(60), random.nextInt(40)};
            int step = List.of(1, 5, 10, 25).get(random.nextInt(4));
            int leastFat = 5 + random.nextInt(15);
            int mostFat = leastFat + random.nextInt(2) * random.nextInt(4);
            int leastProtein = random.nextInt(20);
            var set = new ArrayList<String>();
            for (int k = 0; k < 3; k++) {
                set.add("{\"id\": \"%s\", \"values\": {\"FAT\": %s, \"PROCNT\": %s}}"
                        .formatted("abc".substring(k, k + 1), Math.min(fat[k], 100 - protein[k]), protein[k]));
                fat[k] = Math.min(fat[k], 100 - protein[k]);
            }
            var brief = brief(
                    String.join(",", set),
                    "700 g",
                    """
                    {"property": "FAT", "min": "%s %%", "max": "%s %%"}, {"property": "PROCNT", "min": "%s %%"}""".formatted(leastFat, mostFat, leastProtein),
                    "c,third,%s,kg,\n".formatted(1 + random.nextInt(5)));
            if (!(PLANNER.answer(brief) instanceof Blended blended)) {
                continue;
            }
            var sheet = Weighing.of(PLANNER, blended, new Scales(weight(step + " g"), null, BigFraction.ZERO));
            var weights = sheet.lines().stream().map(Line::weight).toList();
            int[] limits = {leastFat, mostFat, leastProtein};
            assertThat(sheet.isMet()).isEqualTo(keeps(sheet, weights, fat, protein, limits));
            if (!sheet.isMet()) {
                missed++;
                continue;
            }
            for (int l = 0; l < weights.size(); l++) {
                var line = sheet.lines().get(l);
                assertThat(keeps(sheet, with(weights, l, line.least()), fat, protein, limits))
                        .isTrue();
                if (line.least().signum() > 0) {
                    var below = line.least().subtract(HAIR);
                    assertThat(keeps(sheet, with(weights, l, below), fat, protein, limits))
                            .isFalse();
                }
                var most = line.most();
                if (most != null) {
                    assertThat(keeps(sheet, with(weights, l, most), fat, protein, limits))
                            .isTrue();
                    assertThat(keeps(sheet, with(weights, l, most.add(HAIR)), fat, protein, limits))
                            .isFalse();
                }
                bands++;
            }
        }
        assertThat(bands).isGreaterThan(30);
        assertThat(missed).isPositive();
    }

    private static List<BigFraction> with(List<BigFraction> weights, int line, BigFraction weight) {
        var changed = new ArrayList<>(weights);
        changed.set(line, weight);
        return changed;
    }

    /** Fat between a least and a most and protein from a least, in per cent of all that is weighed. */
    private static boolean keeps(BatchSheet sheet, List<BigFraction> weights, int[] fat, int[] protein, int[] limits) {
        var allFat = BigFraction.ZERO;
        var allProtein = BigFraction.ZERO;
        var all = BigFraction.ZERO;
        for (int l = 0; l < weights.size(); l++) {
            int k = "abc".indexOf(sheet.lines().get(l).use().ingredient());
            allFat = allFat.add(weights.get(l).multiply(fat[k]));
            allProtein = allProtein.add(weights.get(l).multiply(protein[k]));
            all = all.add(weights.get(l));
        }
        return allFat.subtract(all.multiply(limits[0])).signum() >= 0
                && allFat.subtract(all.multiply(limits[1])).signum() <= 0
                && allProtein.subtract(all.multiply(limits[2])).signum() >= 0;
    }

    private static BatchSheet sheet(Brief brief, String step) {
        return Weighing.of(PLANNER, (Blended) PLANNER.answer(brief), new Scales(weight(step), null, BigFraction.ZERO));
    }

    private static Quantity weight(String text) {
        return Quantity.parse(text).orElseThrow();
    }

    private Brief brief(String ingredients, String batch, String bounds, String more) throws IOException {
        return brief(ingredients, batch, bounds, more, "a,first,1,kg,\n");
    }

    private Brief brief(String ingredients, String batch, String bounds, String more, String first) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "t", "source": "invented", "ingredients": [%s]}
                """.formatted(ingredients));
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per,available\n" + first + "b,second,2,kg,\n" + more);
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "t", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "%s", "bounds": [%s]}
                """.formatted(batch, bounds));
        var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
