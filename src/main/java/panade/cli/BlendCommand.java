package panade.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.document.Documents;
import panade.document.Reading;
import panade.domain.Brief;
import panade.export.JsonExport;
import panade.plan.Outcome;
import panade.plan.Planner;
import panade.render.TextRenderer;
import panade.report.BlendReport;
import panade.report.ConflictReport;
import panade.solver.Solver;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the cheapest blend. */
@Command(
        name = "blend",
        description = "The cheapest blend that meets every bound, what holds it back and what each bound costs.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade blend constraints/dumpling-filling.json --batch 5kg"})
final class BlendCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Solver solver;

    @Parameters(paramLabel = "BRIEF", description = "The brief, a JSON document.")
    private @Nullable Path brief;

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    BlendCommand(PrintWriter out, PrintWriter err, Solver solver) {
        this.out = out;
        this.err = err;
        this.solver = solver;
    }

    @Override
    public Integer call() {
        var reading = Documents.readBrief(Objects.requireNonNull(brief), options.overrides());
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            return ProblemPrinter.print(rejected.problems(), err);
        }
        var accepted = ((Reading.Accepted<Brief>) reading).value();
        var notYet = NotYet.in(accepted);
        return notYet.isEmpty() ? answer(new Planner(solver).plan(accepted)) : ProblemPrinter.print(notYet, err);
    }

    private int answer(Outcome outcome) {
        if (outcome instanceof Outcome.Blended blended) {
            out.print(json ? JsonExport.of(blended) : TextRenderer.render(BlendReport.of(blended)));
            return ExitStatus.DONE;
        }
        if (outcome instanceof Outcome.Conflicted conflicted) {
            out.print(json ? JsonExport.of(conflicted) : TextRenderer.render(ConflictReport.of(conflicted)));
            return ExitStatus.NO_BLEND;
        }
        return undecided((Outcome.Undecided) outcome);
    }

    private int undecided(Outcome.Undecided undecided) {
        if (json) {
            out.print(JsonExport.of(undecided));
        }
        err.println("No answer could be proved: " + undecided.reason() + ".");
        return ExitStatus.OUR_FAULT;
    }
}
