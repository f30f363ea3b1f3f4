package panade.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a whole file or nothing: what was there before stays until the new text is complete. */
final class OutputFile {
    private OutputFile() {}

    static void write(Path file, String text) throws IOException {
        var folder = file.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(file)) {
            throw new IOException("this is a folder");
        }
        var unfinished = Files.createTempFile(folder, ".panade", null);
        try {
            Files.writeString(unfinished, text);
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }
}
