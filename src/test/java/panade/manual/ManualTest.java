package panade.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import panade.page.ManualDocument;
import panade.render.TextRenderer;

/** What is written on the pages of {@code src/manual} is what people read, on a terminal and in a browser. */
class ManualTest {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");
    private static final Manual MANUAL = Manual.of(ManualTest::read);

    private static String read(String name) {
        try {
            return Files.readString(Path.of("src", "manual", name + ".md"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The words of a page in their order, read without a parser: all but where its links lead and what its code is. */
    private static List<String> words(String markdown) {
        return wordsOf(markdown.replaceAll("\\]\\([^)]*\\)", "]").replaceAll("(?m)^```.*$", ""));
    }

    private static List<String> wordsOf(String text) {
        return WORD.matcher(text).results().map(found -> found.group()).toList();
    }

    private static String unmarked(String html) {
        return html.replaceAll("<[^>]*>", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
    }

    @Test
    void each_page_has_a_title_and_a_name_of_its_own() {
        assertThat(MANUAL.pages())
                .hasSizeGreaterThan(20)
                .allSatisfy(page -> assertThat(page.title()).isNotBlank());
        assertThat(MANUAL.names()).doesNotHaveDuplicates().startsWith(Manual.INDEX);
    }

    @Test
    void every_word_of_a_page_is_printed_in_its_order() {
        for (var page : MANUAL.pages()) {
            var printed = TextRenderer.render(page.text()).replaceAll("\\(panade\\s+manual\\s+[a-z-]+\\)", "");
            // A wide table is laid out in narrow cells, so its words are there but not in one line.
            if (page.markdown().contains("\n|")) {
                assertThat(wordsOf(printed)).as(page.name()).containsAll(wordsOf(page.title()));
            } else {
                assertThat(wordsOf(unwrapped(printed))).as(page.name()).isEqualTo(words(page.markdown()));
            }
        }
    }

    /** A word that is broken where a line ends is broken at no letter of its own. */
    private static String unwrapped(String printed) {
        return printed.replaceAll("-+\\n", "\n");
    }

    @Test
    void every_word_of_a_page_is_in_the_document_in_its_order() {
        for (var page : MANUAL.pages()) {
            var shown = new ArrayList<>(wordsOf(page.title()));
            shown.addAll(wordsOf(unmarked(page.html())));
            assertThat(shown).as(page.name()).isEqualTo(words(page.markdown()));
        }
    }

    @Test
    void what_is_printed_fits_a_terminal_but_for_long_commands() {
        for (var page : MANUAL.pages()) {
            assertThat(TextRenderer.render(page.text())
                            .lines()
                            .filter(line -> !line.startsWith("$ ") && !isOfModel(line)))
                    .as(page.name())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        }
    }

    /** Lines of the LP format, which other solvers read and nobody else. */
    private static boolean isOfModel(String line) {
        return line.startsWith("\\ ") || line.startsWith(" cost: ");
    }

    @Test
    void the_document_leads_nowhere_else_and_every_link_in_it_to_a_page() {
        var html = ManualDocument.of(MANUAL);
        assertThat(html).doesNotContain("<script", "<img", "<link", " onclick", "javascript:");
        var names = MANUAL.names();
        assertThat(Pattern.compile("href=\"([^\"]*)\"").matcher(html).results().map(link -> link.group(1)))
                .hasSizeGreaterThan(names.size())
                .allMatch(link -> link.startsWith("#"))
                .allMatch(link -> html.contains("id=\"" + link.substring(1) + "\""));
    }

    @Test
    void markup_in_a_page_is_shown_and_not_obeyed() {
        var page = new ManualPage("x", "# T\n\n<script>alert(1)</script>\n\n[a](javascript:alert(1)) <b onclick=x>\n");
        assertThat(page.html()).doesNotContain("<script", "<b", "javascript:").contains("&lt;script&gt;");
    }

    @Test
    void steps_keep_their_numbers_and_links_say_how_to_read_the_page() {
        var page = new ManualPage("x", "# T\n\n3. Weigh *it*.\n4. See [there](made.md#now).\n\n- a\n  b\n");
        assertThat(TextRenderer.render(page.text()))
                .isEqualTo("T\n\n3. Weigh it.\n\n4. See there (panade manual made).\n\n- a b\n");
        assertThat(page.html()).contains("<ol start=\"3\">", "<a href=\"#made\">there</a>");
    }
}
