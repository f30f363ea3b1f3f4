package panade.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import panade.testing.JavaProcess;

/**
 * Two processes answer alike to the byte, whatever language, time zone, processors and hashes they have. Sets and maps
 * that keep no order are shuffled anew by each process, so that an answer in their order differs.
 */
class TwoProcessesTest {
    private static final List<String> ELSEWHERE = List.of(
            "-Duser.timezone=Pacific/Apia",
            "-Duser.language=tr",
            "-Duser.country=TR",
            "-XX:ActiveProcessorCount=1",
            "-XX:+UnlockExperimentalVMOptions",
            "-XX:hashCode=0");

    private static final List<String> HERE =
            List.of("-Duser.timezone=UTC", "-Duser.language=en", "-XX:ActiveProcessorCount=2");

    private static final String PRICES = "--prices ingredient-sets/netherpleat/prices-";

    private static final List<String> COMMANDS = List.of(
            "blend constraints/dumpling-filling.json",
            "blend constraints/dumpling-filling.json --json",
            "blend constraints/dumpling-filling.json --without methylcellulose --conflicts 3 --json",
            "blend constraints/taco-crumble.json --xlsx FOLDER/blend.xlsx",
            "quotes constraints/dumpling-filling.json " + PRICES + "september.csv " + PRICES + "december.csv --json",
            "report constraints/dumpling-filling.json -o FOLDER/page.html",
            "study constraints/dumpling-filling.json --draws 300 --compositions 20 --json");

    @TempDir
    private Path folder;

    /** Runs all commands and leaves what they wrote in a folder. */
    public static void main(String[] arguments) throws IOException {
        var folder = Path.of(arguments[0]);
        for (int i = 0; i < COMMANDS.size(); i++) {
            var run = CommandRun.of(
                    COMMANDS.get(i).replace("FOLDER", folder.toString()).split(" "));
            var told = "status " + run.status() + "\n" + run.output() + run.messages();
            Files.writeString(folder.resolve("command-" + i), told.replace(folder.toString(), "FOLDER"));
        }
    }

    @Test
    void answersPagesAndWorkbooksAreTheSameToTheByte() throws IOException {
        var here = written("here", HERE);
        var elsewhere = written("elsewhere", ELSEWHERE);
        assertThat(here).hasSize(COMMANDS.size() + 2);
        here.forEach((name, text) -> assertThat(elsewhere.get(name)).as(name).isEqualTo(text));
        assertThat(elsewhere.keySet()).isEqualTo(here.keySet());
    }

    private Map<String, String> written(String name, List<String> options) throws IOException {
        var into = Files.createDirectory(folder.resolve(name));
        var run = JavaProcess.run(options, TwoProcessesTest.class, into.toString());
        assertThat(run.status()).as(run.messages()).isZero();
        var files = new TreeMap<String, String>();
        try (var paths = Files.list(into)) {
            for (var path : paths.toList()) {
                files.put(path.getFileName().toString(), Files.readString(path, StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }
}
