package panade.cli.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import panade.assemble.NudgeResults;
import panade.cli.frame.Console;
import panade.cli.frame.LongRunning;
import panade.cli.frame.Version;
import panade.document.syntax.Problem;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.domain.trial.Formula;
import panade.model.Unproved;
import panade.nudge.Nudge;
import panade.nudge.Start;
import panade.report.formula.NudgeReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says which few changes of a formula are worth it. */
@Command(
        name = "nudge",
        description = "Which few changes of what I make bring most of the saving, or mend what it breaks?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade nudge constraints/dumpling-filling-made.json --changes 4 --keep salt"})
public final class NudgeCommand extends FormulaCommand implements LongRunning {
    private static final int MOST_CHANGES = 8;

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

    public NudgeCommand(Console console) {
        super(console);
    }

    @Override
    void check() {
        if (changes < 1 || changes > MOST_CHANGES) {
            throw usage("--changes " + changes + ": expected a number from 1 to " + MOST_CHANGES + ".");
        }
    }

    @Override
    int answer(Formula read, Start start, List<Problem> problems) {
        var ids = kept(start.brief(), problems);
        return problems.isEmpty() ? answer(read, start, ids) : refuse(problems);
    }

    private int answer(Formula read, Start start, Set<String> ids) {
        return Nudge.of(planner(), start, ids, changes)
                .fold(
                        nudge -> print(read, start, nudge),
                        () -> printer().print(planner().plan(start.keeping(ids).brief())),
                        reason -> {
                            throw new Unproved(reason);
                        });
    }

    private int print(Formula read, Start start, Nudge nudge) {
        var result = NudgeResults.of(read.title(), start, nudge);
        return print(result, () -> NudgeReport.of(result));
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
}
