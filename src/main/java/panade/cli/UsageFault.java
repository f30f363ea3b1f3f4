package panade.cli;

import java.io.PrintWriter;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Tells what is wrong with a command line, what may have been meant, and where more is to be read. */
final class UsageFault implements IParameterExceptionHandler {
    private final PrintWriter err;

    UsageFault(PrintWriter err) {
        this.err = err;
    }

    @Override
    public int handleParseException(ParameterException fault, String[] arguments) {
        var command = fault.getCommandLine();
        err.println(fault.getMessage());
        UnmatchedArgumentException.printSuggestions(fault, err);
        var spec = command.getCommandSpec();
        err.print(command.getHelp().fullSynopsis());
        for (var line : spec.usageMessage().footer()) {
            if (!line.isBlank()) {
                err.println(line);
            }
        }
        err.println(spec.qualifiedName() + " --help tells more.");
        return ExitStatus.USAGE;
    }
}
