package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import panade.report.Glossary;
import panade.testing.CommandRun;

/** What a person meets who types: help, suggestions, words explained, questions. */
class CommandLineTest {
    private String out = "";
    private String err = "";

    static List<String> commands() {
        return List.copyOf(Main.documented().getSubcommands().keySet());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void every_command_s_help_fits_and_shows_an_example(String command) {
        assertThat(run("", command, "--help")).isZero();
        assertThat(out).contains("Example").contains("panade " + command);
        assertThat(out.lines()).allMatch(line -> line.length() <= 100);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void every_command_tells_the_version(String command) {
        assertThat(run("", command, "--version")).isZero();
        assertThat(out).startsWith("panade ");
    }

    @Test
    void a_slip_is_met_with_what_may_have_been_meant() {
        assertThat(run("", "blnd", "x.json")).isEqualTo(2);
        assertThat(err).contains("Did you mean: panade blend?");
        assertThat(run("", "blend", "x.json", "--prics", "y.csv")).isEqualTo(2);
        assertThat(err).contains("--prices").contains("Example: panade blend");
        assertThat(run("", "check", "constraints/dumpling-fillng.json")).isEqualTo(3);
        assertThat(err).contains("Did you mean \"constraints/dumpling-filling.json\"?");
    }

    @Test
    void a_slip_is_told_in_the_words_that_were_typed() {
        run("", "blnd", "x.json");
        assertThat(err).startsWith("No command is called \"blnd\".");
        run("", "study", "x.json", "--draws", "abc");
        assertThat(err)
                .contains("'abc' is not a whole number")
                .contains("--spread 10%")
                .doesNotContain("%%");
        run("", "buy", "constraints/dumpling-filling.json=40bags");
        assertThat(err).contains("\"40bags\" is no weight above zero").doesNotContain("--batch");
        run("", "blend", "constraints/dumpling-filling.json", "--prices", "nope.csv");
        assertThat(err).contains("from the folder you are in").doesNotContain("folder of --prices");
        run("", "check", "nowhere/at-all.json");
        assertThat(err).startsWith("nowhere/at-all.json:1:1: The file");
    }

    @Test
    void a_name_that_no_file_can_have_is_told_without_the_words_of_java() {
        for (var words : List.of(List.of("blend", "a\0b.json"), List.of("report", "b.json", "-o", "a\0b.html"))) {
            var run = CommandRun.of(words.toArray(String[]::new));
            assertThat(run.status()).isEqualTo(2);
            assertThat(run.messages()).contains("is no name of a file here.").doesNotContain("java", "Exception");
        }
    }

    @Test
    void a_curve_that_ends_before_it_begins_is_a_slip_and_no_fault_of_ours() {
        var brief = "constraints/taco-crumble.json";
        assertThat(run("", "trace", brief, "--price", "salt", "--from", "5/lb", "--to", "1/lb"))
                .isEqualTo(2);
        assertThat(err).startsWith("--from is not below --to");
        assertThat(run("", "trace", brief, "--bound", "protein", "--from", "20 %", "--to", "10 %"))
                .isEqualTo(2);
    }

    @Test
    void suppliers_terms_can_be_checked_like_any_document(@TempDir Path folder) throws IOException {
        assertThat(run("", "check", "ingredient-sets/netherpleat/suppliers.csv"))
                .as(err)
                .isZero();
        var terms = Files.writeString(folder.resolve("terms.csv"), "supplier,minimumOrder\nPier,ninety\n");
        assertThat(run("", "check", terms.toString())).isEqualTo(3);
        assertThat(err).contains("terms.csv:2:6").contains("\"ninety\" is not a number");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "shadow price",
                "Shadow Price",
                "shadow-price",
                "binding",
                "reduced cost",
                "entering price",
                "slack",
                "certificate",
                "gap",
                "regret",
                "margin",
                "cure",
                "conflict",
                "trait",
                "tagname",
                "unknown",
                "stage",
                "pack",
                "break-even",
                "usable",
                "panade"
            })
    void words_of_the_reports_are_explained(String term) {
        assertThat(run("", "--explain", term)).isZero();
        assertThat(out.lines().count()).isGreaterThan(2);
        assertThat(out.lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void what_an_entry_points_to_is_explained_too() {
        var glossary = new Glossary();
        for (var name : glossary.names()) {
            run("", "--explain", name);
            var last =
                    out.strip().lines().reduce("", (before, line) -> before.endsWith(".") ? line : before + " " + line);
            if (last.startsWith("See also: ")) {
                for (var other : last.substring(10, last.length() - 1).split(", ", -1)) {
                    assertThat(glossary.explain(other))
                            .as(name + " points to " + other)
                            .isPresent();
                }
            }
        }
    }

    @Test
    void a_word_that_is_nearly_right_is_suggested() {
        assertThat(run("", "--explain", "shadow prise")).isEqualTo(2);
        assertThat(err).contains("Did you mean \"shadow price\"?");
        assertThat(run("", "--explain")).isZero();
        assertThat(out).contains("shadow price, ");
    }

    @Test
    void answers_make_a_pantry_and_a_brief_that_can_be_blended(@TempDir Path folder) throws IOException {
        assertThat(run(ANSWERS, "new", folder.toString())).as(err).isZero();
        var brief = folder.resolve("constraints").resolve("bean-crumble.json");
        assertThat(out).contains("That is more than 100 g in 100 g").contains("Next: panade blend " + brief);
        assertThat(out).contains("what all of it together must hold");
        assertThat(run("", "check", brief.toString())).isZero();
        assertThat(run("", "blend", brief.toString())).isZero();
        assertThat(out).contains("Cheapest blend: 0.7536 USD/lb").contains("Target 2/lb: met");
        var set = folder.resolve("ingredient-sets").resolve("test-pantry").resolve("ingredients.json");
        assertThat(Files.readString(set)).contains("\"allergens\": [\"soy\"]").contains("\"WATER\": 8.125");
    }

    @Test
    void nothing_is_written_over_and_nothing_half(@TempDir Path folder) throws IOException {
        run(ANSWERS, "new", folder.toString());
        var brief = folder.resolve("constraints").resolve("bean-crumble.json");
        Files.writeString(brief, "mine");
        run(ANSWERS, "new", folder.toString());
        assertThat(brief).hasContent("mine");
        assertThat(out).contains("nothing that is already there");
        var empty = folder.resolve("empty");
        assertThat(run("short\nmy pantry\nmince\n", "new", empty.toString())).isEqualTo(2);
        assertThat(err).contains("nothing was written but the answers");
        assertThat(empty.toFile().list()).containsExactly("panade-new.draft");
    }

    /**
     * Invented; 0.7536 USD/lb: 14 % protein and 10 % fat leave (14/52) soy and (10 - 14/52) % oil, priced 2.10 and
     * 85/20 kg.
     */
    private static final String ANSWERS = String.join(
            "\n",
            List.of(
                    "full",
                    "Test pantry",
                    "Bean crumble",
                    "",
                    "10 lb",
                    "", // first questions
                    "ice water",
                    "100",
                    "0",
                    "0",
                    "2",
                    "tap",
                    "0.001/lb",
                    "",
                    "none", // an ingredient
                    "textured soy",
                    "8.125",
                    "52",
                    "100",
                    "1", // too much of it
                    "8.125",
                    "52",
                    "1",
                    "abc",
                    "20",
                    "North Mill",
                    "2.10/lb",
                    "",
                    "soy", // with a slip
                    "rape oil",
                    "0",
                    "0",
                    "100",
                    "0",
                    "Mill",
                    "85/20 kg",
                    "",
                    "",
                    "", // the last
                    "",
                    "",
                    "", // no other suppliers, kinds or scores
                    "60",
                    "",
                    "14",
                    "30",
                    "25",
                    "10",
                    "10",
                    "18",
                    "",
                    "400", // bounds, one crossed
                    "",
                    "", // none of one ingredient, no part on its own
                    "2/lb",
                    ""));

    private int run(String answers, String... words) {
        var run = CommandRun.answering(answers, words);
        out = run.output();
        err = run.messages();
        return run.status();
    }
}
