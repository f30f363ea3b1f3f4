package panade.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.bench.Scales;
import panade.bench.Weighing;
import panade.cost.LabelPrice;
import panade.cost.OptionalSections;
import panade.cost.ReportInput;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.file.WholeFile;
import panade.label.Panel;
import panade.label.nutrition.Format;
import panade.page.Page;
import panade.plan.Engines;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.plan.Planner;
import panade.quotes.Comparing;
import panade.quotes.PriceComparison;
import panade.remark.BriefRemarks;
import panade.render.PlainText;
import panade.report.VerdictWords;
import panade.trace.Curve;
import panade.trace.KeyCurves;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

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
final class ReportCommand implements Callable<Integer> {
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
            paramLabel = "us|eu",
            description = "Whose label to draft: us (21 CFR 101) unless given, or eu (Regulation 1169/2011).")
    private String format = "us";

    @Option(names = "--no-curves", description = "Draw no curves; they take most of the time.")
    private boolean curveless;

    ReportCommand(PrintWriter out, PrintWriter err, Engines engines) {
        this.out = out;
        this.err = err;
        this.planner = new Planner(engines);
    }

    @Override
    public Integer call() {
        var overrides = options.overrides();
        checkFile();
        UsageErrors.choice(spec, Format.class, "--format", format);
        if (overrides.prices().size() < 2) {
            return argument.with(overrides, planner, err, brief -> report(brief, null));
        }
        var reading = ListedBriefs.read(argument.brief(), overrides, overrides.prices());
        return reading instanceof Reading.Accepted<ListedBriefs> accepted
                ? report(accepted.value())
                : ProblemPrinter.print(((Reading.Rejected<ListedBriefs>) reading).problems(), err);
    }

    /** Refuses, before anything is worked out, a file that cannot or must not be written. */
    private void checkFile() {
        if (Files.isDirectory(file())) {
            throw UsageErrors.in(spec, "-o " + file() + " is a folder: expected a file in it.");
        }
        var folder = file().toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw UsageErrors.in(spec, "-o " + file() + ": there is no folder " + folder + ".");
        }
        if (Replaceable.PAGE.wouldBeLost(file())) {
            throw UsageErrors.in(spec, "-o " + Replaceable.PAGE.refusal(file()));
        }
    }

    private Path file() {
        return Objects.requireNonNull(output);
    }

    private int report(ListedBriefs briefs) {
        var each = briefs.each().stream()
                .map(brief -> planner.keepingLabel(BriefRemarks.on(planner, brief)))
                .toList();
        var comparison = Comparing.of(planner, briefs.names(), each, planner.keepingLabel(briefs.pooled()));
        return report(BriefRemarks.on(planner, briefs.each().get(0)), comparison);
    }

    private int report(Brief brief, @Nullable PriceComparison comparison) {
        var problems = unknown(brief);
        if (!problems.isEmpty()) {
            return ProblemPrinter.print(problems, err);
        }
        var outcome = planner.plan(brief);
        if (outcome instanceof Blended blended) {
            return write(outcome, Page.of(findings(blended, comparison)));
        }
        return outcome instanceof Conflicted
                ? write(
                        outcome,
                        Page.of(new ReportInput(outcome, null, List.of(), comparison, null, OptionalSections.NONE)))
                : new OutcomePrinter(out, err, argument.json()).print(outcome);
    }

    private ReportInput findings(Blended blended, @Nullable PriceComparison comparison) {
        return new ReportInput(
                blended,
                Weighing.of(planner, blended, Scales.stated(blended.brief())),
                curves(blended),
                comparison,
                Panel.of(blended.brief(), blended.blend(), UsageErrors.choice(spec, Format.class, "--format", format)),
                new OptionalSections(null, null, LabelPrice.of(planner, blended).orElse(null)));
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
            problems.addAll(UnsupportedFeatures.perCooked(brief));
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
        var curves = new KeyCurves(planner, blended);
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

    private int write(Outcome outcome, String page) {
        try {
            WholeFile.write(file(), page);
        } catch (IOException broken) {
            err.println(PlainText.line(file().toString())
                    + ": cannot be written there. Expected a file in a folder that exists and may be written to.");
            return ExitStatus.USAGE;
        }
        if (argument.json()) {
            return new OutcomePrinter(out, err, true).print(outcome);
        }
        out.println("Wrote " + PlainText.line(file().toString()) + ": "
                + outcome.fold(
                        blended -> "the cheapest blend costs " + new VerdictWords(blended).perPound() + ", proved.",
                        none -> "no blend can meet every bound, proved.",
                        open -> FaultPrinter.undecided(PlainText.line(open.reason()))));
        remarks(outcome).forEach(remark -> out.println("Remark: " + remark.line()));
        return ExitStatus.of(outcome);
    }
}
