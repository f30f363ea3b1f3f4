package panade.document;

import java.io.PrintWriter;
import java.io.StringWriter;
import panade.cli.Main;

/** What one call of the command line left behind. */
record CommandRun(int status, String output, String messages) {
    static CommandRun of(String... arguments) {
        var output = new StringWriter();
        var messages = new StringWriter();
        int status = run(output, messages, arguments);
        return new CommandRun(status, output.toString(), messages.toString());
    }

    private static int run(StringWriter output, StringWriter messages, String... arguments) {
        try (var out = new PrintWriter(output);
                var err = new PrintWriter(messages)) {
            return Main.run(out, err, arguments);
        }
    }
}
