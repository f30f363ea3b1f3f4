package panade.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import panade.assemble.SwapResults;
import panade.cli.frame.BriefCommand;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.Version;
import panade.document.syntax.Problem;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.plan.Outcome.Blended;
import panade.report.question.SwapReport;
import panade.substitute.Substituting;
import panade.substitute.Substitution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Finds what replaces an ingredient that is out. */
@Command(
        name = "swap",
        description = "This ingredient is out: what replaces it, what changes, what does it cost?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade swap constraints/dumpling-filling.json --out methylcellulose"})
public final class SwapCommand extends BriefCommand {
    @Option(
            names = "--out",
            paramLabel = "ID",
            required = true,
            description = "The ingredient that is out, with its other lots; repeatable.")
    private List<String> missing = new ArrayList<>();

    public SwapCommand(Console console) {
        super(console);
    }

    @Override
    protected int answer(Brief brief) {
        var unknown = missing.stream()
                .filter(id -> brief.set().idOf(id).isEmpty())
                .map(id -> Problem.unknown(
                        new Origin("--out", 0, 0, ""),
                        "No ingredient is called \"" + id + "\"",
                        id,
                        brief.set().ingredients().keySet(),
                        "Expected the id of one in the ingredient set."))
                .toList();
        if (!unknown.isEmpty()) {
            return refuse(unknown);
        }
        var before = planner().answer(brief);
        return before instanceof Blended blended
                ? print(Substituting.of(planner(), blended, lots(brief)))
                : printer().print(before);
    }

    private Set<String> lots(Brief brief) {
        var lots = new LinkedHashSet<String>();
        missing.stream()
                .flatMap(id -> brief.set().idOf(id).stream())
                .forEach(id -> lots.addAll(brief.set().withVariants(id)));
        return lots;
    }

    private int print(Substitution swap) {
        var result = SwapResults.of(json() ? swap.explained() : swap);
        print(result, () -> SwapReport.of(result));
        return ExitStatus.of(swap.after());
    }
}
