package panade.cli.command;

import org.jspecify.annotations.Nullable;
import panade.assemble.PanelResults;
import panade.bench.MoveAtMost;
import panade.bench.Scales;
import panade.bench.Weighing;
import panade.cli.frame.ChoiceConverter;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.FormulaOrBriefCommand;
import panade.cli.frame.ShareConverter;
import panade.cli.frame.Version;
import panade.cli.frame.WeightConverter;
import panade.cli.frame.WorkbookOption;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.label.Panel;
import panade.label.PanelRequest;
import panade.label.nutrition.EnergyMethod;
import panade.label.nutrition.Format;
import panade.nudge.Start;
import panade.plan.Outcome.Blended;
import panade.quantity.Quantity;
import panade.report.plate.PanelReport;
import panade.workbook.PanelWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Drafts the label. */
@Command(
        name = "panel",
        description = "What would the nutrition panel and the ingredient statement say?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade panel constraints/dumpling-filling.json --format eu --xlsx label.xlsx"})
public final class PanelCommand extends FormulaOrBriefCommand {
    @Option(
            names = "--format",
            converter = ChoiceConverter.OfFormat.class,
            paramLabel = "us|eu",
            defaultValue = "us",
            description = "Whose label to draft: us (21 CFR 101) unless given, or eu (Regulation 1169/2011).")
    private Format format = Format.US;

    @Option(
            names = "--energy",
            converter = ChoiceConverter.OfEnergy.class,
            paramLabel = "METHOD",
            defaultValue = "general",
            description = "How calories are counted under us: general (4/4/9), digestible (fibre left out) or specific"
                    + " (each ingredient's own factors); general unless given.")
    private EnergyMethod energy = EnergyMethod.GENERAL;

    @Option(
            names = "--serving",
            converter = WeightConverter.OfServing.class,
            paramLabel = "AMOUNT",
            description = "A serving, such as 113g, instead of the brief's.")
    private @Nullable Quantity serving;

    @Option(
            names = "--pack",
            converter = WeightConverter.OfPack.class,
            paramLabel = "AMOUNT",
            description = "What a package holds, such as 1lb.")
    private @Nullable Quantity pack;

    @Option(
            names = "--tail",
            converter = ShareConverter.OfTail.class,
            paramLabel = "SHARE",
            description = "Gather names at this share or less at the end: 2 %%, 1.5 %%, 1 %% or 0.5 %%.")
    private @Nullable Quantity tail;

    @Option(names = "--weighed", description = "Of the batch as weighed on the brief's scale, not of the exact blend.")
    private boolean weighed;

    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    public PanelCommand(Console console) {
        super(console);
    }

    @Override
    protected void check() {
        workbook.check();
    }

    private PanelRequest request() {
        return new PanelRequest(format, energy, serving, pack, tail);
    }

    @Override
    protected int answer(String title, Start made) {
        var brief = made.brief();
        var what = "Of what is made, \"" + title + "\", whatever bounds it breaks";
        if (!weighed) {
            return print(brief, made.blend(), request(), what + ".");
        }
        var scales = Scales.stated(brief);
        var sheet = Weighing.of(planner(), brief, made.blend(), scales, new MoveAtMost(null));
        return print(
                brief,
                sheet.weighed(),
                request(),
                what + "; as weighed in steps of " + scales.step().text() + ".");
    }

    @Override
    protected int answer(Brief brief) {
        var request = request();
        var outcome = planner().answer(brief);
        if (!(outcome instanceof Blended blended)) {
            return explain(brief);
        }
        return weighed
                ? printWeighed(blended, request)
                : print(blended.brief(), blended.blend(), request, exact(blended));
    }

    private static String exact(Blended blended) {
        return "Of the least-cost blend, proved in exact fractions."
                + (blended.explanation().unique()
                        ? ""
                        : " Other blends cost exactly the same and may say something else on the label.");
    }

    private int printWeighed(Blended blended, PanelRequest request) {
        var scales = Scales.stated(blended.brief());
        var sheet = Weighing.of(planner(), blended, scales);
        int status = print(
                sheet.brief(),
                sheet.weighed(),
                request,
                "Of " + sheet.brief().batch().text() + " as weighed in steps of "
                        + scales.step().text()
                        + (sheet.isMet() ? "." : "; on this scale no weights were found that meet every bound."));
        return status == ExitStatus.DONE ? ExitStatus.of(sheet) : status;
    }

    private int print(Brief brief, Blend blend, PanelRequest request, String what) {
        var panel = Panel.of(brief, blend, request);
        var strange = panel.allergens().strange();
        if (!strange.isEmpty()) {
            // A label that leaves out an allergen because its word means nothing hurts people.
            strange.forEach(each -> err().println(each.text()));
            return ExitStatus.DOCUMENT;
        }
        var result = PanelResults.of(panel, what, brief.remarks());
        print(result, () -> PanelReport.of(result));
        workbook.write(() -> PanelWorkbook.of(result), err());
        return ExitStatus.DONE;
    }
}
