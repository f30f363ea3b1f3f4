package panade.cli.frame;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import panade.cli.setting.Answers;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problem;
import panade.domain.Brief;
import panade.plan.Engines;
import panade.plan.Outcome;
import panade.plan.Planner;
import panade.report.ReportDocument;
import panade.result.setting.SetResult;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A command that works on a brief, read with what the options say instead, once or under several price lists. */
public abstract class BriefsCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "BRIEF",
            description =
                    "The brief: a JSON document, or a kitchen's workbook (.xlsx); a formula too where --brief is an option.")
    private @Nullable Path brief;

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    private final Console console;
    private final Planner planner;
    private @Nullable SetResult moved;

    protected BriefsCommand(Console console) {
        this.console = console;
        this.planner = console.planner();
    }

    @Override
    public final Integer call() {
        check();
        return work();
    }

    /** Refuses options that cannot be meant, before anything is read. */
    protected void check() {}

    /** Reads the brief and does the command's work, and gives the exit status. */
    protected abstract int work();

    /** Prints an answer for machines or for people. */
    protected final void print(Object result, Supplier<ReportDocument> people) {
        answers().print(result, people);
    }

    /** For answers, told with what numbers that are tried move. */
    protected final Answers answers() {
        return new Answers(console.out(), console.err(), json, moved);
    }

    /** Has each answer tell as well what numbers that are tried move. */
    protected final void tellWith(SetResult result) {
        moved = result;
    }

    /** Prints what came of a brief where there is no blend to go on with. */
    protected final int print(Outcome outcome) {
        return printer().print(outcome);
    }

    /** Prints why there is no blend, with all that was asked for about it. */
    protected final int explain(Brief unmet) {
        return print(planner.plan(unmet));
    }

    /** Prints what is wrong with documents. */
    protected final int refuse(List<Problem> problems) {
        return ProblemPrinter.print(problems, console.err());
    }

    /** An error in the options, to be told with the command's usage. */
    protected final ParameterException usage(String message) {
        return UsageErrors.in(spec, message);
    }

    protected final OutcomePrinter printer() {
        return new OutcomePrinter(answers(), console.err());
    }

    protected final @Nullable CommandSpec spec() {
        return spec;
    }

    protected final Path file() {
        return Objects.requireNonNull(brief);
    }

    protected final Overrides overrides() {
        return options.overrides();
    }

    protected final boolean json() {
        return json;
    }

    /** For the answer. */
    protected final PrintWriter out() {
        return console.out();
    }

    /** For messages. */
    protected final PrintWriter err() {
        return console.err();
    }

    protected final Engines engines() {
        return console.engines();
    }

    protected final Planner planner() {
        return planner;
    }
}
