package panade.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import panade.plan.Engines;
import panade.solver.ortools.OrToolsMixedSolver;
import panade.solver.ortools.OrToolsSolver;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

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
            "5:a fault of ours"
        })
public final class Main {
    @Option(
            names = "--progress",
            negatable = true,
            defaultValue = "true",
            fallbackValue = "true",
            scope = ScopeType.INHERIT,
            description = "Show how far a long run is, on a terminal; on unless --no-progress is given.")
    private boolean progress = true;

    private Main() {}

    /** Runs the program on the process's own streams. */
    public static void main(String[] arguments) {
        var out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
        int status = run(out, err, arguments);
        out.flush();
        err.flush();
        System.exit(status);
    }

    /** Runs one command; prints results on {@code out} and messages on {@code err}; gives the exit status. */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        var main = new Main();
        try (var solver = new WatchedSolver(new OrToolsSolver(), () -> main.progress && isTerminal())) {
            return execute(
                    main,
                    new Engines(solver, OrToolsMixedSolver.cbc(), OrToolsMixedSolver.scip()),
                    out,
                    err,
                    arguments);
        }
    }

    @SuppressWarnings("SystemConsoleNull") // true of the Java that this is built for; a later one shows a bar too many
    private static boolean isTerminal() {
        return System.console() != null && !"dumb".equals(System.getenv("TERM"));
    }

    private static int execute(Main main, Engines engines, PrintWriter out, PrintWriter err, String... arguments) {
        var line = new CommandLine(main);
        asked(commands(engines, out, err), arguments)
                .forEach((name, command) -> line.addSubcommand(name, command.get()));
        line.setOut(out).setErr(err);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(100);
        line.setExecutionExceptionHandler(ourFault(err));
        int status = arguments.length == 0 ? usage(line, err) : line.execute(arguments);
        out.flush();
        err.flush();
        return status;
    }

    /** Every command by name. Each is made only when it is needed, for reading its options takes a while. */
    private static Map<String, Supplier<Object>> commands(Engines engines, PrintWriter out, PrintWriter err) {
        var commands = new LinkedHashMap<String, Supplier<Object>>();
        commands.put("blend", () -> new BlendCommand(out, err, engines));
        commands.put("reach", () -> new ReachCommand(out, err, engines));
        commands.put("swap", () -> new SwapCommand(out, err, engines));
        commands.put("quotes", () -> new QuotesCommand(out, err, engines));
        commands.put("trace", () -> new TraceCommand(out, err, engines));
        commands.put("batch", () -> new BatchCommand(out, err, engines));
        commands.put("panel", () -> new PanelCommand(out, err, engines));
        commands.put("buy", () -> new BuyCommand(out, err, engines));
        commands.put("study", () -> new StudyCommand(out, err, engines));
        commands.put("export", () -> new ExportCommand(out, err));
        commands.put("check", () -> new CheckCommand(out, err));
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

    private static IExecutionExceptionHandler ourFault(PrintWriter err) {
        return (fault, command, parsed) -> {
            err.println("A fault of ours: " + fault + ". Please report it with the documents you used.");
            return ExitStatus.OUR_FAULT;
        };
    }
}
