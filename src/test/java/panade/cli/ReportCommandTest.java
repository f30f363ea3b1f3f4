package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

class ReportCommandTest {
    private static final String HOSTILE = "src/test/resources/hostile/brief.json";

    private CommandRun run = CommandRun.NONE;

    @TempDir
    private Path folder;

    private int run(String... arguments) {
        run = CommandRun.of(arguments);
        return run.status();
    }

    private String page() {
        return folder.resolve("page.html").toString();
    }

    private String written() throws IOException {
        return Files.readString(folder.resolve("page.html"));
    }

    @Test
    void a_page_is_written_whole_and_told() throws IOException {
        assertThat(run("report", HOSTILE, "-o", page())).isZero();
        assertThat(run.output()).startsWith("Wrote " + page() + ": the cheapest blend costs 1.4686 USD/lb, proved.");
        assertThat(written()).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
        assertThat(folder.toFile().list()).containsExactly("page.html");
        assertThat(run.messages()).isEmpty();
    }

    @Test
    void the_same_brief_makes_the_same_bytes() throws IOException {
        run("report", HOSTILE, "-o", page());
        var first = written();
        run("report", HOSTILE, "-o", page());
        assertThat(written()).isEqualTo(first);
    }

    @Test
    void no_blend_makes_a_page_too_and_exits_4() throws IOException {
        assertThat(run("report", "constraints/taco-wish-list.json", "-o", page()))
                .isEqualTo(4);
        assertThat(run.output()).endsWith("no blend can meet every bound, proved.\n");
        assertThat(written()).contains("What stands in the way");
    }

    @Test
    void a_page_that_was_there_outlives_a_brief_that_is_wrong() throws IOException {
        Files.writeString(Path.of(page()), "<!DOCTYPE html> yesterday's");
        assertThat(run("report", HOSTILE, "--batch", "20 pinches", "-o", page()))
                .isEqualTo(3);
        assertThat(written()).isEqualTo("<!DOCTYPE html> yesterday's");
    }

    @Test
    void a_folder_that_is_not_there_is_told_and_exits_2() {
        var nowhere = folder.resolve("nowhere").resolve("page.html").toString();
        assertThat(run("report", HOSTILE, "--no-curves", "-o", nowhere)).isEqualTo(2);
        assertThat(run.messages()).startsWith("-o " + nowhere + ": there is no folder " + folder.resolve("nowhere"));
    }

    @Test
    void a_page_is_never_written_over_a_document() throws IOException {
        var brief = folder.resolve("brief.json");
        Files.copy(Path.of(HOSTILE), brief);
        assertThat(run("report", HOSTILE, "--no-curves", "-o", brief.toString()))
                .isEqualTo(2);
        assertThat(run.messages()).startsWith("-o " + brief + " is already there and is not a page");
        assertThat(brief).hasSameTextualContentAs(Path.of(HOSTILE));
    }

    @Test
    void a_folder_in_place_of_a_file_is_refused_before_anything_is_solved() {
        assertThat(run("report", HOSTILE, "-o", folder.toString())).isEqualTo(2);
        assertThat(run.messages()).contains("is a folder: expected a file in it.");
    }

    @Test
    void curves_over_unknown_names_are_refused_all_at_once() {
        assertThat(run(
                        "report",
                        "constraints/dumpling-filling.json",
                        "--bound",
                        "protien",
                        "--price",
                        "oill",
                        "-o",
                        page()))
                .isEqualTo(3);
        assertThat(run.messages()).contains("protien", "Did you mean \"protein\"", "oill", "2 problems");
        assertThat(folder.toFile().list()).isEmpty();
    }

    @Test
    void a_curve_over_a_cost_per_cooked_pound_is_refused_when_it_is_asked_for() {
        assertThat(run("report", "src/test/resources/page/cooked.json", "--bound", "protein", "-o", page()))
                .isEqualTo(3);
        assertThat(run.messages()).contains("cannot follow a cost per cooked weight");
    }

    @Test
    void the_curves_asked_for_are_drawn_and_no_others() throws IOException {
        assertThat(run("report", HOSTILE, "--bound", "/bounds/0", "-o", page())).isZero();
        assertThat(written()).contains("id=\"curve-1\"").doesNotContain("id=\"curve-2\"");
    }

    @Test
    void a_link_is_followed_and_stays_a_link() throws IOException {
        var real = folder.resolve("real.html");
        Files.writeString(real, "<!DOCTYPE html> yesterday's");
        Files.createSymbolicLink(Path.of(page()), real);
        assertThat(run("report", HOSTILE, "--no-curves", "-o", page())).isZero();
        assertThat(Path.of(page())).isSymbolicLink();
        assertThat(Files.readString(real)).startsWith("<!DOCTYPE html>").doesNotContain("yesterday's");
    }
}
