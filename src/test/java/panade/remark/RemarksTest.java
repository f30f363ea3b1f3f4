package panade.remark;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a document says that may not be meant is told by everybody who answers from it, and stops nobody. */
class RemarksTest {
    private static final String SOMETHING_TO_REMARK =
            "\"avoid\": {\"allergens\": [\"lupin\"]}, \"bounds\": [{\"property\": \"PROCNT\", \"min\": \"%s\"}]";
    private static final String WORDS = "No ingredient of the set carries the allergen \"lupin\"";

    @TempDir
    private Path folder;

    private RemarkedKitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new RemarkedKitchen(folder);
    }

    static Stream<List<String>> commands() {
        return Stream.of(
                List.of("check"),
                List.of("blend"),
                List.of("reach", "--target", "1/kg"),
                List.of("swap", "--out", "oil"),
                List.of("quotes", "--suppliers"),
                List.of("trace", "--price", "pea"),
                List.of("batch"),
                List.of("panel"),
                List.of("study", "--draws", "10"));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void every_command_tells_remarks_in_words_and_to_machines(List<String> command) {
        var brief = kitchen.brief(SOMETHING_TO_REMARK.formatted("10 %"));
        var text = RemarkedKitchen.run(arguments(command, brief));
        assertThat(text.status()).as(text.messages()).isZero();
        assertThat(joined(text.output())).contains("Remarks ------- - " + brief).contains(WORDS);
        var json = RemarkedKitchen.run(arguments(command, brief, "--json"));
        assertThat(json.status()).isZero();
        assertThat(json.remarks())
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark).startsWith("/avoid/allergens/0: " + WORDS));
        assertThat(json.json().get("remarks").get(0).get("file").stringValue()).isEqualTo(brief);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void a_document_without_remarks_says_nothing_of_them(List<String> command) {
        var brief = kitchen.brief("\"bounds\": [{\"property\": \"PROCNT\", \"min\": \"10 %\"}]");
        assertThat(RemarkedKitchen.run(arguments(command, brief)).output()).doesNotContain("Remark");
        assertThat(RemarkedKitchen.run(arguments(command, brief, "--json")).remarks())
                .isEmpty();
    }

    @Test
    void a_purchase_plan_tells_the_remarks_of_its_briefs_once() {
        var brief = kitchen.brief(SOMETHING_TO_REMARK.formatted("10 %"));
        var text = RemarkedKitchen.run("buy", brief + "=20 kg", brief + "=10 kg");
        assertThat(joined(text.output())).containsOnlyOnce(WORDS);
        assertThat(RemarkedKitchen.run("buy", brief + "=20 kg", "--json").remarks())
                .hasSize(1);
    }

    @Test
    void the_page_has_a_section_of_remarks() throws Exception {
        var brief = kitchen.brief(SOMETHING_TO_REMARK.formatted("10 %"));
        var page = folder.resolve("page.html");
        var run = RemarkedKitchen.run("report", brief, "-o", page.toString());
        assertThat(run.output()).contains(WORDS);
        assertThat(Files.readString(page)).contains("id=\"remarks\"").contains("No ingredient of the set carries");
    }

    @Test
    void where_there_is_no_blend_the_remarks_are_told_as_well() {
        var brief = kitchen.brief(SOMETHING_TO_REMARK.formatted("90 %"));
        var text = RemarkedKitchen.run("blend", brief);
        assertThat(text.status()).isEqualTo(4);
        assertThat(joined(text.output())).contains(WORDS);
        assertThat(RemarkedKitchen.run("blend", brief, "--json").remarks()).hasSize(1);
    }

    @Test
    void check_takes_remarks_for_faults_only_where_it_is_told_to() {
        var brief = kitchen.brief(SOMETHING_TO_REMARK.formatted("10 %"));
        assertThat(RemarkedKitchen.run("check", brief).status()).isZero();
        assertThat(RemarkedKitchen.run("check", brief, "--strict").status()).isEqualTo(3);
        assertThat(RemarkedKitchen.run("check", brief, "--strict", "--json").status())
                .isEqualTo(3);
        var plain = kitchen.brief("\"bounds\": []");
        assertThat(RemarkedKitchen.run("check", plain, "--strict").status()).isZero();
    }

    private static String[] arguments(List<String> command, String brief, String... more) {
        return Stream.of(Stream.of(command.get(0), brief), command.stream().skip(1), Stream.of(more))
                .flatMap(part -> part)
                .toArray(String[]::new);
    }

    private static String joined(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
