package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/** A crumb of pea and gluten in water, invented; the pea's protein and salt vary. */
class StudyCompositionsTest {
    @TempDir
    Path folder;

    private CommandRun run = CommandRun.NONE;

    @BeforeEach
    void writeTheKitchen() throws IOException {
        write("\"spread\": {\"PROCNT\": 2, \"NA\": 60}");
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\npea,a,5,kg\ngluten,a,6,kg\nwater,tap,0,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "Crumb", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", "bounds": [
                   {"name": "protein", "property": "PROCNT", "min": "18 %"},
                   {"name": "sodium", "property": "NA", "max": "300 mg/100g"},
                   {"name": "mostly pea", "ingredient": "pea", "min": "20 %"}]}
                """);
    }

    private void write(String spread) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "k", "source": "invented", "ingredients": [
                   {"id": "pea", "values": {"PROCNT": 70, "NA": 900}, "others": 0, "allergens": [], %s},
                   {"id": "gluten", "values": {"PROCNT": 75, "NA": 50}, "others": 0, "allergens": ["wheat"]},
                   {"id": "water", "values": {}, "others": 0, "allergens": []}]}
                """.formatted(spread));
    }

    @Test
    void the_same_seed_prints_the_same_bytes_on_any_number_of_processors() {
        var one = printed("--threads", "1");
        assertThat(printed("--threads", "3")).isEqualTo(one);
        assertThat(printed("--seed", "2")).isNotEqualTo(one);
        assertThat(one.lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void it_tells_how_often_todays_blend_still_does_and_what_it_breaks_most() {
        assertThat(printed())
                .contains("The 2 values that state a spread", "300 times")
                .containsPattern("still meets every bound in\\s+[45]\\d\\.\\d % of the draws")
                .containsPattern("protein +least +[45]\\d\\.\\d +18 % +1[67]\\.\\d+ %")
                .doesNotContain("its spreads were not drawn");
    }

    @Test
    void draws_without_a_blend_are_told_and_not_dropped() throws IOException {
        write("\"spread\": {\"PROCNT\": 2, \"NA\": 500}");
        assertThat(printed()).containsPattern("in \\d\\d?\\.\\d % of the draws no blend meets every bound");
        assertThat(printed("--json")).containsPattern("\"draws\" : 300,\\s+\"values\" : 2,\\s+\"proved\" : 300");
        assertThat(run.output()).containsPattern("\"noBlend\" : [1-9]").contains("\"oneInTwenty\"", "\"keptMeets\"");
    }

    @Test
    void no_spread_or_none_asked_for_prints_the_prices_alone() throws IOException {
        assertThat(printed("--compositions", "0"))
                .contains("its spreads were not drawn")
                .doesNotContain("When what ingredients hold");
        assertThat(printed("--compositions", "0", "--json")).doesNotContain("compositions");
        write("\"spread\": {}");
        var still = printed();
        assertThat(printed("--compositions", "0")).isEqualTo(still);
    }

    @Test
    void the_prices_are_told_the_same_whether_or_not_more_is_drawn() {
        var alone = printed("--compositions", "0");
        var both = printed();
        assertThat(both.substring(0, both.indexOf("When what"))).isEqualTo(alone.substring(0, alone.indexOf("Which")));
    }

    @Test
    void a_wrong_number_is_refused() {
        assertThat(run("study", folder.resolve("brief.json").toString(), "--compositions", "-1"))
                .isEqualTo(2);
        assertThat(run.messages()).contains("--compositions -1", "0 leaves them out");
    }

    private String printed(String... options) {
        var words = new String[options.length + 4];
        words[0] = "study";
        words[1] = folder.resolve("brief.json").toString();
        words[2] = "--draws";
        words[3] = "300";
        System.arraycopy(options, 0, words, 4, options.length);
        assertThat(run(words)).isZero();
        return run.output();
    }

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }
}
