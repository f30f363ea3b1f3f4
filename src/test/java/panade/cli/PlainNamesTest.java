package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/**
 * What a cook reads of a brief with a ceiling from the set. Bean states all there is in it, stock only its water, so
 * that what the blend holds of anything else is not known. Data invented.
 */
class PlainNamesTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void writeDocuments() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "two", "source": "invented", "ingredients": [
                  {"id": "bn-04", "name": "bean flour", "values": {"PROCNT": 20}, "others": 0, "maxUse": "50 %",
                   "allergens": []},
                  {"id": "st-11", "name": "clear stock", "values": {"WATER": 100, "PROCNT": 0}, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per,available\nbn-04,Mill,1,kg,6 kg\nst-11,Tap,2,kg,\n");
    }

    @Test
    void a_ceiling_is_called_by_its_ingredients_name() throws IOException {
        assertThat(blend("\"max\": \"20 %\"", "--all"))
                .contains("bean flour, most that may be used")
                .contains("bean flour, all that Mill has")
                .doesNotContain("bn-04");
        assertThat(blend("\"max\": \"20 %\"", "--json")).contains("\"bn-04 maxUse\"", "\"bn-04 available Mill\"");
    }

    @Test
    void one_ceiling_that_is_far_off_is_told_as_one() throws IOException {
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per\nbn-04,Mill,3,kg\nst-11,Tap,2,kg\n");
        assertThat(blend("\"min\": \"1 %\"", "--all").replaceAll("\\s+", " ")).contains("each used: 1 ceiling on use");
    }

    @Test
    void tagnames_that_nobody_states_are_not_listed_as_unknown() throws IOException {
        var told = blend("\"max\": \"20 %\"", "--all");
        assertThat(told).contains("PROCNT").doesNotContain("VITD", "RETOL", "TRP", "CHOLE");
        assertThat(blend("\"max\": \"20 %\"", "--json")).doesNotContain("VITD");
    }

    private String blend(String limits, String... options) throws IOException {
        var brief = Files.writeString(folder.resolve("brief.json"), """
                {"title": "two", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", "bounds": [{"name": "protein", "property": "PROCNT", %s}]}
                """.formatted(limits));
        var words = new String[options.length + 2];
        words[0] = "blend";
        words[1] = brief.toString();
        System.arraycopy(options, 0, words, 2, options.length);
        var run = CommandRun.of(words);
        return run.output() + run.messages();
    }
}
