package panade.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import panade.assemble.BatchResults;
import panade.assemble.BlendResults;
import panade.assemble.MadeResults;
import panade.assemble.NoBlendResults;
import panade.assemble.PanelResults;
import panade.assemble.TraceResults;
import panade.assemble.formula.MadeBatchResults;
import panade.bench.MoveAtMost;
import panade.bench.Scales;
import panade.bench.Weighing;
import panade.cli.frame.ChoiceConverter;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.FormulaOrBriefCommand;
import panade.cli.frame.LongRunning;
import panade.cli.frame.OutcomePrinter;
import panade.cli.frame.UnsupportedFeatures;
import panade.cli.frame.Version;
import panade.cost.LabelPrice;
import panade.cost.OptionalSections;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.export.ResultJson;
import panade.file.WholeFile;
import panade.label.Panel;
import panade.label.nutrition.Format;
import panade.nudge.Start;
import panade.page.MadePage;
import panade.page.Page;
import panade.page.ReportInput;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.quotes.Comparing;
import panade.quotes.PriceComparison;
import panade.remark.BriefRemarks;
import panade.render.PlainText;
import panade.report.blend.VerdictWords;
import panade.trace.Curve;
import panade.trace.KeyCurves;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes a page. */
@Command(
        name = "report",
        description = {
            "Show it to me as a page: the blend, what it costs, what holds it back, what to weigh.",
            "With several --prices each is an alternative: the blend is priced from the first and the others compared."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade report constraints/dumpling-filling.json -o filling.html"})
public final class ReportCommand extends FormulaOrBriefCommand implements LongRunning {
    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "The page, one HTML file that needs nothing else.")
    private @Nullable Path output;

    @Option(
            names = "--price",
            paramLabel = "ID",
            description = "Draw the cost over this ingredient's price; repeatable. What costs most, unless given.")
    private List<String> prices = new ArrayList<>();

    @Option(
            names = "--bound",
            paramLabel = "NAME",
            description = "Draw the cost over this bound; repeatable. The two that hold the cost up, unless given.")
    private List<String> bounds = new ArrayList<>();

    @Option(
            names = "--format",
            converter = ChoiceConverter.OfFormat.class,
            paramLabel = "us|eu",
            description = "Whose label to draft: us (21 CFR 101) unless given, or eu (Regulation 1169/2011).")
    private Format format = Format.US;

    @Option(names = "--no-curves", description = "Draw no curves; they take most of the time.")
    private boolean curveless;

    public ReportCommand(Console console) {
        super(console);
    }

    @Override
    protected int workOnBrief() {
        var overrides = overrides();
        if (overrides.prices().size() < 2) {
            return super.workOnBrief();
        }
        var reading = ListedBriefs.read(file(), overrides, overrides.prices());
        if (reading instanceof Reading.Rejected<ListedBriefs> rejected) {
            return refuse(rejected.problems());
        }
        var briefs = ((Reading.Accepted<ListedBriefs>) reading).value();
        if (!overrides.settings().isEmpty()) {
            tellWith(briefs.moved(planner(), overrides, overrides.prices()));
        }
        return report(briefs);
    }

    @Override
    protected void checkFormula() {
        if (isChosen() || overrides().prices().size() > 1) {
            throw usage(
                    "A formula: expected no --price and no --bound, for what is made has no curve, and one --prices;"
                            + " \"quotes\" compares lists.");
        }
    }

    @Override
    protected int answer(String title, Start made) {
        var problems = UnsupportedFeatures.of(made.brief());
        return problems.isEmpty() ? report(title, made) : refuse(problems);
    }

    private int report(String title, Start made) {
        var brief = made.brief();
        var scales = Scales.stated(brief);
        scales.tooCoarse(brief).ifPresent(step -> {
            throw usage("A scale that reads " + step.text() + " a step is too coarse for a batch of "
                    + brief.batch().text() + ".");
        });
        var now = MadeResults.of(title, made, planner().answer(brief));
        var cap = new MoveAtMost(null);
        var html = MadePage.of(
                now,
                PanelResults.of(
                        Panel.of(brief, made.blend(), format), "Of what is made, as it is weighed in.", List.of()),
                MadeBatchResults.of(title, made, Weighing.of(planner(), brief, made.blend(), scales, cap), cap),
                List.of(
                        brief.batch().text() + " batch",
                        "formula: " + file().getFileName(),
                        "brief: " + brief.title()));
        if (!isWritten(html)) {
            return ExitStatus.USAGE;
        }
        if (json()) {
            out().print(ResultJson.text(now));
        } else {
            out().println("Wrote " + PlainText.line(page().toString()) + ": what is made, its cost, label and sheet.");
            now.remarks()
                    .forEach(remark ->
                            out().println("Remark: " + PlainText.line(remark.place() + ": " + remark.text())));
        }
        return ExitStatus.DONE;
    }

    @Override
    protected int answer(Brief brief) {
        return report(brief, null);
    }

    /** Refuses, before anything is worked out, a file that cannot or must not be written. */
    @Override
    protected void check() {
        Replaceable.PAGE.objection(page()).ifPresent(objection -> {
            throw usage("-o " + objection);
        });
    }

    private Path page() {
        return Objects.requireNonNull(output);
    }

    private int report(ListedBriefs briefs) {
        var each = briefs.each().stream()
                .map(brief -> planner().keepingLabel(BriefRemarks.on(planner(), brief)))
                .toList();
        var comparison = Comparing.of(planner(), briefs.names(), each, planner().keepingLabel(briefs.pooled()));
        return report(BriefRemarks.on(planner(), briefs.each().get(0)), comparison);
    }

    private int report(Brief brief, @Nullable PriceComparison comparison) {
        var problems = unknown(brief);
        if (!problems.isEmpty()) {
            return refuse(problems);
        }
        var outcome = planner().plan(brief);
        return outcome.fold(
                blended -> write(outcome, input(blended, comparison)),
                none -> write(
                        outcome, new ReportInput(brief, NoBlendResults.of(none), null, List.of(), comparison, null)),
                open -> printer().print(open));
    }

    private ReportInput input(Blended blended, @Nullable PriceComparison comparison) {
        var label = LabelPrice.of(planner(), blended).orElse(null);
        return new ReportInput(
                blended.brief(),
                BlendResults.withMoves(blended, new OptionalSections(null, null, label)),
                BatchResults.of(Weighing.of(planner(), blended, Scales.stated(blended.brief()))),
                curves(blended).stream().map(TraceResults::of).toList(),
                comparison,
                PanelResults.of(
                        Panel.of(blended.brief(), blended.blend(), format),
                        "Of the blend above, as it is calculated.",
                        List.of()));
    }

    private List<Problem> unknown(Brief brief) {
        var problems = new ArrayList<Problem>();
        prices.stream()
                .filter(id -> InBrief.ingredient(brief, id).isEmpty())
                .forEach(id -> problems.add(InBrief.noIngredient(brief, id)));
        bounds.stream()
                .filter(name -> InBrief.bound(brief, name).isEmpty())
                .forEach(name -> problems.add(InBrief.noBound(brief, name)));
        if (isChosen()) {
            problems.addAll(UnsupportedFeatures.of(brief));
        }
        return problems;
    }

    private boolean isChosen() {
        return !prices.isEmpty() || !bounds.isEmpty();
    }

    /** Curves; none where cost is counted per cooked weight, which no curve can follow yet. */
    private List<Curve> curves(Blended blended) {
        if (curveless || blended.brief().practice().perCooked()) {
            return List.of();
        }
        var curves = new KeyCurves(planner(), blended);
        if (!isChosen()) {
            return curves.usual();
        }
        var chosen = new ArrayList<Curve>();
        prices.stream()
                .flatMap(id -> InBrief.ingredient(blended.brief(), id).stream())
                .forEach(id -> curves.price(id).ifPresent(chosen::add));
        bounds.stream()
                .flatMap(name -> InBrief.bound(blended.brief(), name).stream())
                .forEach((Bound bound) -> curves.bound(bound).ifPresent(chosen::add));
        return chosen;
    }

    private static List<Remark> remarks(Outcome outcome) {
        return outcome instanceof Blended blended
                ? blended.asked().remarks()
                : ((Conflicted) outcome).brief().remarks();
    }

    /** Writes the page; tells it where that cannot be done. */
    private boolean isWritten(String html) {
        try {
            WholeFile.write(page(), html);
            return true;
        } catch (IOException broken) {
            err().println(PlainText.line(page().toString())
                    + ": cannot be written there. Expected a file in a folder that exists and may be written to.");
            return false;
        }
    }

    private int write(Outcome outcome, ReportInput input) {
        if (!isWritten(Page.of(input))) {
            return ExitStatus.USAGE;
        }
        if (json()) {
            return printer().print(outcome);
        }
        out().println("Wrote " + PlainText.line(page().toString()) + ": "
                + input.outcome()
                        .fold(
                                blend -> "the cheapest blend costs " + new VerdictWords(blend).perPound() + ", proved.",
                                none -> "no blend can meet every bound, proved.",
                                open -> OutcomePrinter.undecided(PlainText.line(open.reason()))));
        remarks(outcome).forEach(remark -> out().println("Remark: " + remark.line()));
        answers().tellUnder();
        return ExitStatus.of(outcome);
    }
}
