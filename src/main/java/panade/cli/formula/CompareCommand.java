package panade.cli.formula;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import panade.assemble.formula.CompareResults;
import panade.assemble.formula.Compared;
import panade.assemble.setting.SetResults;
import panade.cli.frame.BriefOptions;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.UnsupportedFeatures;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.cli.setting.Answers;
import panade.document.Documents;
import panade.document.setting.Tried;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.trial.Formula;
import panade.nudge.Start;
import panade.remark.BriefRemarks;
import panade.report.formula.CompareReport;
import panade.result.setting.SetResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays formulas and the cheapest blends of briefs side by side. */
@Command(
        name = "compare",
        description = "How do what I make, what I made and the cheapest blends differ, side by side?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade compare constraints/dumpling-filling-made.json constraints/dumpling-filling.json"
        })
public final class CompareCommand implements Callable<Integer> {
    private static final int LETTERS = 26;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description = "Formulas (JSON, or with --brief a table or a result of --json) and briefs, of which the"
                    + " cheapest blend is taken; two at least. The others are told against the first.")
    private final List<Path> files = new ArrayList<>();

    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Look at every formula under this brief; needed where one names none.")
    private @Nullable Path brief;

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    private final Console console;
    private final Set<Path> briefs = new LinkedHashSet<>();

    public CompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (files.size() < 2 || files.size() > LETTERS) {
            throw UsageErrors.in(spec, "Expected two files at least and " + LETTERS + " at most: formulas or briefs.");
        }
        var problems = new ArrayList<Problem>();
        var compared = new ArrayList<Compared>();
        files.forEach(file -> compared.addAll(read(file, problems)));
        if (!problems.isEmpty()) {
            return ProblemPrinter.print(problems.stream().distinct().toList(), console.err());
        }
        var result = CompareResults.of(compared);
        new Answers(console.out(), console.err(), json, moved()).print(result, () -> CompareReport.of(result));
        return ExitStatus.DONE;
    }

    /** What numbers that are tried move of each brief that is looked at; null where none is tried. */
    private @Nullable SetResult moved() {
        var all = new ArrayList<SetResults.Named>();
        for (var each : options.overrides().settings().isEmpty() ? List.<Path>of() : List.copyOf(briefs)) {
            if (Documents.readTried(each, options.overrides()) instanceof Reading.Accepted<Tried> tried) {
                all.add(new SetResults.Named(tried.value().written().title(), tried.value()));
            }
        }
        return all.isEmpty() ? null : SetResults.of(console.planner(), all);
    }

    /** What a file stands for; nothing, and the problems, where it cannot be read. */
    private List<Compared> read(Path file, List<Problem> problems) {
        if (!Documents.isFormula(file)) {
            return accepted(Documents.readBrief(file, options.overrides()), problems).stream()
                    .map(found -> cheapest(file, looked(found), problems))
                    .toList();
        }
        return accepted(Documents.readFormula(file, brief, options.overrides()), problems).stream()
                .map(found -> made(file, found, problems))
                .toList();
    }

    private static <T> List<T> accepted(Reading<T> reading, List<Problem> problems) {
        if (reading instanceof Reading.Rejected<T> rejected) {
            problems.addAll(rejected.problems());
            return List.of();
        }
        return List.of(((Reading.Accepted<T>) reading).value());
    }

    private Compared cheapest(Path file, Brief found, List<Problem> problems) {
        problems.addAll(UnsupportedFeatures.of(found));
        return Compared.cheapest(file.toString(), found, console.planner().answer(found));
    }

    private Compared made(Path file, Formula found, List<Problem> problems) {
        var looked = looked(found.brief());
        problems.addAll(UnsupportedFeatures.of(looked));
        return Compared.formula(found.title(), file.toString(), new Start(looked, found.shares(), found.suppliers()));
    }

    private Brief looked(Brief found) {
        briefs.add(Path.of(found.file()));
        return console.planner().keepingLabel(BriefRemarks.on(console.planner(), found));
    }
}
