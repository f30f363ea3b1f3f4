package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as a process: on a terminal, into a pipe, into a file that cannot be written. */
class TerminalTest {
    private static final Path SCRIPT = Path.of("/usr/bin/script");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "report constraints/dumpling-filling.json -o PAGE --no-curves",
                "trace constraints/dumpling-filling.json --price shea-fat --to 5/lb"
            })
    void aTerminalShowsTheWholeAnswerWhenALongRunIsOver(String words) throws Exception {
        assumeTrue(Files.exists(SCRIPT), "no program to open a terminal with");
        var command = words.replace("PAGE", folder.resolve("page.html").toString());
        var piped = lines(run("sh", "-c", java(command) + " 2>/dev/null"));
        var shown = Screen.after(run(SCRIPT.toString(), "-qec", java(command), "/dev/null"));
        assertThat(shown.stream().filter(line -> !line.isEmpty()).toList())
                .containsExactlyElementsOf(
                        piped.stream().filter(line -> !line.isEmpty()).toList());
    }

    @Test
    void anAnswerThatCannotBeWrittenIsNotDone() throws Exception {
        assumeTrue(Files.exists(Path.of("/dev/full")), "no device that is always full");
        var told = run("sh", "-c", java("--explain") + " >/dev/full; echo status $?");
        assertThat(told).contains("could not be written to standard output").contains("status 2");
        assertThat(run("sh", "-c", java("--explain") + " >/dev/null; echo status $?"))
                .isEqualTo("status 0\n");
    }

    @Test
    void aReaderWhoHasEnoughIsNotComplainedTo() throws Exception {
        var told = run("sh", "-c", "{ " + java("--explain") + "; echo status $? >&2; } | true");
        assertThat(told).isEqualTo("status 0\n");
    }

    @Test
    void withoutNativeLibrariesTheExactSimplexAnswersTheSameAndSaysSo() throws Exception {
        var blend = "blend constraints/dumpling-filling.json --json";
        var nowhere = folder.resolve("file/cache");
        Files.createFile(folder.resolve("file"));
        var without = java(blend)
                .replace("'-cp'", "'-Dpanade.cache=" + nowhere + "' '-Djava.io.tmpdir=" + nowhere + "' '-cp'");
        var cost = "\"perKg\":[^,]*";
        assertThat(first(cost, run("sh", "-c", without + " 2>/dev/null")))
                .isEqualTo(first(cost, run("sh", "-c", java(blend))));
        assertThat(run("sh", "-c", without + " 2>&1 >/dev/null")).startsWith("Answered by the exact simplex alone");
    }

    private static String first(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text.replace(" ", ""))
                .results()
                .map(MatchResult::group)
                .findFirst()
                .orElse("nothing like that in: " + text);
    }

    private static List<String> lines(String text) {
        return text.lines().map(String::stripTrailing).toList();
    }

    private static String java(String command) {
        var words = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "panade.cli.Main"));
        words.addAll(List.of(command.split(" ")));
        return words.stream().map(word -> "'" + word + "'").collect(Collectors.joining(" "));
    }

    private static String run(String... command) throws IOException, InterruptedException {
        var process = new ProcessBuilder(command)
                .redirectInput(new File("/dev/null"))
                .redirectErrorStream(true)
                .start();
        var text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return text;
    }
}
