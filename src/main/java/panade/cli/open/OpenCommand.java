package panade.cli.open;

import java.io.IOException;
import java.time.Duration;
import panade.cli.frame.BriefCommand;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.LongRunning;
import panade.cli.frame.Version;
import panade.domain.Brief;
import panade.export.ResultJson;
import panade.render.PlainText;
import panade.result.open.OpenResult;
import panade.serve.LocalServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Serves the page to work on. */
@Command(
        name = "open",
        description = {
            "Let me work on it: a page where numbers, prices and stock can be changed, and the answer follows, proved.",
            "The page is served on this machine alone, to whoever has its address, until Ctrl-C or an hour unused."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade open constraints/dumpling-filling.json"})
public final class OpenCommand extends BriefCommand implements LongRunning {
    private static final Duration UNUSED = Duration.ofHours(1);

    private final Duration idle;

    @Option(names = "--no-browser", description = "Print the address only, and start no browser.")
    private boolean browserless;

    public OpenCommand(Console console) {
        this(console, UNUSED);
    }

    /** A command that ends after another time without use. */
    OpenCommand(Console console, Duration idle) {
        super(console);
        this.idle = idle;
    }

    @Override
    protected int answer(Brief brief) {
        var pages = new OpenPages(planner(), file(), overrides());
        try (var server = new LocalServer(pages, idle, this::tellFault)) {
            tell(server.address().toString());
            if (!browserless && !Browsers.open(server.ticket())) {
                tellNoBrowser();
            }
            server.await();
        } catch (IOException refused) {
            err().println("No address could be had on this machine to serve the page at ("
                    + PlainText.line(String.valueOf(refused.getMessage())) + ").");
            return ExitStatus.OUR_FAULT;
        }
        return ExitStatus.DONE;
    }

    private void tell(String address) {
        if (json()) {
            out().println(ResultJson.text(new OpenResult(address)));
        } else {
            out().println("The page is at " + address);
            out().println("Keep this address to yourself. The page ends with Ctrl-C here, or after an hour unused.");
        }
        out().flush();
    }

    private void tellNoBrowser() {
        err().println("No browser could be started: open the address above in one on this machine.");
        err().flush();
    }

    private void tellFault(RuntimeException fault) {
        err().println("A fault of ours, not of your documents: the page asked for something that panade failed at ("
                + PlainText.line(String.valueOf(fault)) + ").");
        err().flush();
    }
}
