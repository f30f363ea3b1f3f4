package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

class ExportCommandTest {
    private static final String BRIEF = "constraints/taco-crumble.json";

    @TempDir
    Path folder;

    private CommandRun run = CommandRun.NONE;

    @Test
    void a_model_goes_into_the_file_that_is_named_either_way() throws IOException {
        var one = folder.resolve("one.mps");
        var other = folder.resolve("other.mps");
        assertThat(run("export", BRIEF, "--mps", one.toString())).isZero();
        assertThat(run("export", BRIEF, "--mps", "-o", other.toString())).isZero();
        assertThat(Files.readString(one)).isEqualTo(Files.readString(other)).endsWith("ENDATA\n");
        assertThat(run.output()).contains("Wrote " + other).contains("least cost of 1000 kg");
    }

    @Test
    void without_a_file_the_model_is_printed() {
        assertThat(run("export", BRIEF, "--lp")).isZero();
        assertThat(run.output()).startsWith("\\ ").contains("Minimize").endsWith("End\n");
    }

    @Test
    void a_file_that_cannot_be_written_is_told_and_the_old_one_is_kept() throws IOException {
        assertThat(run(
                        "export",
                        BRIEF,
                        "--lp",
                        folder.resolve("no").resolve("x.lp").toString()))
                .isEqualTo(2);
        assertThat(run.messages()).contains("could not be written").doesNotContain("Exception");
        assertThat(run("export", BRIEF, "--lp", folder.toString())).isEqualTo(2);
        try (var files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void a_model_replaces_a_model_and_nothing_else() throws IOException {
        var prices = folder.resolve("prices.csv");
        Files.writeString(prices, "ingredient,supplier,price,per\n");
        assertThat(run("export", BRIEF, "--lp", prices.toString())).isEqualTo(2);
        assertThat(run("export", BRIEF, "--mps", prices.toString())).isEqualTo(2);
        assertThat(run.messages()).contains(prices + " is already there and is not a model in that format");
        assertThat(Files.readString(prices)).isEqualTo("ingredient,supplier,price,per\n");
        var model = folder.resolve("model.lp").toString();
        assertThat(run("export", BRIEF, "--lp", model)).isZero();
        assertThat(run("export", BRIEF, "--lp", model)).isZero();
    }

    @Test
    void one_format_and_one_file_are_asked_for() {
        assertThat(run("export", BRIEF)).isEqualTo(2);
        assertThat(run("export", BRIEF, "--lp", "a.lp", "--mps", "a.mps")).isEqualTo(2);
        assertThat(run("export", BRIEF, "--lp", "a.lp", "-o", "b.lp")).isEqualTo(2);
        assertThat(run.messages()).contains("Two files are named");
    }

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }
}
