package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.json.JsonMapper;

class StudyCommandTest {
    private static final String BRIEF = "constraints/taco-crumble.json";

    @TempDir
    Path folder;

    private CommandRun run = CommandRun.NONE;

    @Test
    void the_same_seed_prints_the_same_bytes_on_any_number_of_processors() {
        var one = printed("--draws", "3000", "--threads", "1");
        assertThat(printed("--draws", "3000", "--threads", "3")).isEqualTo(one);
        assertThat(printed("--draws", "3000", "--seed", "2")).isNotEqualTo(one);
        assertThat(one.lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void every_draw_can_be_proved() {
        assertThat(printed("--draws", "150", "--spread", "30 %", "--prove", "--json"))
                .contains("\"proved\" : 150")
                .contains("\"off\" : 0");
    }

    @Test
    void without_spread_nothing_varies() {
        assertThat(printed("--draws", "50", "--spread", "0%")).containsPattern("standard deviation +0\\.0000");
    }

    @Test
    void a_file_of_spreads_moves_the_prices_it_names_and_no_others() throws IOException {
        var file = Files.writeString(folder.resolve("spreads.csv"), "ingredient,spread\nshea-fat,20 %\n");
        assertThat(printed("--draws", "500", "--spread", file.toString(), "--json"))
                .containsOnlyOnce("\"partOfVariance\"")
                .containsPattern(
                        "\"ingredient\" : \"shea-fat\",\\s+\"supplier\" : \"Saltlight Ingredients\",\\s+\"part");
    }

    @Test
    void what_is_wrong_with_spreads_is_told_with_its_place() throws IOException {
        var file = Files.writeString(
                folder.resolve("spreads.csv"),
                "ingredient,supplier,spread\nsheafat,,20 %\nshea-fat,Nobody,20 %\nwater,,twenty\n");
        assertThat(run("study", BRIEF, "--spread", file.toString())).isEqualTo(3);
        assertThat(run.messages())
                .contains("spreads.csv:2", "\"shea-fat\"", "does not sell", "\"twenty\" is not a spread");
        assertThat(run("study", BRIEF, "--spread", "10")).isEqualTo(2);
        assertThat(run("study", BRIEF, "--spread", "120%")).isEqualTo(2);
        assertThat(run("study", BRIEF, "--draws", "0")).isEqualTo(2);
        assertThat(run("study", BRIEF, "--spread", "nowhere.csv")).isEqualTo(3);
    }

    @Test
    void a_brief_without_a_blend_is_explained() {
        assertThat(run("study", "constraints/taco-wish-list.json")).isEqualTo(4);
        assertThat(run.output()).contains("No blend can meet every bound");
    }

    @Test
    void moreThreadsThanAnyMachineHasAreRefusedWithTheNumberThatMayBe() {
        assertThat(run("study", BRIEF, "--threads", "100000")).isEqualTo(2);
        assertThat(run.messages()).contains("expected a number from 1 to 256");
        assertThat(run("study", BRIEF, "--draws", "100000000", "--prove")).isEqualTo(2);
        assertThat(run("study", BRIEF, "--draws", "9999999999")).isEqualTo(2);
    }

    @Test
    void theTargetIsToldByHowManyDrawsMeetIt() throws IOException {
        // one ingredient at 1/kg, give or take 10 %: at most 1.05 in three draws of four
        assertThat(metIn("1.05/kg", "10%")).isBetween(7350, 7650);
        assertThat(metIn("0.89/kg", "10%")).isZero();
        assertThat(metIn("1.11/kg", "10%")).isEqualTo(10_000);
        assertThat(metIn("1/kg", "0%")).isEqualTo(10_000);
    }

    @Test
    void theTargetOfTheShelfIsToldInWords() throws IOException {
        // 1.25 less a fifth is 1.00, which prices that rise and fall evenly keep in half the draws
        var brief = oneThing(", \"shelf\": {\"price\": \"1.25/kg\", \"margins\": [\"20 %\"]}");
        assertThat(run("study", brief.toString(), "--draws", "1000")).isZero();
        assertThat(run.output()).contains("The target of 0.4536/lb is met in ").contains(" of 1,000 draws");
    }

    private int metIn(String target, String spread) throws IOException {
        assertThat(run("study", oneThing("").toString(), "--target", target, "--spread", spread, "--json"))
                .isZero();
        return new JsonMapper()
                .readTree(run.output())
                .get("target")
                .get("metIn")
                .asInt();
    }

    private Path oneThing(String more) throws IOException {
        Files.writeString(
                folder.resolve("set.json"),
                "{\"title\": \"t\", \"source\": \"invented\", \"ingredients\": [{\"id\": \"a\", \"values\": {}}]}");
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\na,mill,1,kg\n");
        return Files.writeString(
                folder.resolve("brief.json"),
                "{\"title\": \"t\", \"ingredients\": \"set.json\", \"prices\": [\"prices.csv\"], \"batch\": \"1 kg\","
                        + " \"bounds\": []" + more + "}");
    }

    private String printed(String... options) {
        var words = new String[options.length + 2];
        words[0] = "study";
        words[1] = BRIEF;
        System.arraycopy(options, 0, words, 2, options.length);
        assertThat(run(words)).isZero();
        return run.output();
    }

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }
}
