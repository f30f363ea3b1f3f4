package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

class ManualCommandTest {
    @TempDir
    private Path folder;

    @Test
    void without_a_page_it_prints_the_index_and_with_one_that_page() {
        var index = CommandRun.of("manual");
        assertThat(index.status()).isZero();
        assertThat(index.output()).startsWith("The manual\n").contains("What do I weigh? (panade manual batch)");
        assertThat(CommandRun.of("manual", "batch").output())
                .startsWith("What do I weigh?\n\n")
                .contains("\n$ panade batch constraints/dumpling-filling.json");
    }

    @Test
    void a_page_that_is_not_there_is_told_with_the_nearest() {
        var run = CommandRun.of("manual", "bacth");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.output()).isEmpty();
        assertThat(run.messages()).isEqualTo("""
                        manual: No page is called "bacth".
                            Expected the name of a page; panade manual lists them.
                            Did you mean "batch"?
                        """);
    }

    @Test
    void all_pages_are_written_as_one_file_and_over_no_other_file() throws IOException {
        var file = folder.resolve("manual.html");
        var run = CommandRun.of("manual", "--html", file.toString());
        assertThat(run.status()).isZero();
        assertThat(run.output()).matches("Wrote .*manual\\.html: [0-9]+ pages\\.\n");
        assertThat(Files.readString(file))
                .startsWith("<!DOCTYPE html>")
                .contains("default-src &#39;none&#39;; ", "id=\"batch\"")
                .endsWith("</html>\n");
        assertThat(CommandRun.of("manual", "--html", file.toString()).status()).isZero();

        var brief = Files.writeString(folder.resolve("brief.json"), "{}");
        var refused = CommandRun.of("manual", "--html", brief.toString());
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.messages()).contains("is already there and is not a page");
        assertThat(Files.readString(brief)).isEqualTo("{}");
        assertThat(CommandRun.of("manual", "batch", "--html", file.toString()).status())
                .isEqualTo(2);
        assertThat(CommandRun.of("manual", "--html", folder.resolve("no/m.html").toString())
                        .messages())
                .contains("there is no folder");
    }
}
