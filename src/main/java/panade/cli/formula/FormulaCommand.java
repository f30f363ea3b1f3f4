package panade.cli.formula;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import panade.cli.frame.BriefOptions;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.OutcomePrinter;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.UnsupportedFeatures;
import panade.cli.frame.UsageErrors;
import panade.cli.setting.Answers;
import panade.cli.setting.TriedFormula;
import panade.document.Documents;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.trial.Formula;
import panade.nudge.Start;
import panade.plan.Planner;
import panade.remark.BriefRemarks;
import panade.report.ReportDocument;
import panade.result.setting.SetResult;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A command that works on a formula and the brief that it names; what is wrong with either is told instead. */
abstract class FormulaCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "FORMULA",
            description = "What is made now: a JSON document that names its brief, or, with --brief, a table"
                    + " (stage,ingredient,amount,supplier; CSV or the sheet Formula) or a result of --json.")
    private @Nullable Path formula;

    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Look at it under this brief; needed where the formula names none.")
    private @Nullable Path brief;

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    private final Console console;
    private @Nullable SetResult moved;

    FormulaCommand(Console console) {
        this.console = console;
    }

    /** Refuses options that cannot be meant, before anything is read. */
    void check() {}

    /**
     * Does the command's work, and gives the exit status.
     *
     * @param start the formula as it is made, under its brief with all remarks
     * @param problems to which more may be added; nothing is to be done where there are any
     */
    abstract int answer(Formula read, Start start, List<Problem> problems);

    @Override
    public final Integer call() {
        check();
        var formula = Objects.requireNonNull(this.formula);
        var reading = read(formula);
        if (reading instanceof Reading.Rejected<Formula> rejected) {
            return refuse(rejected.problems());
        }
        var read = ((Reading.Accepted<Formula>) reading).value();
        moved = new TriedFormula(formula, brief, options.overrides()).moved(planner(), read);
        var looked = planner().keepingLabel(BriefRemarks.on(planner(), read.brief()));
        var problems = new ArrayList<>(UnsupportedFeatures.of(looked));
        return answer(read, new Start(looked, read.shares(), read.suppliers()), problems);
    }

    /** Reads a formula under the brief and with the options of the command line. */
    final Reading<Formula> read(Path file) {
        return Documents.readFormula(file, brief, options.overrides());
    }

    final Planner planner() {
        return console.planner();
    }

    final int refuse(List<Problem> problems) {
        return ProblemPrinter.print(problems, console.err());
    }

    final int print(Object result, Supplier<ReportDocument> people) {
        answers().print(result, people);
        return ExitStatus.DONE;
    }

    final OutcomePrinter printer() {
        return new OutcomePrinter(answers(), console.err());
    }

    private Answers answers() {
        return new Answers(console.out(), console.err(), json, moved);
    }

    final ParameterException usage(String message) {
        return UsageErrors.in(spec, message);
    }
}
