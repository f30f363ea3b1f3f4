package panade.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Documents that look odd but are right are let through. */
class SoundDocumentsTest {
    private final List<DocumentCase> cases = DocumentCase.allIn("/sound");

    @Test
    void at_least_12_sound_cases_are_looked_at() {
        assertThat(cases).hasSizeGreaterThanOrEqualTo(12);
    }

    @TestFactory
    Stream<DynamicTest> check_finds_no_fault() {
        return cases.stream()
                .map(each -> DynamicTest.dynamicTest(each.name(), () -> {
                    var run = CommandRun.of("check", each.brief());
                    assertThat(run.status()).as(run.messages()).isZero();
                    assertThat(each.printed(run.messages())).isEmpty();
                }));
    }
}
