package panade.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import panade.cli.Main;

/** The page of {@code panade open} as long as it is served in this process. */
public final class ServedPage implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/[\\w-]+/");
    private static final int PATIENCE = 60_000;
    private static final int GLANCE = 20;

    private final StringWriter output = new StringWriter();
    private final StringWriter messages = new StringWriter();
    private final AtomicInteger status = new AtomicInteger(-1);
    private final Thread thread;
    private final URI address;

    private ServedPage(List<String> arguments) throws InterruptedException {
        var words = new ArrayList<>(List.of("open", "--no-browser"));
        words.addAll(arguments);
        thread = new Thread(() -> status.set(Main.run(
                Reader.nullReader(),
                new PrintWriter(output),
                new PrintWriter(messages),
                words.toArray(String[]::new))));
        thread.start();
        address = told();
    }

    /** Serves a brief, with what else is on the command line. */
    public static ServedPage of(String... arguments) {
        try {
            return new ServedPage(List.of(arguments));
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private URI told() throws InterruptedException {
        for (int waited = 0; waited < PATIENCE && thread.isAlive(); waited += GLANCE) {
            var found = ADDRESS.matcher(output.toString());
            if (found.find()) {
                return URI.create(found.group());
            }
            Thread.sleep(GLANCE);
        }
        throw new AssertionError("no address was printed: " + output + messages);
    }

    public URI address() {
        return address;
    }

    /** What the command printed so far. */
    public String output() {
        return output.toString();
    }

    /** The messages that it printed so far. */
    public String messages() {
        return messages.toString();
    }

    /** Ends the program as Ctrl-C would, and gives the status that it ended with. */
    public int end() {
        thread.interrupt();
        try {
            thread.join(PATIENCE);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        assertThat(thread.isAlive()).isFalse();
        return status.get();
    }

    @Override
    public void close() {
        end();
    }
}
