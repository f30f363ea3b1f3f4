package panade.cli.command;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.BatchResults;
import panade.assemble.formula.MadeBatchResults;
import panade.bench.BatchSheet;
import panade.bench.MoveAtMost;
import panade.bench.Scales;
import panade.bench.Weighing;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.FormulaOrBriefCommand;
import panade.cli.frame.MoveConverter;
import panade.cli.frame.Version;
import panade.cli.frame.WeightConverter;
import panade.cli.frame.WorkbookOption;
import panade.cli.trial.TrialOptions;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.nudge.Start;
import panade.plan.Outcome.Blended;
import panade.quantity.Quantity;
import panade.report.formula.MadeSheetReport;
import panade.report.plate.SheetReport;
import panade.result.BatchResult;
import panade.workbook.BatchWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the bench sheet. */
@Command(
        name = "batch",
        description = "What do I weigh, in which order, at this size, on my scale?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade batch constraints/dumpling-filling.json --batch 1lb --fine 0.1g"})
public final class BatchCommand extends FormulaOrBriefCommand {
    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    @Mixin
    private final TrialOptions trial = new TrialOptions();

    @Option(
            names = "--weighing",
            converter = WeightConverter.OfScale.class,
            paramLabel = "STEP",
            description = "What the scale can show, such as 1g or 0.25oz; the brief's unless given, or else 1 g.")
    private @Nullable Quantity weighing;

    @Option(
            names = "--fine",
            converter = WeightConverter.OfScale.class,
            paramLabel = "STEP",
            description = "What a finer scale for small weights can show.")
    private @Nullable Quantity fine;

    @Option(
            names = "--fine-below",
            converter = WeightConverter.OfScale.class,
            paramLabel = "AMOUNT",
            description = "Weights under this go on the finer scale; 20 steps of the other unless given.")
    private @Nullable Quantity below;

    @Option(
            names = "--move-at-most",
            converter = MoveConverter.class,
            paramLabel = "SHARE|WEIGHT",
            description = "Of a formula: how far a line may be weighed from what it asks, such as 5%% of it or 2g; no"
                    + " further than the next step of the scale unless given.")
    private @Nullable Quantity most;

    public BatchCommand(Console console) {
        super(console);
    }

    @Override
    protected void check() {
        workbook.check();
        trial.check();
    }

    @Override
    protected void checkBrief() {
        if (most != null) {
            throw usage("--move-at-most: expected a formula, of which the lines have weights to move from; the lines of"
                    + " a cheapest blend move as little as every bound allows.");
        }
    }

    @Override
    protected int answer(String title, Start made) {
        var brief = made.brief();
        var cap = new MoveAtMost(most);
        var scales = fineEnough(brief);
        var form = trial.form();
        if (form instanceof Reading.Rejected<Optional<BatchResult.Trial>> rejected) {
            return refuse(rejected.problems());
        }
        var sheet = Weighing.of(planner(), brief, made.blend(), scales, cap);
        var result = MadeBatchResults.of(title, made, sheet, cap).as(asked(form));
        print(result, () -> MadeSheetReport.of(result));
        workbook.write(
                () -> BatchWorkbook.of(new BatchResult(result.sheet(), result.trial(), result.remarks())), err());
        if (result.broken().isEmpty()) {
            return ExitStatus.DONE;
        }
        return sheet.endedEarly() ? ExitStatus.UNDECIDED : ExitStatus.NO_BLEND;
    }

    /** The scales, on which the batch shows. */
    private Scales fineEnough(Brief brief) {
        var scales = scales(brief);
        scales.tooCoarse(brief).ifPresent(step -> {
            throw usage("A scale that reads " + step.text() + " a step: a batch of "
                    + brief.batch().text()
                    + " is less than one of them; expected a finer one, such as --weighing 1g.");
        });
        return scales;
    }

    @Override
    protected int answer(Brief brief) {
        var scales = fineEnough(brief);
        var form = trial.form();
        if (form instanceof Reading.Rejected<Optional<BatchResult.Trial>> rejected) {
            return refuse(rejected.problems());
        }
        var outcome = planner().answer(brief);
        return outcome instanceof Blended blended
                ? print(Weighing.of(planner(), blended, scales), asked(form))
                : explain(brief);
    }

    private static BatchResult.@Nullable Trial asked(Reading<Optional<BatchResult.Trial>> form) {
        return ((Reading.Accepted<Optional<BatchResult.Trial>>) form).value().orElse(null);
    }

    private Scales scales(Brief brief) {
        var step = weighing == null ? Scales.stated(brief).step() : weighing;
        var limit = below == null ? step.base().multiply(Scales.STEPS) : below.base();
        return new Scales(step, fine, fine == null ? BigFraction.ZERO : limit);
    }

    private int print(BatchSheet sheet, BatchResult.@Nullable Trial asked) {
        var result = (json() ? BatchResults.withBlend(sheet) : BatchResults.of(sheet)).as(asked);
        print(result, () -> SheetReport.of(result));
        workbook.write(() -> BatchWorkbook.of(result), err());
        return ExitStatus.of(sheet);
    }
}
