package panade.cli.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.assemble.FitResults;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.ShareConverter;
import panade.cli.frame.Version;
import panade.document.Documents;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;
import panade.export.ResultJson;
import panade.quantity.Quantity;
import panade.render.TextRenderer;
import panade.report.trial.FitReport;
import panade.trial.FittedResponse;
import panade.trial.Fitting;
import panade.trial.PredictedFormula;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what trials teach. */
@Command(
        name = "fit",
        description = "What did my trials teach, how sure is it, and what do they not tell?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade fit ingredient-sets/netherpleat/trials-dumpling-filling.json"})
public final class FitCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "TRIALS", description = "The trials, a JSON document.")
    private @Nullable Path trials;

    @Option(
            names = "--table",
            paramLabel = "FILE",
            description = "Take in what was weighed and measured from a table (.csv) or a filled bench sheet (.xlsx);"
                    + " repeatable.")
    private List<Path> tables = new ArrayList<>();

    @Option(
            names = "--at",
            paramLabel = "FORMULA",
            description = "Predict the next batch of this formula: a JSON document with \"made\"; repeatable.")
    private List<Path> formulas = new ArrayList<>();

    @Option(
            names = "--sure",
            converter = ShareConverter.OfSure.class,
            paramLabel = "SHARE",
            description = "How sure bounds and ranges are, from 50 %% to below 100 %%; 90 %% unless given.")
    private @Nullable Quantity sure;

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    public FitCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        var reading = Documents.readTrials(Objects.requireNonNull(trials), tables);
        return reading instanceof Reading.Accepted<TrialSet> accepted
                ? answer(accepted.value())
                : refuse(((Reading.Rejected<TrialSet>) reading).problems());
    }

    private int answer(TrialSet set) {
        var share = (sure == null ? Quantity.parse("90 %").orElseThrow() : sure).base();
        var responses = Fitting.of(set, share);
        var predicted = new ArrayList<PredictedFormula>();
        for (var formula : formulas) {
            var reading = Documents.readMade(formula, set);
            if (reading instanceof Reading.Rejected<Weighed> rejected) {
                return refuse(rejected.problems());
            }
            predicted.addAll(predictions(formula, ((Reading.Accepted<Weighed>) reading).value(), set, responses));
        }
        var result = FitResults.of(set.title(), share, responses, predicted, set.remarks());
        console.out().print(json ? ResultJson.text(result) : TextRenderer.render(FitReport.of(result)));
        return ExitStatus.DONE;
    }

    private static List<PredictedFormula> predictions(
            Path formula, Weighed weighed, TrialSet set, List<FittedResponse> responses) {
        return responses.stream()
                .flatMap(each ->
                        PredictedFormula.of(
                                formula.toString(), weighed, set.brief().composition(), each)
                                .stream())
                .toList();
    }

    private int refuse(List<Problem> problems) {
        return ProblemPrinter.print(problems, console.err());
    }
}
