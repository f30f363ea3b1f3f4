package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** A progress line and an answer that share one screen. */
class ProgressLineTest {
    private final StringWriter screen = new StringWriter();
    private final PrintWriter raw = new PrintWriter(screen);
    private final ProgressLine progress = new ProgressLine(raw, () -> true, Duration.ZERO);
    private final PrintWriter out = new PrintWriter(new ConsoleWriter(raw, progress::end));
    private final PrintWriter err = new PrintWriter(new ConsoleWriter(raw, progress::clear));

    @Test
    void aMessageTakesTheLineAwayAndTheLineComesBack() throws InterruptedException {
        progress.show(12, "blends tried");
        err.println("Left out: salt.");
        assertThat(Screen.after(screen.toString())).containsExactly("Left out: salt.", "");
        progress.show(13, "blends tried");
        assertThat(Screen.after(screen.toString())).containsExactly("Left out: salt.", "");
        Thread.sleep(150); // it is drawn ten times a second at most
        progress.show(13, "blends tried");
        assertThat(Screen.after(screen.toString())).containsExactly("Left out: salt.", "13 blends tried, 0 s");
        progress.end();
        assertThat(Screen.after(screen.toString())).containsExactly("Left out: salt.", "");
    }

    @Test
    void theLineStaysAwayOnceTheAnswerHasBegun() {
        progress.show(1, "blends tried");
        out.print("2.1");
        progress.show(2, "blends tried");
        out.println("0 USD");
        progress.end();
        assertThat(Screen.after(screen.toString())).containsExactly("2.10 USD", "");
    }

    @Test
    void nothingIsShownWhereNobodyLooks() {
        var quiet = new ProgressLine(raw, () -> false, Duration.ZERO);
        quiet.show(1, "blends tried");
        quiet.end();
        assertThat(screen.toString()).isEmpty();
    }
}
