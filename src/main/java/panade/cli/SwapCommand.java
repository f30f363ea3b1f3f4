package panade.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import panade.assemble.SwapResults;
import panade.document.syntax.Problem;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.export.ResultJson;
import panade.plan.Engines;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.render.TextRenderer;
import panade.plan.Outcome.Conflicted;
import panade.report.Block;
import panade.report.ConflictReport;
import panade.report.question.SwapReport;
import panade.substitute.Substituting;
import panade.substitute.Substitution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds what replaces an ingredient that is out. */
@Command(
        name = "swap",
        description = "This ingredient is out: what replaces it, what changes, what does it cost?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade swap constraints/dumpling-filling.json --out methylcellulose"})
final class SwapCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Planner planner;

    @Mixin
    private final BriefArgument argument = new BriefArgument();

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Option(
            names = "--out",
            paramLabel = "ID",
            required = true,
            description = "The ingredient that is out, with its other lots; repeatable.")
    private List<String> missing = new ArrayList<>();

    SwapCommand(PrintWriter out, PrintWriter err, Engines engines) {
        this.out = out;
        this.err = err;
        this.planner = new Planner(engines);
    }

    @Override
    public Integer call() {
        return argument.with(options.overrides(), planner, err, this::swap);
    }

    private int swap(Brief brief) {
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
            return ProblemPrinter.print(unknown, err);
        }
        var before = planner.answer(brief);
        return before instanceof Blended blended
                ? print(Substituting.of(planner, blended, lots(brief)))
                : new OutcomePrinter(out, err, argument.json()).print(before);
    }

    private Set<String> lots(Brief brief) {
        var lots = new LinkedHashSet<String>();
        missing.stream()
                .flatMap(id -> brief.set().idOf(id).stream())
                .forEach(id -> lots.addAll(brief.set().withVariants(id)));
        return lots;
    }

    private int print(Substitution swap) {
        var result = SwapResults.of(swap);
        var conflict = swap.after() instanceof Conflicted none ? ConflictReport.body(none) : List.<Block>of();
        out.print(argument.json() ? ResultJson.text(result) : TextRenderer.render(SwapReport.of(result, conflict)));
        return ExitStatus.of(swap.after());
    }
}
