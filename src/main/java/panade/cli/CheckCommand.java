package panade.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import panade.document.Documents;
import panade.document.Problem;
import panade.export.JsonExport;
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
final class CheckCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description = "Briefs, ingredient sets, price lists or suppliers' terms.")
    private final List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    CheckCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        var problems = new LinkedHashSet<Problem>();
        files.forEach(file -> problems.addAll(Documents.check(file)));
        if (!problems.isEmpty()) {
            return ProblemPrinter.print(List.copyOf(problems), err);
        }
        if (json) {
            out.print(JsonExport.ofCounts(Map.of("documents", files.size(), "problems", 0)));
        } else {
            out.println(files.size() == 1 ? "1 document, nothing wrong." : files.size() + " documents, nothing wrong.");
        }
        return ExitStatus.DONE;
    }
}
