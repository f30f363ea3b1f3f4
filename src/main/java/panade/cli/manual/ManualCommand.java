package panade.cli.manual;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.cli.command.Replaceable;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.document.syntax.Problem;
import panade.domain.origin.Origin;
import panade.file.WholeFile;
import panade.manual.Manual;
import panade.page.ManualDocument;
import panade.render.PlainText;
import panade.render.TextRenderer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the manual. */
@Command(
        name = "manual",
        description = {
            "Read the manual: one page in words, or with --html all of it in one file for a browser.",
            "Without a page it prints the index, which names them all."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade manual made"})
public final class ManualCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "PAGE", arity = "0..1", description = "The page to print; the index unless given.")
    private @Nullable String page;

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "Write the whole manual there, one HTML file that needs nothing else.")
    private @Nullable Path html;

    @Spec
    private @Nullable CommandSpec spec;

    public ManualCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        var manual = Manual.load();
        return html == null ? print(manual, page == null ? Manual.INDEX : page) : write(manual, html);
    }

    private int print(Manual manual, String name) {
        var found = manual.page(name);
        if (found.isEmpty()) {
            var advice = "Expected the name of a page; panade manual lists them.";
            ProblemPrinter.print(
                    Problem.unknown(
                            new Origin("manual", 0, 0, ""),
                            "No page is called \"" + name + "\"",
                            name,
                            manual.names(),
                            advice),
                    console.err());
            return ExitStatus.USAGE;
        }
        console.out().print(TextRenderer.render(found.get().text()));
        return ExitStatus.DONE;
    }

    private int write(Manual manual, Path file) {
        if (page != null) {
            throw UsageErrors.in(spec, "--html writes all pages: expected no page beside it.");
        }
        Replaceable.PAGE.objection(file).ifPresent(objection -> {
            throw UsageErrors.in(spec, "--html " + objection);
        });
        try {
            WholeFile.write(file, ManualDocument.of(manual));
        } catch (IOException broken) {
            throw UsageErrors.in(
                    spec,
                    "--html " + file
                            + " cannot be written. Expected a file in a folder that is there and may be written to.");
        }
        console.out()
                .println(PlainText.line("Wrote " + file + ": " + (manual.pages().size() - 1) + " pages."));
        return ExitStatus.DONE;
    }
}
