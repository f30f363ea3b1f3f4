package panade.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.Callable;
import panade.assemble.RemarkLines;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.Version;
import panade.document.Documents;
import panade.document.syntax.Checked;
import panade.document.syntax.Problem;
import panade.domain.origin.Remark;
import panade.export.ResultJson;
import panade.plan.Planner;
import panade.remark.BriefRemarks;
import panade.render.TextRenderer;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.CheckResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says whether anything is wrong with documents. */
@Command(
        name = "check",
        description = "Is anything wrong with these documents?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade check constraints/*.json"})
public final class CheckCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Planner planner;

    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description = "Briefs, ingredient sets, price lists or suppliers' terms.")
    private final List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    @Option(names = "--strict", description = "Take remarks for faults: exit 3 where there is one.")
    private boolean strict;

    public CheckCommand(Console console) {
        this.out = console.out();
        this.err = console.err();
        this.planner = console.planner();
    }

    @Override
    public Integer call() {
        var problems = new LinkedHashSet<Problem>();
        var remarks = new LinkedHashSet<Remark>();
        files.stream().map(Documents::check).forEach(checked -> {
            problems.addAll(checked.problems());
            remarks.addAll(remarks(checked));
        });
        if (!problems.isEmpty()) {
            return ProblemPrinter.print(List.copyOf(problems), err);
        }
        var result = new CheckResult(files.size(), 0, RemarkLines.of(List.copyOf(remarks)));
        if (json) {
            out.print(ResultJson.text(result));
        } else {
            var title = counted("document", files.size()) + ", nothing wrong"
                    + (remarks.isEmpty() ? "." : "; " + counted("remark", remarks.size()) + ".");
            var report = Remarks.on(new ReportDocument(title, List.of()), result.remarks());
            out.print(TextRenderer.render(report));
        }
        return strict && !remarks.isEmpty() ? ExitStatus.DOCUMENT : ExitStatus.DONE;
    }

    private List<Remark> remarks(Checked checked) {
        return checked.brief()
                .map(brief -> BriefRemarks.on(planner, brief).remarks())
                .orElse(checked.remarks());
    }

    private static String counted(String what, int number) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
