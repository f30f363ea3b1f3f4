package panade.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Planner;
import panade.remark.BriefRemarks;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The brief that a command works on, and how its answer is printed. */
final class BriefArgument {
    @Parameters(paramLabel = "BRIEF", description = "The brief, a JSON document.")
    private @Nullable Path brief;

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    Path brief() {
        return Objects.requireNonNull(brief);
    }

    boolean json() {
        return json;
    }

    /** Reads the brief and goes on with it and all remarks on it; tells what is wrong instead where something is. */
    int with(Overrides overrides, Planner planner, PrintWriter err, ToIntFunction<Brief> next) {
        var reading = Documents.readBrief(brief(), overrides);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            return ProblemPrinter.print(rejected.problems(), err);
        }
        return next.applyAsInt(BriefRemarks.on(planner, ((Reading.Accepted<Brief>) reading).value()));
    }

    /** The same for a command that cannot follow a cost per cooked weight. */
    int withRawCost(Overrides overrides, Planner planner, PrintWriter err, ToIntFunction<Brief> next) {
        return with(overrides, planner, err, brief -> {
            var notYet = UnsupportedFeatures.perCooked(brief);
            return notYet.isEmpty() ? next.applyAsInt(brief) : ProblemPrinter.print(notYet, err);
        });
    }
}
