package panade.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A class of the tests run in a Java process of its own. */
public final class JavaProcess {
    private JavaProcess() {}

    /**
     * Runs the class's main method to its end.
     *
     * @param options of the virtual machine
     */
    public static CommandRun run(List<String> options, Class<?> main, String... arguments) {
        var command = new ArrayList<String>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(Arrays.asList(arguments));
        var messages = TemporaryFolders.create("panade-process").resolve("messages");
        try {
            var process =
                    new ProcessBuilder(command).redirectError(messages.toFile()).start();
            process.getOutputStream().close();
            var output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int status = process.waitFor();
            return new CommandRun(status, output, Files.readString(messages));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
