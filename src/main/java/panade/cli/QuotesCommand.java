package panade.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.document.Documents;
import panade.document.Overrides;
import panade.document.Problem;
import panade.document.Reading;
import panade.domain.Brief;
import panade.export.QuotesExport;
import panade.plan.Engines;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.render.TextRenderer;
import panade.report.QuotesReport;
import panade.study.Comparing;
import panade.study.PriceComparison;
import panade.workbook.QuotesWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
            throw new ParameterException(
                    Objects.requireNonNull(spec).commandLine(),
                    "Expected at least two lists, --prices A --prices B, or --suppliers.");
        }
        var problems = new LinkedHashSet<Problem>();
        var pooled = read(overrides, problems);
        var briefs = new ArrayList<Brief>();
        if (!suppliers) {
            overrides.prices().forEach(list -> briefs.addAll(read(with(overrides, list), problems)));
        }
        if (!problems.isEmpty()) {
            return ProblemPrinter.print(List.copyOf(problems), err);
        }
        return compare(overrides, pooled.get(0), briefs);
    }

    private int compare(Overrides overrides, Brief pooled, List<Brief> briefs) {
        var all = planner.keepingLabel(pooled);
        var names = suppliers ? Comparing.suppliers(all) : names(overrides.prices());
        var compared = suppliers
                ? Comparing.bySupplier(all, names)
                : briefs.stream().map(planner::keepingLabel).toList();
        return print(all, Comparing.of(planner, names, compared, all));
    }

    /** The brief, or nothing and its problems. */
    private List<Brief> read(Overrides overrides, Set<Problem> problems) {
        var reading = Documents.readBrief(Objects.requireNonNull(brief), overrides);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            problems.addAll(rejected.problems());
            return List.of();
        }
        var accepted = ((Reading.Accepted<Brief>) reading).value();
        problems.addAll(NotYet.perCooked(accepted));
        return List.of(accepted);
    }

    private static Overrides with(Overrides overrides, Path list) {
        return new Overrides(List.of(list), overrides.batch(), overrides.without(), overrides.target());
    }

    /** File names without folder and ending; whole paths where that would make two the same. */
    private static List<String> names(List<Path> lists) {
        var shortNames = lists.stream()
                .map(list -> list.getFileName().toString().replaceAll("\\.csv$", ""))
                .toList();
        boolean distinct = shortNames.stream().distinct().count() == shortNames.size();
        return distinct ? shortNames : lists.stream().map(Path::toString).toList();
    }

    private int print(Brief pooled, PriceComparison comparison) {
        out.print(json ? QuotesExport.of(comparison) : TextRenderer.render(QuotesReport.of(pooled, comparison)));
        workbook.write(() -> QuotesWorkbook.of(pooled, comparison), err);
        boolean any = comparison.best().stream().anyMatch(outcome -> outcome instanceof Blended);
        return any || comparison.pooled() instanceof Blended ? ExitStatus.DONE : ExitStatus.NO_BLEND;
    }
}
