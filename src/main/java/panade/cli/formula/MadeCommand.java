package panade.cli.formula;

import java.util.List;
import panade.assemble.MadeResults;
import panade.cli.frame.Console;
import panade.cli.frame.Version;
import panade.document.syntax.Problem;
import panade.domain.trial.Formula;
import panade.nudge.Start;
import panade.report.formula.MadeReport;
import picocli.CommandLine.Command;

/** Says what a formula costs, holds and breaks. */
@Command(
        name = "made",
        description =
                "What does what I make cost at these prices, what does it hold, which bounds does it break, and how far"
                        + " is it from the cheapest?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade made constraints/dumpling-filling-made.json"})
public final class MadeCommand extends FormulaCommand {
    public MadeCommand(Console console) {
        super(console);
    }

    @Override
    int answer(Formula read, Start start, List<Problem> problems) {
        if (!problems.isEmpty()) {
            return refuse(problems);
        }
        var result = MadeResults.of(read.title(), start, planner().answer(start.brief()));
        return print(result, () -> MadeReport.of(result));
    }
}
