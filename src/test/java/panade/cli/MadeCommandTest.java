package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a formula costs, holds and breaks, worked by hand. 5 kg rice at 1, 2 kg peas at 5 and 3 kg lentils at 3 cost 24
 * and hold 170 in 1000 of protein; two thirds of lentils hold 20 % at 7/3 a kilogram. Invented.
 */
class MadeCommandTest {
    private static final String FORMULA = "\"rice\": \"5 kg\", \"peas\": \"2 kg\", \"lentils\": \"3 kg\"";

    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [
                  {"id": "rice", "name": "cooked rice", "values": {"PROCNT": 0}, "allergens": []},
                  {"id": "peas", "values": {"PROCNT": 40}, "allergens": []},
                  {"id": "lentils", "values": {"PROCNT": 30}, "allergens": []},
                  {"id": "truffle", "values": {"PROCNT": 0}, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\nrice,s,1,kg\npeas,s,5,kg\nlentils,s,3,kg\n");
        brief("20 %", "");
    }

    private void brief(String protein, String more) throws IOException {
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "loaf", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "1 kg", %s
                 "bounds": [{"name": "protein", "property": "PROCNT", "min": "%s"},
                            {"name": "some rice", "ingredient": "rice", "min": "1 %%"}]}
                """.formatted(more, protein));
    }

    private CommandRun made(String weighed, String... options) throws IOException {
        var file = Files.writeString(
                folder.resolve("formula.json"),
                "{\"title\": \"loaf as made\", \"brief\": \"brief.json\", \"made\": {\"mix\": {" + weighed + "}}}");
        var words = new String[options.length + 2];
        words[0] = "made";
        words[1] = file.toString();
        System.arraycopy(options, 0, words, 2, options.length);
        return CommandRun.of(words);
    }

    private static String words(CommandRun run) {
        return run.output().replaceAll("\\s+", " ");
    }

    @Test
    void whatIsPaidAndBrokenIsToldAndWhereTheDistanceComesFrom() throws IOException {
        var run = made(FORMULA);
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(words(run))
                .contains("As made, 10000 g cost 24.00 USD, 1.0886 USD/lb.")
                .contains("every bound costs 1.0584 USD/lb, 0.0302 less.")
                .contains("- protein: 17, at least 20 % is asked: 3 too little.", "It keeps 1 other bound.")
                .containsPattern("peas +2000 +0.00 +-0.4536")
                .containsPattern("lentils +3000 +6667 +\\+0.4990")
                .containsPattern("cooked rice +5000 +3333 +-0.0756")
                .containsPattern("all +-0.0302");
        assertThat(run.output().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void theResultForMachinesHasEveryBoundAndTheDistance() throws IOException {
        var answer = JsonMapper.shared().readTree(made(FORMULA, "--json").output());
        assertThat(answer.get("status").asString()).isEqualTo("made");
        assertThat(answer.get("cost").get("batch").asDouble()).isCloseTo(24, within(1e-12));
        assertThat(answer.get("bounds").get(0).get("met").asBoolean()).isFalse();
        assertThat(answer.get("bounds").get(1).get("met").asBoolean()).isTrue();
        assertThat(answer.get("cheapest").get("changePerKg").asDouble()).isCloseTo(7 / 3.0 - 2.4, within(1e-12));
        double all = 0;
        for (var each : answer.get("differences")) {
            all += each.get("costPerKg").asDouble();
        }
        assertThat(all).isCloseTo(7 / 3.0 - 2.4, within(1e-12));
        assertThat(answer.get("remarks").isArray()).isTrue();
    }

    @Test
    void aMostThatIsExceededIsBrokenAndOneThatIsJustReachedIsNot() throws IOException {
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "loaf", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "1 kg",
                 "bounds": [{"name": "not too rich", "property": "PROCNT", "max": "16.5 %"},
                            {"name": "not only rice", "ingredient": "rice", "max": "50 %"}]}
                """);
        assertThat(words(made(FORMULA)))
                .contains("- not too rich: 17, at most 16.5 % is asked: 0.5 too much.", "It keeps 1 other bound.");
    }

    @Test
    void aFormulaIsLookedAtWhereNoBlendExistsAtAll() throws IOException {
        brief("50 %", "");
        var run = made(FORMULA);
        assertThat(run.status()).isZero();
        assertThat(words(run))
                .contains("There is nothing to compare it with: no blend keeps every bound and rule of the brief.")
                .contains("17, at least 50 % is asked: 33 too little.");
    }

    @Test
    void aRuleThatIsBrokenAndWhatNobodySellsAreTold() throws IOException {
        brief("10 %", "\"rules\": [{\"neverTogether\": [\"peas\", \"lentils\"]}],");
        var run = made(FORMULA + ", \"truffle\": \"10 g\"");
        assertThat(words(run))
                .contains("What 10010 g cost as made is not known: nobody sells truffle. All the rest costs 24.00 USD.")
                .contains("No list sells truffle, so what the formula costs is not known.")
                .contains("What it breaks")
                .contains("It uses lentils and peas together, which the brief keeps apart.");
    }

    @Test
    void whatNobodySellsHasNoCost() throws IOException {
        var answer = JsonMapper.shared()
                .readTree(made(FORMULA + ", \"truffle\": \"10 g\"", "--json").output());
        assertThat(answer.get("cost").get("perKg").isNull()).isTrue();
        assertThat(answer.get("cost").get("batch").isNull()).isTrue();
        assertThat(answer.get("cheapest").get("perKg").asDouble()).isCloseTo(7 / 3.0, within(1e-12));
        assertThat(answer.get("cheapest").get("changePerKg").isNull()).isTrue();
    }

    /** The peas at 6 instead of 5 are 2 dearer in all: 26. One of the two kilograms at 6 makes 25. */
    @Test
    void aNamedSupplierIsPaidHisPrice() throws IOException {
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\nrice,s,1,kg\npeas,s,5,kg\nlentils,s,3,kg\npeas,Tarn Pulses,6,kg\n");
        var dearer = made(FORMULA.replace("\"2 kg\"", "{\"amount\": \"2 kg\", \"supplier\": \"Tarn Pulses\"}"));
        assertThat(words(dearer)).contains("As made, 10000 g cost 26.00 USD").containsPattern("peas Tarn Pulses 2000");
        var both =
                made(FORMULA.replace("\"2 kg\"", "[{\"amount\": \"1 kg\", \"supplier\": \"Tarn Pulses\"}, \"1 kg\"]"));
        assertThat(words(both))
                .contains("cost 25.00 USD")
                .containsPattern("peas s 1000 10.00 20.00 peas Tarn Pulses 1000");
    }

    @Test
    void aSupplierThatNoListKnowsIsRefusedAndOneThatSellsOtherThingsIsTold() throws IOException {
        var slip = made(FORMULA.replace("\"2 kg\"", "{\"amount\": \"2 kg\", \"supplier\": \"t\"}"));
        assertThat(slip.status()).isEqualTo(3);
        assertThat(slip.messages())
                .contains("/made/mix/peas/supplier", "No list has a supplier called \"t\"", "one that sells it: \"s\"");
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\nrice,Tarn Mill,1,kg\npeas,s,5,kg\nlentils,s,3,kg\n");
        var other = made(FORMULA.replace("\"2 kg\"", "{\"amount\": \"2 kg\", \"supplier\": \"Tarn Mill\"}"));
        assertThat(other.status()).isZero();
        assertThat(words(other))
                .contains("24.00 USD", "peas from Tarn Mill cannot be had on these lists: it counts at the cheapest");
    }

    /** What the brief leaves out has its price all the same: it is paid today. */
    @Test
    void whatTheBriefLeavesOutIsPaidFor() throws IOException {
        brief("10 %", "\"avoid\": {\"ingredients\": [\"peas\"]},");
        var run = made(FORMULA);
        assertThat(words(run)).contains("cost 24.00 USD", "The brief leaves peas out");
    }

    @Test
    void aStageThatHasNoPlaceForAnIngredientIsTold() throws IOException {
        brief("10 %", "\"stages\": [{\"id\": \"soak\", \"ingredients\": [\"lentils\"]}],");
        assertThat(words(made(FORMULA)))
                .contains("The brief has no place for lentils in \"mix\", only in \"soak\": no blend");
    }

    @Test
    void checkReadsAFormulaWithItsBrief() throws IOException {
        made(FORMULA);
        var file = folder.resolve("formula.json").toString();
        assertThat(CommandRun.of("check", file).status()).isZero();
        made("\"rise\": \"5 kg\"");
        var run = CommandRun.of("check", file);
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages() + run.output()).contains("Did you mean \"rice\"?");
    }
}
