package panade.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import panade.assemble.QuotesResults;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.export.ResultJson;
import panade.plan.Engines;
import panade.plan.Planner;
import panade.quotes.Comparing;
import panade.quotes.PriceComparison;
import panade.remark.BriefRemarks;
import panade.render.TextRenderer;
import panade.report.question.QuotesReport;
import panade.workbook.QuotesWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares price lists. */
@Command(
        name = "quotes",
        description = "How do the best blends differ under these price lists, and which single blend is safest?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "",
            "Example: panade quotes constraints/dumpling-filling.json --prices SEPTEMBER.csv --prices DECEMBER.csv"
        })
final class QuotesCommand implements Callable<Integer> {
    /** What is told of all lists together: a blend under any of them, or none known, or none anywhere. */
    private static final List<Integer> BEST_FIRST = List.of(ExitStatus.DONE, ExitStatus.UNDECIDED, ExitStatus.NO_BLEND);

    private final PrintWriter out;
    private final PrintWriter err;
    private final Planner planner;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "BRIEF", description = "The brief, a JSON document.")
    private @Nullable Path brief;

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    @Option(names = "--suppliers", description = "Compare the suppliers of the price lists, each alone.")
    private boolean suppliers;

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    QuotesCommand(PrintWriter out, PrintWriter err, Engines engines) {
        this.out = out;
        this.err = err;
        this.planner = new Planner(engines);
    }

    @Override
    public Integer call() {
        workbook.check();
        var overrides = options.overrides();
        if (!suppliers && overrides.prices().size() < 2) {
            throw UsageErrors.in(spec, "Expected at least two lists, --prices A --prices B, or --suppliers.");
        }
        var reading =
                ListedBriefs.read(Objects.requireNonNull(brief), overrides, suppliers ? List.of() : overrides.prices());
        return reading instanceof Reading.Accepted<ListedBriefs> accepted
                ? compare(accepted.value())
                : ProblemPrinter.print(((Reading.Rejected<ListedBriefs>) reading).problems(), err);
    }

    private int compare(ListedBriefs briefs) {
        var all = planner.keepingLabel(BriefRemarks.on(planner, briefs.pooled()));
        var names = suppliers ? Comparing.suppliers(all) : briefs.names();
        if (names.isEmpty()) {
            throw UsageErrors.in(
                    spec,
                    "--suppliers: nobody in these price lists sells more than one ingredient, so there is no supplier to"
                            + " buy from alone.");
        }
        var compared = suppliers
                ? Comparing.bySupplier(all, names)
                : briefs.each().stream()
                        .map(each -> planner.keepingLabel(BriefRemarks.on(planner, each)))
                        .toList();
        var remarks = Brief.remarksOn(suppliers ? List.of(all) : compared);
        return print(all, Comparing.of(planner, names, compared, all), remarks);
    }

    private int print(Brief pooled, PriceComparison comparison, List<Remark> remarks) {
        var result = QuotesResults.of(pooled, comparison, remarks);
        out.print(json ? ResultJson.text(result) : TextRenderer.render(QuotesReport.of(result)));
        workbook.write(() -> QuotesWorkbook.of(result), err);
        return Stream.concat(comparison.best().stream(), Stream.of(comparison.pooled()))
                .map(ExitStatus::of)
                .min(Comparator.comparing(BEST_FIRST::indexOf))
                .orElse(ExitStatus.NO_BLEND);
    }
}
