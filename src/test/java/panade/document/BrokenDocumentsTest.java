package panade.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/**
 * Every fault of every document is told once, at its place, in one run, and nothing else is told: standard error is
 * compared whole. {@code -Dbroken.write=true} writes the expected texts anew, to be read through before they are kept.
 */
class BrokenDocumentsTest {
    private static final int DOCUMENTS_ARE_WRONG = 3;

    // Numbers with a huge exponent and deep nesting must be refused at once, not worked at.
    private static final Duration TIME_LIMIT = Duration.ofSeconds(20);

    private static final Pattern PLACE = Pattern.compile("(?m)^(\\S+?):(\\d+):(\\d+): ");

    private final List<DocumentCases> subjects = DocumentCases.in("broken");

    @TempDir
    Path folders;

    @Test
    @EnabledIfSystemProperty(named = "broken.write", matches = "true")
    void expected_messages_are_written_anew() throws IOException {
        for (var subject : subjects) {
            subject.write(each -> told("check", each));
        }
    }

    @Test
    void at_least_75_broken_cases_are_looked_at() {
        assertThat(cases()).hasSizeGreaterThanOrEqualTo(75);
        assertThat(cases().map(DocumentCase::name)).doesNotHaveDuplicates();
    }

    @Test
    void at_least_ten_cases_hold_faults_in_several_files() {
        assertThat(cases().filter(each -> files(each).distinct().count() > 1)).hasSizeGreaterThanOrEqualTo(10);
    }

    @TestFactory
    Stream<DynamicTest> check_names_every_fault_and_no_other() {
        return runsOf("check");
    }

    @TestFactory
    Stream<DynamicTest> blend_refuses_for_the_same_faults() {
        return runsOf("blend");
    }

    @TestFactory
    Stream<DynamicTest> faults_are_told_in_the_order_of_the_documents_and_counted() {
        return cases().map(each -> DynamicTest.dynamicTest(each.name(), () -> {
            isInOrder(each);
            endsWithTheCount(each);
        }));
    }

    private Stream<DocumentCase> cases() {
        return subjects.stream().flatMap(subject -> subject.all().stream());
    }

    private Stream<DynamicTest> runsOf(String command) {
        return cases().map(each -> DynamicTest.dynamicTest(
                command + " " + each.name(),
                () -> assertThat(told(command, each)).isEqualTo(each.told())));
    }

    private String told(String command, DocumentCase documents) {
        try {
            var folder = Files.createTempDirectory(folders, "kitchen");
            var brief = documents.writeTo(folder);
            var run = assertTimeoutPreemptively(TIME_LIMIT, () -> CommandRun.of(command, brief));
            assertThat(run.status()).as(run.messages()).isEqualTo(DOCUMENTS_ARE_WRONG);
            assertThat(run.output()).isEmpty();
            assertThat(run.messages()).doesNotContain("Exception", "\tat ");
            return relative(run.messages(), folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String relative(String messages, Path folder) {
        return messages.replace(folder + folder.getFileSystem().getSeparator(), "")
                .replace("\r\n", "\n");
    }

    // Which file comes first is the reader's to say, but a file is finished before the next begins.
    private static void isInOrder(DocumentCase documents) {
        var finished = new HashSet<String>();
        var file = "";
        int line = 0;
        for (var place : places(documents).toList()) {
            if (!place.group(1).equals(file)) {
                finished.add(file);
                file = place.group(1);
                line = 0;
            }
            assertThat(finished).as("files before %s", place.group()).doesNotContain(file);
            assertThat(Integer.parseInt(place.group(2))).as(place.group()).isGreaterThanOrEqualTo(line);
            line = Integer.parseInt(place.group(2));
        }
    }

    private static void endsWithTheCount(DocumentCase documents) {
        var last = documents.told().lines().reduce("", (before, line) -> line);
        assertThat(last).containsPattern("^" + files(documents).count() + " problems?;");
    }

    private static Stream<String> files(DocumentCase documents) {
        return places(documents).map(place -> place.group(1));
    }

    private static Stream<MatchResult> places(DocumentCase documents) {
        return PLACE.matcher(documents.told()).results();
    }
}
