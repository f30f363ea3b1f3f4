package panade.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/** The application folder, run as somebody does who has no Java: {@code mvn -P app verify}. */
class ApplicationIT {
    private static final Path FOLDER = Path.of("target", "app");
    private static final String FILLING = "constraints/dumpling-filling.json";

    @TempDir
    Path folder;

    @Test
    void it_prints_for_the_demo_what_the_jar_prints() throws IOException, InterruptedException {
        assertThat(run("blend", FILLING)).isEqualTo(jar("blend", FILLING)).contains("1.2765 USD/lb");
        var tidy = "constraints/taco-crumble-tidy.json";
        assertThat(run("blend", tidy)).isEqualTo(jar("blend", tidy));
    }

    @Test
    void it_writes_a_workbook_and_takes_it_in_again() throws IOException, InterruptedException {
        var workbook = folder.resolve("blend.xlsx");
        run("blend", FILLING, "--xlsx", workbook.toString());
        assertThat(workbook).isNotEmptyFile();
        var set = folder.resolve("back");
        assertThat(run("import", workbook.toString(), "--into", set.toString())).startsWith("Taken in.");
        assertThat(run("check", set.resolve("ingredients.json").toString())).contains("nothing wrong");
    }

    @Test
    void it_tells_its_version_and_carries_its_own_java() throws IOException, InterruptedException {
        assertThat(run("--version")).startsWith("panade ").doesNotContain("not packaged");
        try (var files = Files.walk(FOLDER)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .anyMatch(name -> name.matches("(lib)?jvm\\..*"));
        }
    }

    private static Path launcher() {
        var system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        var image = FOLDER.toAbsolutePath();
        if (system.contains("win")) {
            return image.resolve("panade/panade.exe");
        }
        return image.resolve(system.contains("mac") ? "panade.app/Contents/MacOS/panade" : "panade/bin/panade");
    }

    /** Runs it with an environment in which nothing can be found. */
    private static String run(String... words) throws IOException, InterruptedException {
        var command = new ArrayList<>(List.of(launcher().toString()));
        command.addAll(List.of(words));
        var builder = new ProcessBuilder(command).redirectErrorStream(false);
        builder.environment().clear();
        builder.environment().put("PATH", "/nowhere");
        var process = builder.start();
        var printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        var told = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(told).isZero();
        return printed.replace(System.lineSeparator(), "\n");
    }

    private static String jar(String... words) {
        return CommandRun.of(words).output().replace(System.lineSeparator(), "\n");
    }
}
