package panade.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.Documents;
import panade.document.Reading;
import panade.domain.Brief;
import panade.export.JsonExport;
import panade.plan.Outcome;
import panade.plan.Planner;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.render.TextRenderer;
import panade.report.BlendReport;
import panade.report.ConflictReport;
import panade.solver.Solver;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Option(
            names = "--slack",
            paramLabel = "SHARE",
            description = "How much dearer a blend may be to count as nearby; 1 %% unless given.")
    private String slack = "1 %";

    @Option(
            names = "--conflicts",
            paramLabel = "N",
            description =
                    "When there is no blend, look for up to this many sets of bounds in conflict; 1 unless given.")
    private int conflicts = 1;

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
        return notYet.isEmpty()
                ? answer(new Planner(solver, slackShare(), conflicts).plan(accepted))
                : ProblemPrinter.print(notYet, err);
    }

    private BigFraction slackShare() {
        return Quantity.parse(slack)
                .filter(share -> share.unit().dimension() == Dimension.SHARE
                        && share.base().signum() >= 0)
                .map(Quantity::base)
                .orElseThrow(() -> new ParameterException(
                        Objects.requireNonNull(spec).commandLine(),
                        "--slack " + slack + ": expected a share, such as \"1 %\"."));
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
