package panade.cli;

import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.plan.Planner;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.solver.Solver;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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

    @Mixin
    private final BriefArgument argument = new BriefArgument();

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

    BlendCommand(PrintWriter out, PrintWriter err, Solver solver) {
        this.out = out;
        this.err = err;
        this.solver = solver;
    }

    @Override
    public Integer call() {
        var printer = new OutcomePrinter(out, err, argument.json());
        var planner = new Planner(solver, slackShare(), conflictCount());
        return argument.with(options.overrides(), err, brief -> printer.print(planner.plan(brief)));
    }

    private int conflictCount() {
        if (conflicts < 1) {
            throw wrong("--conflicts " + conflicts + ": expected a number from 1 up.");
        }
        return conflicts;
    }

    private ParameterException wrong(String message) {
        return new ParameterException(Objects.requireNonNull(spec).commandLine(), message);
    }

    private BigFraction slackShare() {
        return Quantity.parse(slack)
                .filter(share -> share.unit().dimension() == Dimension.SHARE
                        && share.base().signum() >= 0)
                .map(Quantity::base)
                .orElseThrow(() -> wrong("--slack " + slack + ": expected a share, such as \"1 %\"."));
    }
}
