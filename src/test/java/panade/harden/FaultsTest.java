package panade.harden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import panade.cli.Main;
import panade.testing.CommandRun;
import panade.testing.JavaProcess;

/** Machines that lack what is taken for granted: the answer is the same, or one line says why there is none. */
@Tag("harden")
class FaultsTest {
    @TempDir
    Path folder;

    private Path kitchen;

    @BeforeEach
    void copy() throws IOException {
        boolean hasUmlauts = Charset.forName(System.getProperty("sun.jnu.encoding", "UTF-8"))
                .newEncoder()
                .canEncode('\u00fc');
        kitchen = folder.resolve(hasUmlauts ? "K\u00fcche zwei" : "Kueche zwei");
        for (var file : Kitchen.hut().files().entrySet()) {
            Files.createDirectories(kitchen);
            Files.write(kitchen.resolve(file.getKey()), file.getValue());
        }
    }

    private String document(String name) {
        return kitchen.resolve(name).toString();
    }

    private static CommandRun process(List<String> options, String... words) {
        return JavaProcess.run(options, Main.class, words);
    }

    private static String[] words(String... words) {
        return words;
    }

    @Test
    void little_memory_a_turkish_tongue_and_a_name_with_blanks_change_nothing() {
        var words = words("blend", document("rules.json"), "--json");
        var run = process(List.of("-Xmx64m", "-Duser.language=tr", "-Duser.country=TR"), words);
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(run.output()).isEqualTo(CommandRun.of(words).output());
        var eu = words("panel", document("brief.json"), "--format", "eu");
        var german = process(List.of("-Xmx64m", "-Duser.language=de", "-Duser.country=DE"), eu);
        assertThat(german.status()).as(german.messages()).isZero();
        assertThat(german.output()).isEqualTo(CommandRun.of(eu).output());
    }

    @Test
    void without_a_cache_and_a_temporary_folder_the_exact_simplex_answers_and_says_so() {
        var nowhere = folder.resolve("nowhere");
        var run = process(
                List.of("-Dpanade.cache=" + kitchen.resolve("brief.json"), "-Djava.io.tmpdir=" + nowhere),
                "blend",
                document("brief.json"));
        assertThat(run.status()).isZero();
        assertThat(run.messages())
                .startsWith("Answered by the exact simplex alone")
                .hasLineCount(1);
        // blends that cost the same may differ
        var cost =
                CommandRun.of("blend", document("brief.json")).output().lines().limit(3);
        assertThat(run.output().lines().limit(3)).containsExactlyElementsOf(cost.toList());
        assertThat(nowhere).doesNotExist();
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void without_a_home_nothing_is_left_in_the_folder_it_is_called_from() throws IOException {
        var temporary = Files.createDirectory(folder.resolve("tmp"));
        var run = process(List.of("-Duser.home=?", "-Djava.io.tmpdir=" + temporary), "check", document("brief.json"));
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(Path.of("?")).doesNotExist();
        assertThat(temporary).isEmptyDirectory();
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void what_cannot_be_written_is_told_in_one_line() {
        for (var words : List.of(
                words("report", document("brief.json"), "--no-curves", "-o", "/proc/page.html"),
                words("export", document("brief.json"), "--lp", "/dev/full"),
                words("blend", document("brief.json"), "--xlsx", "/proc/book.xlsx"),
                words("export", document("brief.json"), "--xlsx", document("brief.json") + "/book.xlsx"))) {
            var run = CommandRun.of(words);
            assertThat(run.status()).as(run.messages()).isEqualTo(2);
            assertThat(run.messages()).contains("written");
            assertThat(LimitedRun.fault(run)).isNull();
        }
    }
}
