package panade.testing;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import panade.cli.Main;

/**
 * One call of the command line in this process.
 *
 * @param status what the process would have ended with
 * @param output what went to standard output
 * @param messages what went to standard error
 */
public record CommandRun(int status, String output, String messages) {
    /** Before the first call. */
    public static final CommandRun NONE = new CommandRun(0, "", "");

    public static CommandRun of(String... arguments) {
        return answering("", arguments);
    }

    /** A call that reads {@code input} as what was typed. */
    public static CommandRun answering(String input, String... arguments) {
        var output = new StringWriter();
        var messages = new StringWriter();
        try (var out = new PrintWriter(output);
                var err = new PrintWriter(messages)) {
            int status = Main.run(new StringReader(input), out, err, arguments);
            out.flush();
            err.flush();
            return new CommandRun(status, output.toString(), messages.toString());
        }
    }
}
