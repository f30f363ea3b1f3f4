package panade.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What the README and the manual show is what the program prints; a line of three dots stands for lines left out. With
 * {@code -Dreadme.write=true} what they show is first replaced by what is printed now; then read the sentences around
 * it.
 */
class ReadmeTest {
    private static final Pattern TEXT_BLOCK = Pattern.compile("(?m)^```text\\n(?:.*\\n)*?```$");

    /** More than this of one output is not read. */
    private static final int SHOWN_LINES = 30;

    /** What was printed for the commands so far; some stand on two pages. */
    private static final Map<String, String> PRINTED = new HashMap<>();

    @BeforeAll
    static void rewriteWhereAsked() throws IOException {
        if (Boolean.getBoolean("readme.write")) {
            for (var page : Pages.all()) {
                var desk = Desk.of(page);
                Files.writeString(
                        page,
                        Pages.BLOCK.matcher(Files.readString(page)).replaceAll(block -> rewritten(page, desk, block)));
            }
        }
    }

    private static String rewritten(Path page, Desk desk, MatchResult block) {
        if (Pages.isFile(block)) {
            desk.write(block.group(3), Pages.text(block));
            return Matcher.quoteReplacement(block.group());
        }
        var command = Pages.command(block);
        var printed = desk.printed(command).strip().lines().toList();
        if (printed.isEmpty()) {
            return Matcher.quoteReplacement(block.group());
        }
        var now = ShownOutput.of(Pages.text(block)).of(printed);
        if (now.isEmpty()) {
            System.err.println(page + ": left as it is, what it shows is no longer found: " + command);
        }
        return Matcher.quoteReplacement(now.map(text -> "```text\n$ panade " + command + "\n" + text + "```")
                .orElse(block.group()));
    }

    /** Page by page; what a page writes before a command is there when that runs. */
    @TestFactory
    List<DynamicTest> every_shown_command_prints_what_is_shown() throws IOException {
        var tests = new ArrayList<DynamicTest>();
        for (var page : Pages.all()) {
            tests.add(DynamicTest.dynamicTest(page.getFileName().toString(), () -> follow(page)));
        }
        return tests;
    }

    private static void follow(Path page) throws IOException {
        var desk = Desk.of(page);
        for (var block : Pages.blocks(page)) {
            if (Pages.isFile(block)) {
                desk.write(block.group(3), Pages.text(block));
            } else {
                assertShown(printed(desk, Pages.command(block)), Pages.command(block), Pages.text(block));
            }
        }
    }

    private static String printed(Desk desk, String command) {
        return desk.isProject() ? PRINTED.computeIfAbsent(command, desk::printed) : desk.printed(command);
    }

    @Test
    void no_page_shows_more_of_an_output_than_is_read() throws IOException {
        for (var page : Pages.all()) {
            for (var block :
                    TEXT_BLOCK.matcher(Files.readString(page)).results().toList()) {
                assertThat(block.group().lines().count())
                        .as("%s: %s", page, block.group())
                        .isLessThanOrEqualTo(SHOWN_LINES);
            }
        }
    }

    @Test
    void the_readme_begins_with_the_job_and_then_the_two_commands() throws IOException {
        var readme = Files.readString(Pages.README);
        assertThat(readme).startsWith("# panade\n\nYou make a plant-based mince");
        assertThat(readme.indexOf("java -jar target/panade.jar blend")).isLessThan(readme.indexOf("mvn verify"));
        assertThat(Files.readString(Path.of(".ci", "run"))).contains("mvn -B -ntp verify");
    }

    @Test
    void the_readme_is_short_and_its_tour_begins_with_what_a_cook_makes() throws IOException {
        var readme = Files.readString(Pages.README);
        var tour = readme.substring(readme.indexOf("## A first tour"), readme.indexOf("## Commands"));
        assertThat(readme.lines().count()).isLessThan(300);
        assertThat(tour.lines().count()).isLessThanOrEqualTo(120);
        assertThat(Pages.BLOCK.matcher(tour).results().map(Pages::command))
                .first()
                .asString()
                .startsWith("made ");
    }

    @Test
    void every_page_is_linked_from_the_index_and_the_readme_and_every_link_leads_somewhere() throws IOException {
        var index = Pages.MANUAL.resolve("index.md");
        var pages = new ArrayList<>(Pages.manual());
        pages.remove(index);
        assertThat(Pages.links(index)).containsExactlyInAnyOrderElementsOf(pages);
        assertThat(Pages.links(Pages.README)).containsAll(pages).contains(index);
        for (var page : Pages.all()) {
            assertThat(Pages.links(page)).as(page.toString()).allMatch(Files::isRegularFile);
        }
    }

    private static void assertShown(String printed, String command, String shown) {
        int from = 0;
        for (var piece : pieces(shown)) {
            int at = printed.indexOf(piece, from);
            assertThat(at).as("%s prints%n%s%nbut%n%s", command, piece, printed).isNotNegative();
            from = at + piece.length();
        }
        if (!("\n" + shown).contains("\n" + ShownOutput.DOTS + "\n")) {
            assertThat(printed.strip()).isEqualTo(shown.strip());
        }
    }

    private static List<String> pieces(String shown) {
        return Arrays.stream(shown.split("(?m)^\\.\\.\\.\\n", -1))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
    }
}
