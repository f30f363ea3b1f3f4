package panade.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.assemble.PanelResults;
import panade.bench.Scales;
import panade.bench.Weighing;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.export.ResultJson;
import panade.label.Panel;
import panade.label.PanelRequest;
import panade.label.nutrition.EnergyMethod;
import panade.label.nutrition.Format;
import panade.plan.Engines;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.render.TextRenderer;
import panade.report.plate.PanelReport;
import panade.workbook.PanelWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Drafts the label. */
@Command(
        name = "panel",
        description = "What would the nutrition panel and the ingredient statement say?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade panel constraints/dumpling-filling.json --format eu --xlsx label.xlsx"})
final class PanelCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Planner planner;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final BriefArgument argument = new BriefArgument();

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Option(
            names = "--format",
            paramLabel = "us|eu",
            defaultValue = "us",
            description = "Whose label to draft: us (21 CFR 101) unless given, or eu (Regulation 1169/2011).")
    private String format = "us";

    @Option(
            names = "--energy",
            paramLabel = "METHOD",
            defaultValue = "general",
            description = "How calories are counted under us: general (4/4/9), digestible (fibre left out) or specific"
                    + " (each ingredient's own factors); general unless given.")
    private String energy = "general";

    @Option(
            names = "--serving",
            paramLabel = "AMOUNT",
            description = "A serving, such as 113g, instead of the brief's.")
    private @Nullable String serving;

    @Option(names = "--pack", paramLabel = "AMOUNT", description = "What a package holds, such as 1lb.")
    private @Nullable String pack;

    @Option(
            names = "--tail",
            paramLabel = "SHARE",
            description = "Gather names at this share or less at the end: 2 %%, 1.5 %%, 1 %% or 0.5 %%.")
    private @Nullable String tail;

    @Option(names = "--weighed", description = "Of the batch as weighed on the brief's scale, not of the exact blend.")
    private boolean weighed;

    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    PanelCommand(PrintWriter out, PrintWriter err, Engines engines) {
        this.out = out;
        this.err = err;
        this.planner = new Planner(engines);
    }

    @Override
    public Integer call() {
        workbook.check();
        var request = new PanelRequest(
                UsageErrors.choice(spec, Format.class, "--format", format),
                UsageErrors.choice(spec, EnergyMethod.class, "--energy", energy),
                serving == null ? null : UsageErrors.weight(spec, "--serving", serving, "113g"),
                pack == null ? null : UsageErrors.weight(spec, "--pack", pack, "1lb"),
                tail == null ? null : tailShare(tail));
        return argument.with(options.overrides(), planner, err, brief -> draft(brief, request));
    }

    private int draft(Brief brief, PanelRequest request) {
        var outcome = planner.answer(brief);
        if (!(outcome instanceof Blended blended)) {
            return new OutcomePrinter(out, err, argument.json()).print(planner.plan(brief));
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
        var sheet = Weighing.of(planner, blended, scales);
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
            strange.forEach(each -> err.println(each.text()));
            return ExitStatus.DOCUMENT;
        }
        var result = PanelResults.of(panel, what, brief.remarks());
        out.print(argument.json() ? ResultJson.text(result) : TextRenderer.render(PanelReport.of(result)));
        workbook.write(() -> PanelWorkbook.of(result), err);
        return ExitStatus.DONE;
    }

    private Quantity tailShare(String text) {
        return Quantity.parse(text)
                .filter(share -> PanelRequest.TAILS.contains(share.base()))
                .orElseThrow(() -> UsageErrors.in(spec, "--tail " + text + ": expected 2%, 1.5%, 1% or 0.5%."));
    }
}
