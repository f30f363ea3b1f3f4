package panade.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.OutcomePrinter;
import panade.cli.frame.Version;
import panade.export.ResultJson;
import panade.model.Unproved;
import panade.render.PlainText;
import panade.result.BriefResult;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Tells in plain words that the program failed, and what to send to whoever looks after it. */
final class FaultPrinter implements IExecutionExceptionHandler {
    private static final long MEGABYTE = 1 << 20;

    private final PrintWriter err;
    private final BooleanSupplier debug;

    /**
     * A printer.
     *
     * @param debug whether to print the stack trace, asked when there is one
     */
    FaultPrinter(PrintWriter err, BooleanSupplier debug) {
        this.err = err;
        this.debug = debug;
    }

    @Override
    public int handleExecutionException(Exception fault, CommandLine command, ParseResult parsed) {
        var open = unproved(fault);
        if (open.isEmpty()) {
            return print(fault);
        }
        if (isForMachines(parsed)) {
            command.getOut()
                    .print(ResultJson.text(
                            BriefResult.Undecided.because(open.get().reason())));
        }
        err.println(PlainText.message(OutcomePrinter.undecided(open.get().reason())));
        return ExitStatus.UNDECIDED;
    }

    /** What could not be proved, if that is what ended the command, in this thread or in one that it waited for. */
    private static Optional<Unproved> unproved(Throwable fault) {
        for (var cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof Unproved open) {
                return Optional.of(open);
            }
        }
        return Optional.empty();
    }

    private static boolean isForMachines(ParseResult parsed) {
        return parsed.hasSubcommand()
                ? isForMachines(parsed.subcommand())
                : parsed.commandSpec().findOption("--json") != null && parsed.hasMatchedOption("--json");
    }

    /** Prints what happened, and gives the exit status that goes with it. */
    int print(Throwable fault) {
        err.println(words(fault));
        if (debug.getAsBoolean()) {
            printDetails(fault);
        }
        return ExitStatus.OUR_FAULT;
    }

    private static String words(Throwable fault) {
        if (fault instanceof OutOfMemoryError) {
            return "Out of memory: the " + Runtime.getRuntime().maxMemory() / MEGABYTE
                    + " MB that panade may use are not enough for this, and there is no answer.\n"
                    + "    Expected a smaller document, or more memory: set the variable JDK_JAVA_OPTIONS to -Xmx4g,"
                    + " say.";
        }
        if (fault instanceof StackOverflowError) {
            return "Out of stack: the documents are nested, or refer to each other, more deeply than panade can follow,"
                    + " and there is no answer.\n"
                    + "    Expected fewer levels. If there are few, it is a fault of ours: " + report();
        }
        return "A fault of ours, not of your documents: panade " + Version.number()
                + " failed in the midst of its work ("
                + PlainText.line(String.valueOf(fault)) + "). There is no answer, and no file was left half written.\n"
                + "    " + report();
    }

    private static String report() {
        return "To report it, run the same command with --debug and send the whole command line, what it then printed"
                + "\n    and the documents it names to whoever gave you panade.";
    }

    private void printDetails(Throwable fault) {
        err.println();
        err.println("panade " + Version.number());
        err.println("Java " + Runtime.version() + ", " + System.getProperty("java.vm.name"));
        err.println(System.getProperty("os.name") + " " + System.getProperty("os.version") + " "
                + System.getProperty("os.arch") + ", " + Runtime.getRuntime().availableProcessors() + " processors, "
                + Runtime.getRuntime().maxMemory() / MEGABYTE + " MB");
        fault.printStackTrace(err);
    }
}
