package panade.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import panade.cli.frame.LongRunning;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/**
 * Writes, from the commands themselves, what a shell completes, what the manual says, and which commands the launcher
 * lets run long; run by the build.
 */
public final class CommandLineDocuments {
    private CommandLineDocuments() {}

    /** Writes into two folders pages of the manual and the completion script, and a launcher from its template. */
    public static void main(String[] paths) throws IOException {
        var manual = Files.createDirectories(Path.of(paths[0]));
        var completion = Files.createDirectories(Path.of(paths[1]));
        var launcher = Path.of(paths[2]);
        var line = Main.documented();
        int status =
                ManPageGenerator.generateManPage(manual.toFile(), null, new boolean[] {}, false, line.getCommandSpec());
        if (status != 0) {
            throw new IOException("the manual could not be written: " + status);
        }
        Files.writeString(completion.resolve("panade"), AutoComplete.bash("panade", line));
        Files.writeString(launcher, launcher(Files.readString(Path.of(paths[3])), line));
    }

    /** The launcher of a template, with the names of the commands that may run long in its one place. */
    static String launcher(String template, CommandLine line) {
        var names = line.getSubcommands().entrySet().stream()
                .filter(command -> command.getValue().getCommand() instanceof LongRunning)
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(" | "));
        return template.replace("@long@", names);
    }
}
