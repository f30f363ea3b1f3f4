package panade.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every fault of every document is told once, at its place, in one run, and nothing else is told. */
class BrokenDocumentsTest {
    private static final int DOCUMENTS_ARE_WRONG = 3;

    // Numbers with a huge exponent and deep nesting must be refused at once, not worked at.
    private static final Duration TIME_LIMIT = Duration.ofSeconds(20);

    private final List<DocumentCase> cases = DocumentCase.allIn("/broken");

    @Test
    void at_least_75_broken_cases_are_looked_at() {
        assertThat(cases).hasSizeGreaterThanOrEqualTo(75);
        assertThat(cases).allSatisfy(each -> assertThat(each.expected()).isNotEmpty());
    }

    @Test
    void at_least_ten_cases_hold_faults_in_several_files() {
        assertThat(cases.stream().filter(BrokenDocumentsTest::spansFiles).count())
                .isGreaterThanOrEqualTo(10);
    }

    @TestFactory
    Stream<DynamicTest> check_names_every_fault_and_no_other() {
        return runsOf("check");
    }

    @TestFactory
    Stream<DynamicTest> blend_refuses_for_the_same_faults() {
        return runsOf("blend");
    }

    private Stream<DynamicTest> runsOf(String command) {
        return cases.stream()
                .map(each -> DynamicTest.dynamicTest(command + " " + each.name(), () -> {
                    var run = assertTimeoutPreemptively(TIME_LIMIT, () -> CommandRun.of(command, each.brief()));
                    isRefusedWithoutAStackTrace(run);
                    tellsExactly(each, run.messages());
                }));
    }

    private static void isRefusedWithoutAStackTrace(CommandRun run) {
        assertThat(run.status()).as(run.messages()).isEqualTo(DOCUMENTS_ARE_WRONG);
        assertThat(run.output()).isEmpty();
        assertThat(run.messages()).doesNotContain("Exception", "\tat ");
    }

    private static void tellsExactly(DocumentCase documents, String messages) {
        var unexpected = new ArrayList<>(documents.printed(messages));
        var untold = new ArrayList<>(documents.expected());
        untold.removeIf(expected -> removeFirst(unexpected, expected::isMetBy));
        assertThat(untold).as("expected but not told in%n%s", messages).isEmpty();
        assertThat(unexpected).as("told but not expected in%n%s", messages).isEmpty();
        isInOrder(documents.printed(messages));
        endsWithTheCount(documents.expected().size(), messages);
    }

    private static boolean removeFirst(List<PrintedProblem> problems, Predicate<PrintedProblem> wanted) {
        var first = problems.stream().filter(wanted).findFirst();
        first.ifPresent(problems::remove);
        return first.isPresent();
    }

    // Which file comes first is the reader's to say, but a file is finished before the next begins.
    private static void isInOrder(List<PrintedProblem> problems) {
        var finished = new HashSet<String>();
        for (int i = 1; i < problems.size(); i++) {
            var before = problems.get(i - 1);
            var now = problems.get(i);
            if (before.file().equals(now.file())) {
                assertThat(now.line()).as("line of %s", now).isGreaterThanOrEqualTo(before.line());
            } else {
                finished.add(before.file());
            }
            assertThat(finished).as("files before %s", now).doesNotContain(now.file());
        }
    }

    private static void endsWithTheCount(int count, String messages) {
        var lines = messages.lines().filter(Predicate.not(String::isBlank)).toList();
        assertThat(lines.get(lines.size() - 1)).containsPattern("(?<![\\w.:])" + count + "(?![\\w.:])");
    }

    private static boolean spansFiles(DocumentCase documents) {
        return documents.expected().stream()
                        .map(ExpectedProblem::file)
                        .distinct()
                        .count()
                > 1;
    }
}
