package panade.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.manual.Manual;
import panade.page.Browser.View;

/**
 * The manual in a real browser: nothing is refused or fetched, nobody is kept out, nothing is wider than the screen.
 */
class ManualInBrowserTest {
    @TempDir
    private Path folder;

    @Test
    void it_can_be_read_on_every_screen() throws IOException {
        var manual = Manual.load();
        var page = Files.writeString(folder.resolve("manual.html"), ManualDocument.of(manual));
        try (var browser = Browser.open()) {
            for (var view : View.ALL) {
                browser.visit(page, view);
                assertThat(browser.barriers()).as(view.toString()).isEmpty();
                assertThat(browser.run(
                                "return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                        .as(view.toString())
                        .isEqualTo(0L);
            }
            assertThat(browser.texts("main > section > h2"))
                    .containsExactlyElementsOf(manual.pages().stream()
                            .skip(1)
                            .map(each -> each.title())
                            .toList());
            assertThat(browser.console()).isEmpty();
            assertThat(browser.isFetched(folder.resolve("dot.png"))).isFalse();
        }
    }
}
