package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is made when prices and contents vary, against closed forms. Half oats at 1, a fifth soybeans at 5 and 0.3 beans
 * at 3 cost 0.5 + 1 + 0.9 = 2.4 a kilogram; each even within a tenth either way, the cost has the variance (0.05^2 +
 * 0.1^2 + 0.09^2) / 3. Beans of 30 % protein with a deviation of 2 make 17 % with one of 0.6.
 */
class FormulaStudyTest {
    private static final double DEVIATION = Math.sqrt((0.05 * 0.05 + 0.1 * 0.1 + 0.09 * 0.09) / 3);

    @TempDir
    private Path folder;

    private Grains grains;

    @BeforeEach
    void write() throws IOException {
        grains = new Grains(folder);
        grains.made("5000", "2000", "3000");
    }

    private void vary(String limits) throws IOException {
        grains.write("set.json", """
                {"ingredients": [
                  {"id": "oats", "values": {"PROCNT": 0}, "others": 0, "allergens": []},
                  {"id": "soybeans", "values": {"PROCNT": 40}, "others": 0, "allergens": []},
                  {"id": "beans", "values": {"PROCNT": 30}, "others": 0, "spread": {"PROCNT": 2}, "allergens": []}]}
                """);
        grains.brief(limits, "");
    }

    @Test
    void theCostOfWhatIsMadeVariesAsItsPricesDo() {
        var study = Grains.json(grains.run("study", "made.json", "--spread", "10 %", "--json"));
        var cost = study.get("cost");
        assertThat(cost.get("todayPerKg").asDouble()).isCloseTo(2.4, within(1e-12));
        assertThat(cost.get("meanPerKg").asDouble()).isCloseTo(2.4, within(0.003));
        assertThat(cost.get("deviationPerKg").asDouble()).isCloseTo(DEVIATION, within(0.02 * DEVIATION));
        assertThat(cost.get("lowestPerKg").asDouble()).isBetween(2.16, 2.2);
        assertThat(cost.get("highestPerKg").asDouble()).isBetween(2.6, 2.64);
        assertThat(study.get("contents").isNull()).isTrue();
        assertThat(study.get("brokenToday").get(0).asString()).isEqualTo("protein");
        var still = Grains.json(grains.run("study", "made.json", "--spread", "0 %", "--draws", "7", "--json"));
        assertThat(still.get("cost").get("lowestPerKg").asDouble()).isEqualTo(2.4);
        assertThat(still.get("cost").get("deviationPerKg").asDouble()).isZero();
    }

    /** One deviation below the mean: 84.13 % of a normal distribution lie above it, and 95 % above 17 - 1.645 x 0.6. */
    @Test
    void itStaysInsideItsBoundsAsOftenAsTheNormalDistributionSays() throws IOException {
        vary("\"min\": \"16.4 %\"");
        var contents = Grains.json(
                        grains.run("study", "made.json", "--draws", "4000", "--compositions", "4000", "--json"))
                .get("contents");
        assertThat(contents.get("values").asInt()).isEqualTo(1);
        assertThat(contents.get("inside").asInt() / 4000.0).isCloseTo(0.8413, within(0.02));
        var broken = contents.get("broken").get(0);
        assertThat(broken.get("draws").asInt())
                .isEqualTo(4000 - contents.get("inside").asInt());
        assertThat(broken.get("oneInTwenty").asDouble()).isCloseTo(17 - 1.645 * 0.6, within(0.06));
        assertThat(Grains.words(grains.run("study", "made.json", "--draws", "100")))
                .contains("At the values as stated it keeps every bound that could be measured.")
                .contains("state a spread for 1 value. Drawn 100 times, it keeps every bound in");
    }

    /** A bound of weights is not changed by what anything holds: it is broken in every draw. */
    @Test
    void aBoundThatIsBrokenWhateverItHoldsLeavesNoDrawInside() throws IOException {
        vary("\"min\": \"1 %\"}, {\"name\": \"more oats\", \"ingredient\": \"oats\", \"min\": \"60 %\"");
        var study = Grains.json(grains.run("study", "made.json", "--draws", "50", "--json"));
        assertThat(study.get("contents").get("inside").asInt()).isZero();
        assertThat(study.get("contents").get("broken")).isEmpty();
        assertThat(study.get("brokenToday").get(0).asString()).isEqualTo("more oats");
    }

    @Test
    void whatIsExactAnywayIsNotProvedAgain() {
        assertThat(grains.run("study", "made.json", "--prove").status()).isEqualTo(2);
    }
}
