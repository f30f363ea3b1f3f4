package panade.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import panade.certify.simplex.DenseDictionaries;
import panade.cli.command.BatchCommand;
import panade.cli.command.BlendCommand;
import panade.cli.command.BuyCommand;
import panade.cli.command.CheckCommand;
import panade.cli.command.ExportCommand;
import panade.cli.command.ImportCommand;
import panade.cli.command.NewCommand;
import panade.cli.command.PanelCommand;
import panade.cli.command.QuotesCommand;
import panade.cli.command.ReachCommand;
import panade.cli.command.ReportCommand;
import panade.cli.command.StudyCommand;
import panade.cli.command.SwapCommand;
import panade.cli.command.TraceCommand;
import panade.cli.formula.CompareCommand;
import panade.cli.formula.MadeCommand;
import panade.cli.formula.NudgeCommand;
import panade.cli.formula.TriangleCommand;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.Version;
import panade.cli.manual.ManualCommand;
import panade.cli.open.OpenCommand;
import panade.cli.trial.FitCommand;
import panade.cli.trial.NextCommand;
import panade.document.syntax.Problem;
import panade.domain.origin.Origin;
import panade.plan.Engines;
import panade.render.PlainText;
import panade.render.TextRenderer;
import panade.report.Glossary;
import panade.solver.Solver;
import panade.solver.ortools.OrToolsMixedSolver;
import panade.solver.ortools.OrToolsSolver;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command line. */
@Command(
        name = "panade",
        description = "Least-cost blends for plant-based ground meat, with a proof.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:done",
            "2:the command line is wrong",
            "3:a document is wrong",
            "4:no blend can satisfy the brief",
            "5:a fault of ours",
            "6:not decided: neither a blend nor that there is none could be proved"
        },
        footer = {"", "Example: panade blend constraints/dumpling-filling.json"})
public final class Main implements Callable<Integer> {
    @Option(
            names = "--progress",
            negatable = true,
            defaultValue = "true",
            fallbackValue = "true",
            scope = ScopeType.INHERIT,
            description = "Show how far a long run is, on a terminal; on unless --no-progress is given.")
    private boolean progress = true;

    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            description =
                    "Where panade itself fails, print all that whoever mends it needs to know; at the end, how often"
                            + " a basis had to be worked out densely.")
    private boolean debug;

    @Option(
            names = "--explain",
            paramLabel = "TERM",
            arity = "0..1",
            fallbackValue = "",
            description = "Tell what a word in a report means, such as \"shadow price\"; all words when none is given.")
    private @Nullable String term;

    @Spec
    private @Nullable CommandSpec spec;

    private final PrintWriter out;
    private final PrintWriter err;

    private final ProgressLine line;
    private final FaultPrinter faults;

    private Main(PrintWriter out, PrintWriter err) {
        this.line = new ProgressLine(err, () -> progress && isTerminal());
        this.out = new PrintWriter(new ConsoleWriter(out, line::end));
        this.err = new PrintWriter(new ConsoleWriter(err, line::clear));
        this.faults = new FaultPrinter(this.err, () -> debug);
    }

    /** Runs the program on the process's own streams. */
    public static void main(String[] arguments) {
        var answer = new StandardOutput();
        var out = new PrintWriter(answer, false, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
        int status = run(new InputStreamReader(System.in, StandardCharsets.UTF_8), out, err, arguments);
        out.flush();
        System.exit(answer.fault().map(why -> lost(why, err)).orElse(status));
    }

    private static int lost(String why, PrintWriter err) {
        err.println("The answer could not be written to standard output (" + why + "): it is not all there.");
        err.flush();
        return ExitStatus.USAGE;
    }

    /** Runs one command; prints results on {@code out} and messages on {@code err}; gives the exit status. */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return run(Reader.nullReader(), out, err, arguments);
    }

    /** The same with somebody who answers questions. */
    public static int run(Reader in, PrintWriter out, PrintWriter err, String... arguments) {
        return new Main(out, err).run(in, arguments);
    }

    private int run(Reader in, String... arguments) {
        int status;
        int before = DenseDictionaries.made();
        var solver = new WatchedSolver(new OrToolsSolver(), line);
        try {
            var commands = commandLine(in, engines(solver), arguments);
            status = arguments.length == 0 ? usage(commands, err) : commands.execute(arguments);
        } catch (VirtualMachineError | LinkageError | RuntimeException fault) {
            status = faults.print(fault);
        }
        if (solver.isAsked()) {
            OrToolsSolver.missing().ifPresent(this::tellEngine);
        }
        line.end();
        if (debug) {
            err.println("Dense dictionaries made: " + (DenseDictionaries.made() - before) + ".");
        }
        out.flush();
        err.flush();
        return status;
    }

    private void tellEngine(String fault) {
        err.println(PlainText.message("Answered by the exact simplex alone, which is as right but slower: " + fault
                + ". Searches for whole numbers (rules, weights on a scale, packs) find nothing without them."));
    }

    /** The commands as they are documented: none of them is to be run. */
    static CommandLine documented() {
        var nowhere = new PrintWriter(Writer.nullWriter());
        return new Main(nowhere, nowhere).commandLine(Reader.nullReader(), engines(new OrToolsSolver()));
    }

    private static Engines engines(Solver solver) {
        return new Engines(solver, OrToolsMixedSolver.cbc(), OrToolsMixedSolver.scip());
    }

    @SuppressWarnings("SystemConsoleNull") // true of the Java that this is built for; a later one shows a bar too many
    private static boolean isTerminal() {
        return System.console() != null && !"dumb".equals(System.getenv("TERM"));
    }

    @Override
    public Integer call() {
        if (term == null) {
            throw new ParameterException(Objects.requireNonNull(spec).commandLine(), "Expected a command.");
        }
        var glossary = new Glossary();
        var found = term.isEmpty() ? Optional.of(glossary.contents()) : glossary.explain(term);
        if (found.isEmpty()) {
            var what = "Nothing is explained under \"" + term + "\"";
            var advice = "Expected a word from a report; panade --explain lists them.";
            var problem = Problem.unknown(new Origin("--explain", 0, 0, ""), what, term, glossary.names(), advice);
            ProblemPrinter.print(problem, err);
            return ExitStatus.USAGE;
        }
        out.print(TextRenderer.render(found.get()));
        return ExitStatus.DONE;
    }

    private CommandLine commandLine(Reader in, Engines engines, String... arguments) {
        var line = new CommandLine(this);
        asked(commands(in, engines), arguments).forEach((name, command) -> line.addSubcommand(name, command.get()));
        line.setOut(out).setErr(err);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(100);
        line.setParameterExceptionHandler(new UsageFault(err));
        line.setExecutionExceptionHandler(faults);
        return line;
    }

    /** Every command by name. Each is made only when it is needed, for reading its options takes a while. */
    private Map<String, Supplier<Object>> commands(Reader in, Engines engines) {
        var console = new Console(out, err, engines);
        var commands = new LinkedHashMap<String, Supplier<Object>>();
        commands.put("blend", () -> new BlendCommand(console));
        commands.put("reach", () -> new ReachCommand(console));
        commands.put("swap", () -> new SwapCommand(console));
        commands.put("quotes", () -> new QuotesCommand(console));
        commands.put("trace", () -> new TraceCommand(console));
        commands.put("batch", () -> new BatchCommand(console));
        commands.put("panel", () -> new PanelCommand(console));
        commands.put("buy", () -> new BuyCommand(console));
        commands.put("study", () -> new StudyCommand(console));
        commands.put("fit", () -> new FitCommand(console));
        commands.put("next", () -> new NextCommand(console));
        commands.put("triangle", () -> new TriangleCommand(console));
        commands.put("made", () -> new MadeCommand(console));
        commands.put("nudge", () -> new NudgeCommand(console));
        commands.put("compare", () -> new CompareCommand(console));
        commands.put("export", () -> new ExportCommand(console));
        commands.put("import", () -> new ImportCommand(console));
        commands.put("new", () -> new NewCommand(() -> new BufferedReader(in), console));
        commands.put("manual", () -> new ManualCommand(console));
        commands.put("report", () -> new ReportCommand(console));
        commands.put("open", () -> new OpenCommand(console));
        commands.put("check", () -> new CheckCommand(console));
        return commands;
    }

    /** The command that the line begins with; all of them where it begins with none, for help and suggestions. */
    private static Map<String, Supplier<Object>> asked(Map<String, Supplier<Object>> commands, String... arguments) {
        var first = arguments.length == 0 ? null : commands.get(arguments[0]);
        return first == null ? commands : Map.of(arguments[0], first);
    }

    private static int usage(CommandLine line, PrintWriter err) {
        line.usage(err);
        return ExitStatus.USAGE;
    }
}
