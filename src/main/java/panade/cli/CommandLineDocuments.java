package panade.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/** Writes, from the commands themselves, what a shell completes and what the manual says; run by the build. */
public final class CommandLineDocuments {
    private CommandLineDocuments() {}

    /** Writes into two folders: pages of the manual, and the completion script. */
    public static void main(String[] folders) throws IOException {
        var manual = Files.createDirectories(Path.of(folders[0]));
        var completion = Files.createDirectories(Path.of(folders[1]));
        var line = Main.documented();
        int status =
                ManPageGenerator.generateManPage(manual.toFile(), null, new boolean[] {}, false, line.getCommandSpec());
        if (status != 0) {
            throw new IOException("the manual could not be written: " + status);
        }
        Files.writeString(completion.resolve("panade"), AutoComplete.bash("panade", line));
    }
}
