package panade.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/**
 * Documents that look odd but are right are let through, with no remark but the one expected.
 * {@code -Dbroken.write=true} writes the expected texts anew.
 */
class SoundDocumentsTest {
    private final DocumentCases cases = DocumentCases.read(DocumentCases.FOLDER.resolve("sound.txt"));

    @TempDir
    Path folders;

    @Test
    @EnabledIfSystemProperty(named = "broken.write", matches = "true")
    void expected_remarks_are_written_anew() throws IOException {
        cases.write(this::told);
    }

    @Test
    void at_least_12_sound_cases_are_looked_at() {
        assertThat(cases.all()).hasSizeGreaterThanOrEqualTo(12);
    }

    @TestFactory
    Stream<DynamicTest> check_finds_no_fault() {
        return cases.all().stream()
                .map(each -> DynamicTest.dynamicTest(
                        each.name(), () -> assertThat(told(each)).isEqualTo(each.told())));
    }

    private String told(DocumentCase documents) {
        try {
            var folder = Files.createTempDirectory(folders, "kitchen");
            var run = CommandRun.of("check", "--json", documents.writeTo(folder));
            assertThat(run.status()).as(run.messages()).isZero();
            assertThat(run.messages()).isEmpty();
            return BrokenDocumentsTest.relative(run.output(), folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
