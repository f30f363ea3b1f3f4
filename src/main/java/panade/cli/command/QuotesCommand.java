package panade.cli.command;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import panade.assemble.QuotesResults;
import panade.assemble.formula.MadeQuotesResults;
import panade.assemble.setting.SetResults;
import panade.cli.frame.BriefsCommand;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.FormulaOption;
import panade.cli.frame.Version;
import panade.cli.frame.WorkbookOption;
import panade.document.Documents;
import panade.document.setting.Tried;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.domain.trial.Formula;
import panade.nudge.Start;
import panade.quotes.Comparing;
import panade.quotes.PriceComparison;
import panade.remark.BriefRemarks;
import panade.report.formula.MadeQuotesReport;
import panade.report.question.QuotesReport;
import panade.workbook.QuotesWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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
public final class QuotesCommand extends BriefsCommand {
    /** What is told of all lists together: a blend under any of them, or none known, or none anywhere. */
    private static final List<Integer> BEST_FIRST = List.of(ExitStatus.DONE, ExitStatus.UNDECIDED, ExitStatus.NO_BLEND);

    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    @Mixin
    private final FormulaOption formula = new FormulaOption();

    @Option(names = "--suppliers", description = "Compare the suppliers of the price lists, each alone.")
    private boolean suppliers;

    public QuotesCommand(Console console) {
        super(console);
    }

    @Override
    protected void check() {
        workbook.check();
        if (!suppliers && overrides().prices().size() < 2) {
            throw usage("Expected at least two lists, --prices A --prices B, or --suppliers.");
        }
    }

    @Override
    protected int work() {
        var lists = suppliers ? List.<Path>of() : overrides().prices();
        if (formula.isFormula(file())) {
            return workOnFormula(lists);
        }
        var reading = ListedBriefs.read(file(), overrides(), lists);
        return reading instanceof Reading.Accepted<ListedBriefs> accepted
                ? compare(accepted.value(), null)
                : refuse(((Reading.Rejected<ListedBriefs>) reading).problems());
    }

    private int workOnFormula(List<Path> lists) {
        var made = formula.read(file(), overrides());
        if (made instanceof Reading.Rejected<Formula> rejected) {
            return refuse(rejected.problems());
        }
        var reading = ListedBriefs.read(this::briefOfFormula, overrides(), lists);
        return reading instanceof Reading.Accepted<ListedBriefs> accepted
                ? compare(accepted.value(), ((Reading.Accepted<Formula>) made).value())
                : refuse(((Reading.Rejected<ListedBriefs>) reading).problems());
    }

    private Reading<Brief> briefOfFormula(Overrides other) {
        var reading = formula.read(file(), other);
        return reading instanceof Reading.Accepted<Formula> accepted
                ? new Reading.Accepted<>(accepted.value().brief())
                : new Reading.Rejected<>(((Reading.Rejected<Formula>) reading).problems());
    }

    private void tellMoved(ListedBriefs briefs) {
        if (!suppliers) {
            tellWith(briefs.moved(planner(), overrides(), overrides().prices()));
        } else if (Documents.readTried(Path.of(briefs.pooled().file()), overrides())
                instanceof Reading.Accepted<Tried> tried) {
            tellWith(SetResults.of(planner(), tried.value()));
        }
    }

    private int compare(ListedBriefs briefs, @Nullable Formula made) {
        if (!overrides().settings().isEmpty()) {
            tellMoved(briefs);
        }
        var all = planner().keepingLabel(BriefRemarks.on(planner(), briefs.pooled()));
        var names = suppliers ? Comparing.suppliers(all) : briefs.names();
        if (names.isEmpty()) {
            throw usage(
                    "--suppliers: nobody in these price lists sells more than one ingredient, so there is no supplier to"
                            + " buy from alone.");
        }
        var compared = suppliers
                ? Comparing.bySupplier(all, names)
                : briefs.each().stream()
                        .map(each -> planner().keepingLabel(BriefRemarks.on(planner(), each)))
                        .toList();
        var remarks = Brief.remarksOn(suppliers ? List.of(all) : compared);
        return print(
                all,
                Comparing.of(planner(), names, compared, all),
                remarks,
                made == null ? null : new MadeUnder(made, compared));
    }

    /** A formula and the briefs that it is bought under. */
    private record MadeUnder(Formula formula, List<Brief> lists) {
        Start under(Brief brief) {
            return new Start(brief, formula.shares(), formula.suppliers());
        }
    }

    private int print(Brief pooled, PriceComparison comparison, List<Remark> remarks, @Nullable MadeUnder made) {
        var result = QuotesResults.of(pooled, json() ? comparison.explained() : comparison, remarks);
        if (made == null) {
            print(result, () -> QuotesReport.of(result));
        } else {
            var kept = MadeQuotesResults.of(
                    made.formula().title(),
                    made.lists().stream().map(made::under).toList(),
                    made.under(pooled),
                    comparison,
                    result);
            print(kept, () -> MadeQuotesReport.of(kept));
        }
        workbook.write(() -> QuotesWorkbook.of(result), err());
        return Stream.concat(comparison.best().stream(), Stream.of(comparison.pooled()))
                .map(ExitStatus::of)
                .min(Comparator.comparing(BEST_FIRST::indexOf))
                .orElse(ExitStatus.NO_BLEND);
    }
}
