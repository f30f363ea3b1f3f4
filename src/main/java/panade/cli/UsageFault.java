package panade.cli;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.util.Objects;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.UnreadableOption;
import panade.render.PlainText;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.OptionSpec;
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
        err.println(PlainText.message(words(fault)));
        UnmatchedArgumentException.printSuggestions(fault, err);
        var spec = command.getCommandSpec();
        err.print(command.getHelp().fullSynopsis());
        for (var line : spec.usageMessage().footer()) {
            if (!line.isBlank()) {
                err.println(line.replace("%%", "%")); // as the help itself prints it
            }
        }
        err.println(spec.qualifiedName() + " --help tells more.");
        return ExitStatus.USAGE;
    }

    /** What is wrong, without the words of the library that found it or of the language behind it. */
    private static String words(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched
                && !unmatched.isUnknownOption()
                && fault.getCommandLine().getParent() == null) {
            return "No command is called \"" + unmatched.getUnmatched().get(0) + "\".";
        }
        if (fault.getCause() instanceof UnreadableOption unreadable
                && fault.getArgSpec() instanceof OptionSpec option) {
            return option.longestName() + " " + fault.getValue() + ": " + unreadable.getMessage();
        }
        var message = Objects.toString(fault.getMessage(), "");
        if (message.contains(InvalidPathException.class.getName())) { // picocli keeps the words of it alone
            return "\"" + fault.getValue() + "\" is no name of a file here. Expected one without characters that this"
                    + " system's locale lacks; with LC_ALL=C.UTF-8 in the environment it has them all.";
        }
        return message.replaceFirst(" is not an? (long|int)$", " is not a whole number");
    }
}
