package panade.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.BatchResults;
import panade.bench.BatchSheet;
import panade.bench.Scales;
import panade.bench.Weighing;
import panade.domain.Brief;
import panade.export.ResultJson;
import panade.plan.Engines;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.render.TextRenderer;
import panade.report.plate.SheetReport;
import panade.workbook.BatchWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the bench sheet. */
@Command(
        name = "batch",
        description = "What do I weigh, in which order, at this size, on my scale?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade batch constraints/dumpling-filling.json --batch 1lb --fine 0.1g"})
final class BatchCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Planner planner;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final BriefArgument argument = new BriefArgument();

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    @Option(
            names = "--weighing",
            paramLabel = "STEP",
            description = "What the scale can show, such as 1g or 0.25oz; the brief's unless given, or else 1 g.")
    private @Nullable String weighing;

    @Option(names = "--fine", paramLabel = "STEP", description = "What a finer scale for small weights can show.")
    private @Nullable String fine;

    @Option(
            names = "--fine-below",
            paramLabel = "AMOUNT",
            description = "Weights under this go on the finer scale; 20 steps of the other unless given.")
    private @Nullable String below;

    BatchCommand(PrintWriter out, PrintWriter err, Engines engines) {
        this.out = out;
        this.err = err;
        this.planner = new Planner(engines);
    }

    @Override
    public Integer call() {
        workbook.check();
        return argument.with(options.overrides(), planner, err, this::weigh);
    }

    private int weigh(Brief brief) {
        var scales = scales(brief);
        scales.tooCoarse(brief).ifPresent(step -> {
            throw UsageErrors.in(
                    spec,
                    "A scale that reads " + step.text() + " a step: a batch of "
                            + brief.batch().text()
                            + " is less than one of them; expected a finer one, such as --weighing 1g.");
        });
        var outcome = planner.answer(brief);
        return outcome instanceof Blended blended
                ? print(Weighing.of(planner, blended, scales))
                : new OutcomePrinter(out, err, argument.json()).print(planner.plan(brief));
    }

    private Scales scales(Brief brief) {
        var step = weighing == null
                ? Scales.stated(brief).step()
                : UsageErrors.weight(spec, "--weighing", weighing, "0.1g");
        var finer = fine == null ? null : UsageErrors.weight(spec, "--fine", fine, "0.1g");
        var limit = below == null
                ? step.base().multiply(Scales.STEPS)
                : UsageErrors.weight(spec, "--fine-below", below, "0.1g").base();
        return new Scales(step, finer, finer == null ? BigFraction.ZERO : limit);
    }

    private int print(BatchSheet sheet) {
        var result = argument.json() ? BatchResults.withBlend(sheet) : BatchResults.of(sheet);
        out.print(argument.json() ? ResultJson.text(result) : TextRenderer.render(SheetReport.of(result)));
        workbook.write(() -> BatchWorkbook.of(result), err);
        return ExitStatus.of(sheet);
    }
}
