package panade.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import panade.file.WholeFile.Step;
import panade.testing.JavaProcess;

/** A process that ends at any step of writing a file leaves the old file or the new one. */
@Tag("harden")
class KilledWritingTest {
    private static final int KILLED = 9;

    @TempDir
    Path folder;

    private Path file;

    /** Writes the file named first and ends at the step named second, as if it were killed there. */
    public static void main(String[] arguments) throws IOException {
        WholeFile.write(Path.of(arguments[0]), bytes("new"), step -> {
            if (step.name().equals(arguments[1])) {
                Runtime.getRuntime().halt(KILLED);
            }
        });
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @BeforeEach
    void write() throws IOException {
        file = Files.writeString(folder.resolve("prices.csv"), "old");
    }

    @ParameterizedTest
    @EnumSource(Step.class)
    void killed_at_any_step_the_file_is_whole_and_leftovers_go_with_a_later_writing(Step step) throws IOException {
        var run = JavaProcess.run(List.of(), KilledWritingTest.class, file.toString(), step.name());
        assertThat(run.status()).as(run.messages()).isEqualTo(KILLED);
        assertThat(file).hasContent(step == Step.MOVED ? "new" : "old");
        age(Duration.ofMinutes(50));
        WholeFile.write(file, "newer");
        assertThat(folder.toFile().list()).hasSize(step == Step.MOVED ? 1 : 2);
        age(Duration.ofMinutes(70));
        WholeFile.write(file, "newest");
        assertThat(folder.toFile().list()).containsExactly("prices.csv");
        assertThat(file).hasContent("newest");
    }

    private void age(Duration age) throws IOException {
        try (var all = Files.list(folder)) {
            for (var each : all.toList()) {
                Files.setLastModifiedTime(each, FileTime.from(Instant.now().minus(age)));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Step.class)
    void what_fails_at_any_step_leaves_nothing_behind(Step step) throws IOException {
        assertThatThrownBy(() -> WholeFile.write(file, bytes("new"), done -> {
                    if (done == step) {
                        throw new UncheckedIOException(new IOException("no space left"));
                    }
                }))
                .hasMessageContaining("no space left");
        assertThat(file).hasContent(step == Step.MOVED ? "new" : "old");
        assertThat(folder.toFile().list()).containsExactly("prices.csv");
    }

    @Test
    void what_only_looks_like_a_leftover_stays() throws IOException {
        for (var name : List.of(".prices.csv.part", ".prices.csv.mine.part", ".other.csv.x.part", "prices.csv.part")) {
            Files.writeString(folder.resolve(name), "mine");
        }
        age(Duration.ofDays(9));
        WholeFile.write(file, "new");
        assertThat(folder.toFile().list()).hasSize(5);
    }
}
