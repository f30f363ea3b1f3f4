package panade.cli.formula;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.NudgeResults;
import panade.cli.frame.BriefOptions;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.LongRunning;
import panade.cli.frame.OutcomePrinter;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.UnsupportedFeatures;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.document.Documents;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.Use;
import panade.domain.origin.Origin;
import panade.domain.trial.Formula;
import panade.export.ResultJson;
import panade.model.Unproved;
import panade.nudge.Nudge;
import panade.nudge.Start;
import panade.plan.Planner;
import panade.remark.BriefRemarks;
import panade.render.TextRenderer;
import panade.report.formula.NudgeReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says which few changes of a formula are worth it. */
@Command(
        name = "nudge",
        description = "Which few changes of what I make bring most of the saving, or mend what it breaks?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade nudge constraints/dumpling-filling-made.json --changes 4 --keep salt"})
public final class NudgeCommand implements Callable<Integer>, LongRunning {
    private static final int MOST_CHANGES = 8;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "FORMULA",
            description = "What is made now, a JSON document that names its brief and says what is weighed.")
    private @Nullable Path formula;

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Option(
            names = "--changes",
            paramLabel = "NUMBER",
            description = "Go up to so many ingredients changed, 1 to 8; 3 unless given.")
    private int changes = 3;

    @Option(
            names = "--keep",
            paramLabel = "ID",
            description = "Leave this ingredient as it is made, in every stage; repeatable.")
    private List<String> kept = new ArrayList<>();

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    private final Console console;

    public NudgeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (changes < 1 || changes > MOST_CHANGES) {
            throw UsageErrors.in(spec, "--changes " + changes + ": expected a number from 1 to " + MOST_CHANGES + ".");
        }
        var reading = Documents.readFormula(Objects.requireNonNull(formula), options.overrides());
        return reading instanceof Reading.Accepted<Formula> accepted
                ? answer(accepted.value())
                : refuse(((Reading.Rejected<Formula>) reading).problems());
    }

    private int answer(Formula read) {
        var planner = console.planner();
        var brief = planner.keepingLabel(BriefRemarks.on(planner, read.brief()));
        var problems = new ArrayList<>(UnsupportedFeatures.perCooked(brief));
        var ids = kept(brief, problems);
        return problems.isEmpty() ? answer(planner, read, start(read, brief), ids) : refuse(problems);
    }

    private int answer(Planner planner, Formula read, Start start, Set<String> ids) {
        return Nudge.of(planner, start, ids, changes)
                .fold(
                        nudge -> print(read, start, nudge),
                        () -> printer().print(planner.plan(start.keeping(ids).brief())),
                        reason -> {
                            throw new Unproved(reason);
                        });
    }

    private int print(Formula read, Start start, Nudge nudge) {
        var result = NudgeResults.of(read.title(), start, nudge);
        console.out().print(json ? ResultJson.text(result) : TextRenderer.render(NudgeReport.of(result)));
        return ExitStatus.DONE;
    }

    private OutcomePrinter printer() {
        return new OutcomePrinter(console.out(), console.err(), json);
    }

    private static Start start(Formula read, Brief brief) {
        var shares = new LinkedHashMap<Use, BigFraction>();
        read.weighed().kilograms().forEach((use, kilograms) -> {
            if (kilograms.signum() > 0) {
                shares.put(use, kilograms.multiply(read.perKg()));
            }
        });
        return new Start(brief, shares);
    }

    private Set<String> kept(Brief brief, List<Problem> problems) {
        var ids = new LinkedHashSet<String>();
        for (var name : kept) {
            brief.set()
                    .idOf(name)
                    .ifPresentOrElse(
                            ids::add,
                            () -> problems.add(Problem.unknown(
                                    new Origin("--keep", 0, 0, ""),
                                    "No ingredient is called \"" + name + "\"",
                                    name,
                                    brief.set().ingredients().keySet(),
                                    "Expected the id of one in the ingredient set.")));
        }
        return ids;
    }

    private int refuse(List<Problem> problems) {
        return ProblemPrinter.print(problems, console.err());
    }
}
